/** The partner of a word in a sort by its ending or its plural: the word before it was changed, or after. */
import type { Word } from '../../words/word.js'
import type { SortKind } from './weights.js'

/** Only in these sorts has a word something before or after it that shows why it stands where it stands. */
const partners: Partial<Readonly<Record<SortKind, (word: Word) => string | undefined>>> = {
  'how an ending is added': baseOf,
  'sounds of an ending': baseOf,
  'sounds of s': baseOf,
  affixes: baseOf,
  plurals: pluralOf,
}

/** `hop` of hopping. */
function baseOf({ patterns }: Word): string | undefined {
  return patterns.find(({ pattern, madeOf }) => /^ending-(?!blend)/.test(pattern) && madeOf !== undefined)
    ?.madeOf?.[0]
}

/** `foxes` of fox, `sheep` of sheep; none that rests on a guess, or that nobody says. */
function pluralOf({ plural, partsOfSpeechGuessed }: Word): string | undefined {
  const isSaid = plural !== null && !/^(?:not counted|already plural|always plural)/.test(plural.rule)
  return isSaid && partsOfSpeechGuessed !== true ? plural.form : undefined
}

/** Undefined where a sort of this kind has no pairs. */
export function partnersIn(kind: SortKind): ((word: Word) => string | undefined) | undefined {
  return partners[kind]
}
