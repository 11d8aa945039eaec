/** What a name may be that is none of the kind asked for: a name of another kind, or a word of the trade. */
import type { Vocabulary } from '../vocabulary.js'
import { partsOfSpeech } from '../words/parts-of-speech.js'
import { colorNames } from './colors.js'
import { foldName } from './fold-name.js'
import type { OtherNames } from './nearest.js'

interface OtherKind {
  /** With its article. */
  readonly what: string
  readonly names: readonly string[]
  /** What to write for one of them. */
  readonly write: (name: string) => string
}

/** Kinds of names for which others are looked for: those of the trade's words, words/trade-words. */
export type NamedKind =
  | 'border'
  | 'key'
  | 'layout'
  | 'line'
  | 'outline'
  | 'paper'
  | 'pattern'
  | 'place'
  | 'size'

export function otherNames(kind: NamedKind, vocabulary: Vocabulary): () => OtherNames {
  return () =>
    new Map([
      ...(kind === 'key' ? vocabulary.keysElsewhere() : []),
      ...otherKinds(kind, vocabulary).flatMap(({ what, names, write }) =>
        names.map(name => [foldName(name), `"${name}" is ${what}: write ${write(name)}.`] as const),
      ),
      ...[...vocabulary.tradeWords(kind)].map(([said, instead]) => [foldName(said), instead] as const),
    ])
}

function otherKinds(kind: NamedKind, vocabulary: Vocabulary): readonly OtherKind[] {
  const { patterns, lines, outlines, plurals, layouts } = vocabulary
  const colors: OtherKind = { what: 'a colour', names: colorNames, write: name => `color: ${name}` }
  const ofLines: OtherKind = { what: 'a line', names: lines, write: name => `line: ${name}` }
  const ofOutlines: OtherKind = { what: 'an outline', names: outlines, write: name => `outline: ${name}` }
  const ofPatterns: OtherKind = { what: 'a pattern', names: patterns, write: name => `pattern: ${name}` }
  switch (kind) {
    case 'line':
      return [colors, ofPatterns, ofOutlines]
    case 'outline':
      return [colors, ofPatterns, ofLines]
    case 'pattern':
      return [
        ofLines,
        ofOutlines,
        { what: 'a part of speech', names: partsOfSpeech, write: name => `part of speech: ${name}` },
        { what: 'a rule for plurals', names: plurals, write: name => `plural: ${name}` },
        { what: 'a layout', names: [...layouts.keys()], write: name => `- layout: ${name} under print:` },
      ]
    case 'layout':
      return [{ ...ofPatterns, write: name => `- pattern: ${name} under marks:` }]
    case 'paper':
      return [
        { what: 'a way to turn it', names: ['portrait', 'landscape'], write: name => `orientation: ${name}` },
      ]
    case 'border':
    case 'key':
    case 'place':
    case 'size':
      return []
  }
}
