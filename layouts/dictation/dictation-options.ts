/** What a teacher may choose of a dictation. */
import { option, wholeNumber, yesNo } from '../../src/plan/values/options.js'
import type { RequestWith, RoomierOptions } from '../layout.js'

export const dictationOptions = {
  sentences: option('whether the children write the sentences that you gave too', yesNo(true)),
  children: option('how many children it is printed for', wholeNumber(1, 60, undefined), {
    example: '24',
    usual: 'as many as the plan says there are, and else as many as one sheet holds',
  }),
  parts: option('in how many parts a child writes the list, a piece each', wholeNumber(1, 6, undefined), {
    example: '2',
    usual: 'one, or as many as its lines need',
  }),
}

/** Pieces on a sheet: two half sheets, one in large print. */
export const dictationsPerSheet = {
  usual: { columns: 2, rows: 1 },
  large: { columns: 1, rows: 1 },
} as const

export type DictationRequest = RequestWith<typeof dictationOptions>

/** The sentence that is read and written with a word; undefined where there is none. */
export function sentenceOf(
  { options: { sentences } }: DictationRequest,
  { sentence }: DictationRequest['words'][number],
): string | undefined {
  return sentences ? sentence : undefined
}

/** How many children's sheets are made; a number of copies that she names is all that she wants. */
export function sheetsFor({ options, item, children, type }: DictationRequest): number {
  if (item.copies > 1) return options.children ?? 1
  const { usual, large } = dictationsPerSheet
  return options.children ?? children ?? (type.large ? large : usual).columns
}

const MOST_PARTS = 6

/** The words of a part, and the number of its first. */
export interface DictationPart {
  readonly words: DictationRequest['words']
  readonly from: number
}

/** As even as can be. */
export function partsOf({ options: { parts = 1 }, words }: DictationRequest): readonly DictationPart[] {
  const count = Math.min(parts, words.length)
  const start = (part: number) => Math.round((part * words.length) / count)
  return Array.from({ length: count }, (_, part) => ({
    words: words.slice(start(part), start(part + 1)),
    from: start(part) + 1,
  }))
}

/** Where the lines of all words are too many for one piece. */
export function inMoreParts({
  options: { parts },
}: DictationRequest): readonly RoomierOptions<DictationRequest['options']>[] {
  const now = parts ?? 1
  return Array.from({ length: MOST_PARTS - now }, (_, more) => ({
    options: { parts: now + more + 1 },
    says: `parts: ${now + more + 1}`,
    open: parts === undefined,
    timesSheets: (now + more + 1) / now,
  }))
}
