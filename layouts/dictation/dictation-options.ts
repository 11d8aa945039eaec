/** What a teacher may choose of a dictation. */
import { option, yesNo } from '../../src/plan/values/options.js'
import type { RequestWith } from '../layout.js'

export const dictationOptions = {
  sentences: option('whether the children write the sentences that you gave too', yesNo(true)),
}

export type DictationRequest = RequestWith<typeof dictationOptions>

/** The sentence that is read and written with a word; undefined where there is none. */
export function sentenceOf(
  { options: { sentences } }: DictationRequest,
  { sentence }: DictationRequest['words'][number],
): string | undefined {
  return sentences ? sentence : undefined
}
