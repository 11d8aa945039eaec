/**
 * The rule that the children may find: what stands round the letters of a sort, where that is one thing for all words of
 * a column and another for those of another. Nothing is told that does not hold for every word on the table.
 */
import { isVowelSound } from '../../../words/alignment/arpabet.js'
import { placeOf } from '../../../words/patterns/spelled-sounds.js'
import type { SortableWord } from '../../../words/sortable-word.js'
import type { Placement } from '../sort-basis.js'
import type { SortKind } from '../weights.js'

export interface PlacedWord {
  readonly word: SortableWord
  readonly placement: Placement
}

export interface TitledColumn {
  readonly title: string
  readonly words: readonly PlacedWord[]
}

export interface FoundRule {
  readonly ask: string
  readonly answer: string
}

/** Something to look at in a word, and what is seen there; undefined where it is not to be seen. */
interface Look {
  readonly ask: string
  readonly at: (placed: PlacedWord) => string | undefined
}

const place: Look = {
  ask: 'Where in the word does each stand?',
  at: ({ word, placement: { column, start, end } }) => {
    if (start === undefined || end === undefined) return undefined
    if (column.includes('_')) return 'round a consonant'
    return places[placeOf(word.text, start, end)]
  },
}

const places = {
  beginning: 'at the beginning',
  middle: 'inside the word',
  end: 'at the end',
  whole: undefined,
} as const

/** Only c, g and their partners go by the letter behind: common practice, no source. */
const letterBehind: Look = {
  ask: 'Which letter stands right behind it?',
  at: ({ word, placement: { start, end } }) => {
    if (end === undefined || !/[cgjks]/i.test(word.text.charAt(start ?? 0))) return undefined
    return /^[eiy]/i.test(word.text.slice(end))
      ? 'before e, i or y'
      : 'before any other letter, or at the end'
  },
}

const shortVowels: ReadonlySet<string> = new Set(['AE', 'EH', 'IH', 'AA', 'AO', 'AH'])

/** Only these go by the vowel before them: common practice, no source. */
const behindShortVowels = /^(?:ck|k|ke|c|t?ch|d?ge|j|ff?|ll?|ss?|se|ce|zz?|ze)$/

const vowelBefore: Look = {
  ask: 'What stands right before it?',
  at: ({ word: { graphemes }, placement: { column, start } }) => {
    if (!behindShortVowels.test(column)) return undefined
    const before = graphemes.findLast(grapheme => start !== undefined && grapheme.start < start)
    if (before === undefined || before.sounds.length === 0) return undefined
    const [sound = ''] = before.sounds
    return before.letters.length === 1 && before.sounds.length === 1 && shortVowels.has(sound)
      ? 'right behind a short vowel'
      : 'behind any other sound'
  },
}

/** Said with the breath alone: the consonants without voice of English (IPA chart: voiceless obstruents). */
const voiceless: ReadonlySet<string> = new Set(['P', 'T', 'K', 'F', 'TH', 'S', 'SH', 'CH', 'HH'])
const hissing: ReadonlySet<string> = new Set(['S', 'Z', 'SH', 'ZH', 'CH', 'JH'])

/** What the base ends with, for the ear: of `jumped` the p, of `waited` the t. */
function soundBefore(ask: string, syllable: ReadonlySet<string>, called: string): Look {
  return {
    ask,
    at: ({ word: { graphemes, patterns } }) => {
      const ending = patterns.find(({ pattern }) => /^ending-(?:ed|e?s)$/.test(pattern))
      const last = graphemes
        .filter(grapheme => ending !== undefined && grapheme.start < ending.start + addedBehind(ending))
        .findLast(({ sounds }) => sounds.length > 0)
      const sound = last?.sounds.at(-1)
      if (sound === undefined) return undefined
      if (syllable.has(sound)) return `behind ${called}`
      return voiceless.has(sound) ? 'behind a sound that does not hum' : 'behind a sound that hums'
    },
  }
}

/** Of `ies` and `ied` the i is the base's. */
function addedBehind({ letters }: { readonly letters: string }): number {
  return letters.startsWith('i') ? 1 : 0
}

