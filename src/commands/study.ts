import { disk } from '../plan/disk/disk.js'
import type { PlanWord } from '../plan/plan.js'
import { typedWordList } from '../plan/words/typed-words.js'
import type { Outcome, Problem } from '../problems.js'
import { openLexicon } from '../words/lexicon/lexicon.js'
import { patternNames } from '../words/patterns/index.js'
import { studyWord } from '../words/study.js'
import { listSummary } from '../words/summary.js'
import { type CommandResult, resultOf, wrongUsage } from './command-result.js'
import { describeWord } from './describe-word.js'
import { wordJson } from './word-json.js'
import { wrapLine } from './wrap-line.js'

export interface StudyOptions {
  readonly word: readonly string[]
  readonly file?: string | undefined
  readonly why: boolean
  readonly json: boolean
}

/** `oaktag study`: the analysis of each word, as a readable list or as JSON. */
export async function studyCommand({ word, file, why, json }: StudyOptions): Promise<CommandResult> {
  if (file === undefined && word.length === 0)
    return wrongUsage(
      'study needs words or a word list',
      'Write oaktag study reed marsh, or --file words.txt.',
    )
  if (file !== undefined && word.length > 0)
    return wrongUsage('study takes words or --file, not both', 'Leave out one of them.')
  const list = await wordsOf(word, file)
  if (!list.ok) return resultOf('', list.problems)
  const lexicon = openLexicon()
  const studied = list.value.map(planWord => studyWord(planWord, lexicon))
  const problems: readonly Problem[] = [...list.problems, ...studied.flatMap(outcome => outcome.problems)]
  const words = studied.flatMap(outcome => (outcome.ok ? [outcome.value] : []))
  if (words.length < studied.length) return resultOf('', problems)
  if (json) return resultOf(JSON.stringify(words.map(wordJson), null, 2), problems)
  const explain = why ? (await import('../words/explain.js')).explainWord : () => undefined
  const blocks = words.map(each => describeWord(each, explain(each, lexicon)).join('\n'))
  const summary = words.length > 1 ? listSummary(words).flatMap(line => wrapLine(line, 80)) : []
  return resultOf([...blocks, ...(summary.length === 0 ? [] : [summary.join('\n')])].join('\n\n'), problems)
}

/** What reads files is loaded only for a file: ten typed words must not wait for it. */
async function wordsOf(
  words: readonly string[],
  file: string | undefined,
): Promise<Outcome<readonly PlanWord[]>> {
  if (file === undefined) return typedWordList({ words, files: disk, patterns: patternNames })
  const { readWordListFile } = await import('../plan/words/word-list.js')
  return readWordListFile({ path: file, files: disk, patterns: patternNames })
}
