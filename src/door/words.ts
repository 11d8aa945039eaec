import { failWith, present, succeed } from '../outcomes.js'
import { disk } from '../plan/disk/disk.js'
import type { FileAccess } from '../plan/disk/file-access.js'
import type { PlanWord } from '../plan/plan.js'
import { typedWordList } from '../plan/words/typed-words.js'
import { formatProblem, type Outcome, type Problem } from '../problems.js'
import { formsOf as formsIn, type WordForm } from '../words/endings/forms.js'
import { installedLexicon } from '../words/lexicon/lexicon.js'
import { patternNames } from '../words/patterns/index.js'
import type { Use } from '../words/pronunciation/listed-pronunciations.js'
import { usesOf } from '../words/pronunciation/meant.js'
import { studyWord } from '../words/study.js'
import type { Word } from '../words/word.js'

/** A studied word: an entry of `oaktag study --json`. */
export type StudiedWord = { readonly word: string; readonly forms?: readonly WordForm[] } & Omit<
  Word,
  'text' | 'clue' | 'clueIsDraft' | 'sentence' | 'picture'
>

/** A word that is none: digits, spaces, other signs, more than thirty characters. */
export class NoWord extends Error {
  constructor(readonly problems: readonly Problem[]) {
    super(problems.map(formatProblem).join('\n'))
  }
}

/**
 * Studies words, in the order given: sounds, syllables, patterns, parts of speech, plural, other forms. What the lexicon
 * lacks is a guess and says so (`known: false`, `source: 'guess'`). Gives what `oaktag study --json` prints.
 * @throws NoWord with a problem for each that is no word
 */
export function study(words: readonly string[]): readonly StudiedWord[] {
  const studied = studyTypedWords(words)
  if (!studied.ok) throw new NoWord(studied.problems)
  return studied.value.map(studiedWord)
}

/** The word as the library gives it and `--json` prints it; what the teacher alone knows stays with her plan. */
export function studiedWord(word: Word): StudiedWord {
  const { text, clue: _clue, clueIsDraft: _draft, sentence: _sentence, picture: _picture, ...rest } = word
  const forms = formsOf(word)
  return { word: text, ...rest, ...(forms.length === 0 ? {} : { forms }) }
}

/** Words as they are typed, studied; problems where one is none. */
export function studyTypedWords(words: readonly string[]): Outcome<readonly Word[]> {
  const list = typedWordList({ words, files: disk, patterns: patternNames })
  return list.ok ? studyAll(list.value, list.problems) : list
}

/** The words of a list, `.txt` or `.csv`, studied. What reads files is loaded only for a file. */
export async function studyWordList(
  path: string,
  files: FileAccess = disk,
): Promise<Outcome<readonly Word[]>> {
  const { readWordListFile } = await import('../plan/words/word-list.js')
  const list = readWordListFile({ path, files, patterns: patternNames })
  return list.ok ? studyAll(list.value, list.problems) : list
}

/**
 * The words of a plan, the class's and then those of its groups that are others, each once, with the plan's accent,
 * its way of counting, and what the teacher says of them.
 */
export async function studyPlanWords(
  planFile: string,
  files?: FileAccess,
): Promise<Outcome<readonly Word[]>> {
  const { studyPlanFile } = await import('../pipeline.js')
  const read = studyPlanFile({ planFile, ...present({ files }) })
  if (!read.ok) return read
  return succeed([...new Set(read.value.words.values())], read.problems)
}

function studyAll(list: readonly PlanWord[], told: readonly Problem[]): Outcome<readonly Word[]> {
  const lexicon = installedLexicon()
  const studied = list.map(planWord => studyWord(planWord, lexicon))
  const problems = [...told, ...studied.flatMap(outcome => outcome.problems)]
  const words = studied.flatMap(outcome => (outcome.ok ? [outcome.value] : []))
  return words.length < studied.length ? failWith(problems) : succeed(words, problems)
}

/** The forms that a word takes by an ending, each with its rule in plain words. */
export function formsOf(word: Word): readonly WordForm[] {
  return formsIn(word, installedLexicon())
}

/** The words spelled like this one that are said otherwise, each with its meaning as `meant:` of a plan names it; else none. */
export function waysMeant({ text }: Pick<Word, 'text'>): readonly Use[] {
  return usesOf(installedLexicon().lookUp(text))
}

/** Why the analysis says what it says of a word; loaded only when somebody asks. */
export async function explain(word: Word) {
  const { explainWord } = await import('../words/explain.js')
  return explainWord(word, installedLexicon())
}

export type { Explanation } from '../words/explain.js'
export { plainName } from '../words/patterns/plain-name.js'
export { inPlainSounds, legend, respelling } from '../words/pronunciation/respelling.js'
export { divisionToWrite, soundsInASentence } from '../words/sounds-in-words.js'
export { listSummary } from '../words/summary.js'
export type { Word, WordForm }