const soundBeforeEd = soundBefore(
  'Which sound comes right before the -ed? With a hand at the throat, does it hum?',
  new Set(['T', 'D']),
  '/t/ or /d/',
)
const soundBeforeS = soundBefore(
  'Which sound comes right before the -s or -es? With a hand at the throat, does it hum?',
  hissing,
  'a hissing sound',
)

/** Of a word with an ending the word without it. */
function baseOf({ patterns }: SortableWord): string | undefined {
  return patterns.find(({ pattern, madeOf }) => /^ending-(?!blend)/.test(pattern) && madeOf !== undefined)
    ?.madeOf?.[0]
}

/** What the word ends with before its ending is added, for the eye. */
const endOfBase: Look = {
  ask: 'How does the word end before its ending is added?',
  at: ({ word }) => {
    const base = baseOf(word)
    if (base === undefined) return undefined
    if (/[^aeiou]y$/i.test(base)) return 'a consonant and y'
    if (/e$/i.test(base)) return 'silent e'
    return /(?:^|[^aeiou]|qu)[aeiou][^aeiouwxy]$/i.test(base)
      ? 'one vowel letter, one consonant'
      : 'in another way'
  },
}

/** What a naming word ends with before s or es is added, for ear and eye. */
const endOfNoun: Look = {
  ask: 'How does the word for one end?',
  at: ({ word }) => {
    const base = baseOf(word) ?? word.text
    if (/[^aeiou]y$/i.test(base)) return 'a consonant and y'
    if (/(?:s|x|z|ch|sh)$/i.test(base)) return 's, x, z, ch or sh'
    if (/[^f]fe?$/i.test(base)) return 'f or fe'
    return /o$/i.test(base) ? 'o' : 'another letter'
  },
}

const consonantsBetween: Look = {
  ask: 'How many consonant sounds stand between the first two vowels?',
  at: ({ word: { graphemes } }) => {
    const isVowel = graphemes.map(({ sounds }) => sounds.some(isVowelSound))
    const first = isVowel.indexOf(true)
    const second = isVowel.indexOf(true, first + 1)
    if (first < 0 || second < 0) return undefined
    const between = graphemes.slice(first + 1, second).filter(({ sounds }) => sounds.length > 0)
    return between.length > 1 || /^(.)\1$/i.test(between[0]?.letters ?? '') ? 'two or more letters' : 'one'
  },
}

/** The first of these that tells the columns apart is the rule. */
const looks: Partial<Readonly<Record<SortKind, readonly Look[]>>> = {
  'spellings of a sound': [place, letterBehind, vowelBefore],
  'spellings of a consonant': [place, letterBehind, vowelBefore],
  'sounds of a spelling': [place],
  'letters of a pattern': [place],
  'spellings of vowels': [place],
  'hard and soft': [letterBehind],
  'how an ending is added': [endOfBase],
  'sounds of an ending': [soundBeforeEd],
  'sounds of s': [soundBeforeS],
  plurals: [endOfNoun],
  'first syllable': [consonantsBetween],
}

function looksAt(kind: SortKind, of: string): readonly Look[] {
  if (kind === 'how an ending is added' && of === 's') return [endOfNoun]
  // What stands between the vowels is what those columns are, not a rule to find.
  return kind === 'first syllable' && of === 'between' ? [] : (looks[kind] ?? [])
}

/** Undefined where nothing that stands round the letters tells the columns apart. */
export function ruleToFind(
  kind: SortKind,
  of: string,
  columns: readonly TitledColumn[],
): FoundRule | undefined {
  for (const { ask, at } of looksAt(kind, of)) {
    const seen = columns.map(({ title, words }) => ({ title, values: new Set(words.map(at)) }))
    const values = new Set(seen.flatMap(each => [...each.values]))
    if (values.size < 2 || seen.some(each => each.values.size > 1 || each.values.has(undefined))) continue
    const told = [...values].map(value => {
      const titles = seen.filter(each => each.values.has(value)).map(({ title }) => title)
      return `${titles.join(', ')}: ${value}`
    })
    return { ask, answer: `${told.join('; ')}: so it is in all words here.` }
  }
  return undefined
}
