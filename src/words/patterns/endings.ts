/** Endings added to a base word: -ed, -ing, -er, -est, -s, -es. */
import { soundsOf } from '../alignment/arpabet.js'
import { join } from '../endings/adding.js'
import { pastForms } from '../endings/irregular-verbs.js'
import { type Ending, type EndingName, endingOf } from '../endings/recognise.js'
import type { Finding } from '../word.js'
import { isFamiliar } from './base-words.js'
import { oncePerWord } from './once-per-word.js'
import type { Pattern, StudiedLetters, Teaching, WordEvidence } from './pattern.js'
import { commonPractice } from './pattern.js'
import { findingAt } from './spelled-sounds.js'
import { isInWordGroup } from './words-apart.js'

const voiceless = new Set(['P', 'T', 'K', 'F', 'TH', 'S', 'SH', 'CH'])
const hissing = new Set(['S', 'Z', 'SH', 'ZH', 'CH', 'JH'])

/** The sounds that an ending may have after the base's last sound. */
function soundsAfter(ending: EndingName, last: string): readonly string[] {
  switch (ending) {
    case 'ing':
      return ['IH NG']
    case 'er':
      return ['ER']
    case 'est':
      return ['IH S T', 'AH S T', 'EH S T']
    case 'ed':
      if (last === 'T' || last === 'D') return ['IH D', 'AH D', 'EH D']
      return voiceless.has(last) ? ['T'] : ['D']
    case 's':
    case 'es':
      if (hissing.has(last)) return ['IH Z', 'AH Z']
      return voiceless.has(last) ? ['S', 'Z'] : ['Z']
  }
}

/** passes is pass and -es, although passe is a word as well. */
function hasFamiliarStem(base: string, evidence: WordEvidence): boolean {
  if (!/(?:ss|x|zz|ch|sh)e$/.test(base)) return false
  return evidence.familiarity(base.slice(0, -1)) > evidence.familiarity(base)
}

/** The ending is heard as it should be after the base: -ed of wick would be /T/, so wicked is not wick and -ed. */
function isHeard({ ending, base }: Ending, word: StudiedLetters): string | undefined {
  const sounds = soundsOf(word.pronunciation).join(' ')
  const lasts = (word.evidence?.pronunciationsOf(base) ?? []).map(said => soundsOf(said).at(-1) ?? '')
  return lasts.flatMap(last => soundsAfter(ending, last)).find(heard => sounds.endsWith(` ${heard}`))
}

/** Nobody who has broken something is a broker: broke is past already, while who founds is a founder. */
function isPastAlone(base: string, evidence: WordEvidence): boolean {
  return pastForms().has(base) && evidence.familiarity(join(base, 'ed').form) < familiarVerb
}

const familiarVerb = 100

interface HeardEnding extends Ending {
  readonly heard: string
}

/**
 * The word's ending, where its base is a familiar word and its sound is the one that the base asks for. Nothing is
 * compared or done by a verb such as stagger or divest.
 */
const heardEnding = oncePerWord((word: StudiedLetters): HeardEnding | undefined => {
  const { evidence, pronunciation } = word
  const text = word.text.toLowerCase()
  if (evidence === undefined || isInWordGroup(text, 'no ending')) return undefined
  const found = endingOf({
    text,
    pronunciation,
    isWord: base => isFamiliar(base, evidence) && !hasFamiliarStem(base, evidence),
    pronunciationsOf: evidence.pronunciationsOf,
    familiarity: evidence.familiarity,
  })
  if (found === null || (found.ending === 'ed' && found.base.length < 3)) return undefined
  if (/^(?:er|est)$/.test(found.ending) && word.partsOfSpeech?.[0] === 'verb') return undefined
  if (found.ending === 'er' && isPastAlone(found.base, evidence)) return undefined
  const heard = isHeard(found, word)
  return heard === undefined ? undefined : { ...found, heard }
})

/** The word without its ending. */
export function inflectedFrom(word: StudiedLetters): string | undefined {
  return heardEnding(word)?.base
}

function findEnding(ending: EndingName): (word: StudiedLetters) => readonly Finding[] {
  return word => {
    if (!word.text.toLowerCase().endsWith(ending)) return []
    const found = heardEnding(word)
    if (found?.ending !== ending) return []
    const why = `-${ending} added to ${found.base} (${found.rule}), said /${found.heard}/`
    const end = word.text.length
    return [
      {
        ...findingAt(word, { pattern: `ending-${ending}`, start: end - ending.length, end, why }),
        madeOf: [found.base, `-${ending}`],
        rule: found.rule,
      },
    ]
  }
}

/** What differs from one ending to the next, in teaching order. */
const table: readonly (Teaching & { readonly ending: EndingName })[] = [
  {
    ending: 's',
    definition: '-s added to a word: reeds, cakes, swims',
    condition: 's at the end, after a known base, said /S/, /Z/ or as a syllable, as the base asks',
    example: { word: 'reeds', letters: 's' },
    counterExample: { word: 'bus', why: 'there is no word bu that it was added to' },
  },
  {
    ending: 'es',
    definition: '-es added to a word: marshes, boxes, ponies, wolves',
    condition:
      'es at the end, after a known base in s, x, z, ch, sh or o, or with its y changed to i or its f to v',
    example: { word: 'marshes', letters: 'es' },
    counterExample: { word: 'waves', why: 's alone was added: the e belongs to wave' },
  },
  {
    ending: 'ed',
    definition: '-ed added to a word: /T/ in jumped, /D/ in rained, a syllable /IH D/ in landed',
    condition: 'ed at the end, after a known base, with the sound that the base asks for',
    example: { word: 'landed', letters: 'ed' },
    counterExample: { word: 'sled', why: 'there is no word sl: its e is the short vowel' },
  },
  {
    ending: 'ing',
    definition: '-ing added to a word: fishing, making, running',
    condition: 'ing at the end, after a known base',
    example: { word: 'fishing', letters: 'ing' },
    counterExample: { word: 'spring', why: 'there is no word spr: ing is part of the word' },
  },
  {
    ending: 'er',
    definition: '-er added to a word: faster; baker, the one who bakes',
    condition: 'er at the end, after a known base; a list names look-alikes such as corner',
    example: { word: 'baker', letters: 'er' },
    counterExample: { word: 'corner', why: 'a corner has nothing to do with corn' },
  },
  {
    ending: 'est',
    definition: '-est added to a describing word: fastest, biggest, muddiest',
    condition: 'est at the end, after a known base',
    example: { word: 'fastest', letters: 'est' },
    counterExample: { word: 'forest', why: 'a forest has nothing to do with for' },
  },
]

const patternByEnding: ReadonlyMap<EndingName, Pattern> = new Map(
  table.map(({ ending, ...teaching }) => [
    ending,
    {
      name: `ending-${ending}`,
      scope: 'letters',
      ...teaching,
      source: commonPractice,
      spelledWith: new RegExp(`${ending}$`),
      find: findEnding(ending),
    },
  ]),
)

export const endings: readonly Pattern[] = [...patternByEnding.values()]

/** One of these endings begins at this letter. */
export function endingBegins(word: StudiedLetters, start: number, ...names: readonly EndingName[]): boolean {
  return names.some(name =>
    patternByEnding
      .get(name)
      ?.find(word)
      .some(found => found.start === start),
  )
}
