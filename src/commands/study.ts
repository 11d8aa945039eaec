import { disk } from '../plan/disk.js'
import { typedWordList } from '../plan/typed-words.js'
import { readWordListFile } from '../plan/word-list.js'
import type { Problem } from '../problems.js'
import { type Explanation, explainWord } from '../words/explain.js'
import { type Lexicon, openLexicon } from '../words/lexicon/lexicon.js'
import { patternNames } from '../words/patterns/index.js'
import { studyWord } from '../words/study.js'
import { listSummary } from '../words/summary.js'
import type { Word } from '../words/word.js'
import { type CommandResult, resultOf, wrongUsage } from './command-result.js'
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
  const list =
    file === undefined
      ? typedWordList({ words: word, files: disk, patterns: patternNames })
      : readWordListFile({ path: file, files: disk, patterns: patternNames })
  if (!list.ok) return resultOf('', list.problems)
  const lexicon = openLexicon()
  const studied = list.value.map(planWord => studyWord(planWord, lexicon))
  const problems: readonly Problem[] = [...list.problems, ...studied.flatMap(outcome => outcome.problems)]
  const words = studied.flatMap(outcome => (outcome.ok ? [outcome.value] : []))
  if (words.length < studied.length) return resultOf('', problems)
  if (json) return resultOf(JSON.stringify(words.map(wordJson), null, 2), problems)
  const blocks = words.map(each => describeWord(each, why ? lexicon : undefined).join('\n'))
  const summary = words.length > 1 ? listSummary(words).flatMap(line => wrapLine(line, 80)) : []
  return resultOf([...blocks, ...(summary.length === 0 ? [] : [summary.join('\n')])].join('\n\n'), problems)
}

/** A few lines that fit an 80-column terminal; with the reasons where a lexicon to explain them by is given. */
export function describeWord(word: Word, lexicon?: Lexicon): readonly string[] {
  const why = lexicon === undefined ? undefined : explainWord(word, lexicon)
  const lines = [
    `${word.text}${sourceNote(word)}`,
    ...soundLines(word, why),
    ...reasoned(syllablesOf(word), why?.syllables),
    ...reasoned(partsOfSpeechOf(word), why?.partsOfSpeech),
    ...word.patterns.map(({ pattern, letters, place, why: reason }) =>
      why === undefined ? `${pattern} ${letters} (${place})` : `${pattern} ${letters} (${place}): ${reason}`,
    ),
    ...(word.notes ?? []),
    ...clueLines(word, why !== undefined),
  ]
  return lines.flatMap((line, index) => wrapLine(index === 0 ? line : `  ${line}`, 80))
}

function soundLines(word: Word, why: Explanation | undefined): readonly string[] {
  const sounds = `${word.soundCount} ${word.soundCount === 1 ? 'sound' : 'sounds'}`
  const division = word.graphemes.map(grapheme => grapheme.letters).join('·')
  const said = word.pronunciations.map(pronunciation => `/${pronunciation}/`)
  const shown = why === undefined ? said.slice(0, mostSaid) : said
  return reasoned(`${sounds}: ${division}   said ${shown.join(' or ')}`, why?.pronunciation)
}

/** What the dictionary has besides is for those who ask why. */
const mostSaid = 2

function reasoned(line: string, why: string | undefined): readonly string[] {
  return why === undefined || why === '' ? [line] : [line, `  why: ${why}`]
}

function syllablesOf({ syllables }: Word): string {
  return `${syllables.length === 1 ? '1 syllable' : `${syllables.length} syllables`}: ${syllables.join('·')}`
}

function sourceNote({ source, overridden = [] }: Word): string {
  const yours = overridden.length === 0 ? '' : `  (yours: ${overridden.join(', ')})`
  return source === 'guess' ? `  (not in the lexicon: its sounds are a guess)${yours}` : yours
}

function partsOfSpeechOf({ partsOfSpeech, partsOfSpeechGuessed, plural }: Word): string {
  const parts = partsOfSpeech.join(', ') || 'part of speech unknown'
  const others = plural?.alternatives ?? []
  const endings = plural === null ? '' : `; plural ${[plural.form, ...others].join(' or ')} (${plural.rule})`
  return `${parts}${endings}${partsOfSpeechGuessed ? '  (a guess)' : ''}`
}

/** The teacher's own clue, or drafts for one. */
function clueLines({ clue, clueDrafts = [] }: Word, all: boolean): readonly string[] {
  if (clue !== undefined) return [`clue: ${clue}`]
  return clueDrafts.slice(0, all ? clueDrafts.length : 1).map(draft => `draft of a clue: ${draft}`)
}
