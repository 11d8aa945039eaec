/** The answers of an item as plain data, for a machine to check: what stands in the manifest under `answer`. */
export type AnswerData =
  | string
  | number
  | boolean
  | null
  | readonly AnswerData[]
  | { readonly [name: string]: AnswerData }

/** Of a set of one board or sheet its answer, of several a list of them, in the order of their numbers. */
export function answerOfEach(answers: readonly AnswerData[]): AnswerData {
  return answers.length === 1 ? answers[0]! : answers
}
