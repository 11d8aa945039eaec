/** Words aligned and divided by hand (hand-aligned.tsv), so that the rules are tested apart from the aligner. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { findPatterns } from '../../../src/words/patterns/find-patterns.js'
import type { StudiedLetters, WordEvidence } from '../../../src/words/patterns/pattern.js'
import { countOf, soundPieces } from '../../../src/words/sound-pieces.js'
import type { Grapheme, Word } from '../../../src/words/word.js'

export function readTable(name: string): readonly (readonly string[])[] {
  const text = readFileSync(join(import.meta.dirname, name), 'utf8')
  return text
    .trimEnd()
    .split('\n')
    .slice(1)
    .map(line => line.split('\t'))
}

/** `th:TH r:R x:K+S e:-` */
function readGraphemes(written: string): readonly Grapheme[] {
  let start = 0
  return written.split(' ').map(part => {
    const [letters, sounds] = part.split(':') as [string, string]
    const grapheme = { letters, start, sounds: sounds === '-' ? [] : sounds.split('+') }
    start += letters.length
    return grapheme
  })
}

const rows = readTable('hand-aligned.tsv')
const pronunciations = new Map(rows.map(([word, , , pronunciation]) => [word!, pronunciation!]))

/** The words of the table are the only words there are. */
const evidence: WordEvidence = {
  pronunciationsOf: word => (pronunciations.has(word) ? [pronunciations.get(word)!] : []),
  familiarity: word => (pronunciations.has(word) ? 1000 : 0),
}

export const handAligned: ReadonlyMap<string, StudiedLetters> = new Map(
  rows.map(([text, graphemes, syllables, pronunciation]) => [
    text!,
    {
      text: text!,
      graphemes: readGraphemes(graphemes!),
      syllables: syllables!.split(' '),
      pronunciation: pronunciation!,
      evidence,
    },
  ]),
)

export function aligned(word: string): StudiedLetters {
  const found = handAligned.get(word)
  if (found === undefined) throw new Error(`${word} is not in hand-aligned.tsv`)
  return found
}

/** The same as a studied word, for the stages that come after the patterns. */
export function studied(word: string): Word {
  const { text, graphemes, syllables, pronunciation } = aligned(word)
  const pieces = soundPieces({ word: aligned(word), graphemes, divided: false, counting: 'as taught' })
  return {
    text,
    known: true,
    source: 'lexicon',
    pronunciations: [pronunciation],
    graphemes,
    soundCount: countOf(pieces),
    phonemeCount: graphemes.flatMap(grapheme => grapheme.sounds).length,
    pieces,
    syllables,
    patterns: findPatterns(aligned(word)),
    partsOfSpeech: [],
    plural: null,
  }
}
