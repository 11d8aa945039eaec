import type { Outcome } from '../door/problems.js'
import {
  explain,
  inPlainSounds,
  legend,
  listSummary,
  studiedWord,
  studyPlanWords,
  studyTypedWords,
  studyWordList,
  type Word,
} from '../door/words.js'
import { type CommandResult, resultOf, wrongUsage } from './command-result.js'
import { describeWord } from './describe-word.js'
import { type Input, STANDARD_INPUT } from './standard-input.js'
import { wrapLine } from './wrap-line.js'

export interface StudyOptions {
  readonly word: readonly string[]
  readonly file?: string | undefined
  readonly why: boolean
  readonly json: boolean
  /** As a word list for a spreadsheet. */
  readonly csv?: boolean | undefined
  /** Sounds in ARPABET instead of letters that a teacher reads. */
  readonly arpabet?: boolean | undefined
}

/** `oaktag study`: the analysis of each word, as a readable list or as JSON. */
export async function studyCommand(options: StudyOptions, input?: Input): Promise<CommandResult> {
  const { word, file, why, json, csv = false, arpabet = false } = options
  if (file === undefined && word.length === 0)
    return wrongUsage(
      'study needs words, a plan or a word list',
      'Write oaktag study reed marsh, oaktag study plan.yaml, or --file words.txt.',
    )
  if (file !== undefined && word.length > 0)
    return wrongUsage('study takes words or --file, not both', 'Leave out one of them.')
  if (csv && (json || why || arpabet))
    return wrongUsage('study --csv goes with no other way to write', 'Leave out --json, --why or --arpabet.')
  if (word.length > 1 && word.some(isPlan))
    return wrongUsage('study takes words or one plan, not both', 'Study the plan and the words apart.')
  const studied = await wordsOf(word, file, input)
  if (!studied.ok) return resultOf('', studied.problems)
  const { value: words, problems } = studied
  if (json) return resultOf(JSON.stringify(words.map(studiedWord), null, 2), problems)
  if (csv) return resultOf((await import('./words-csv.js')).wordsCsv(words), problems)
  const shown = (text: string) => (arpabet ? text : inPlainSounds(text))
  const blocks: string[] = []
  for (const each of words) {
    const reasons = why ? await explain(each) : undefined
    blocks.push(describeWord(each, { why: reasons, arpabet, shown }).join('\n'))
  }
  const ends = [
    ...(words.length > 1
      ? [
          listSummary(words)
            .flatMap(line => wrapLine(line, 80))
            .join('\n'),
        ]
      : []),
    ...(arpabet ? [] : legendOf(words)),
  ]
  return resultOf([...blocks, ...ends].join('\n\n'), problems)
}

const isPlan = (word: string): boolean => word === STANDARD_INPUT || /\.ya?ml$/i.test(word)

async function wordsOf(
  words: readonly string[],
  file: string | undefined,
  input: Input | undefined,
): Promise<Outcome<readonly Word[]>> {
  if (file !== undefined) return studyWordList(file)
  const [first = ''] = words
  if (!isPlan(first)) return studyTypedWords(words)
  const { planFiles } = await import('./plan-files.js')
  const { paths, files } = await planFiles([first], input)
  return studyPlanWords(paths[0]!, files)
}

/** What the signs of the sounds mean, as far as they are used. */
function legendOf(words: readonly Word[]): readonly string[] {
  const signs = legend(words.flatMap(({ pronunciations }) => pronunciations.slice(0, 2)))
  return signs.length === 0 ? [] : [wrapLine(`Sounds: ${signs.join(', ')}`, 80).join('\n')]
}
