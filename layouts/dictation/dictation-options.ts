/** What a teacher may choose of a dictation. */
import { option, wholeNumber, yesNo } from '../../src/plan/values/options.js'
import type { RequestWith } from '../layout.js'

export const dictationOptions = {
  sentences: option('whether the children write the sentences that you gave too', yesNo(true)),
  children: option('how many children it is printed for', wholeNumber(1, 60, undefined), {
    example: '24',
    usual: 'as many as the plan says there are, and else as many as one sheet holds',
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
