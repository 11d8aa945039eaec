import { disk } from '../plan/disk.js'
import { typedWordList } from '../plan/typed-words.js'
import { readWordListFile } from '../plan/word-list.js'
import type { Problem } from '../problems.js'
import { openLexicon } from '../words/lexicon/lexicon.js'
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
  const blocks = words.map(each => describeWord(each, why).join('\n'))
  const summary = words.length > 1 ? listSummary(words).flatMap(line => wrapLine(line, 80)) : []
  return resultOf([...blocks, ...(summary.length === 0 ? [] : [summary.join('\n')])].join('\n\n'), problems)
}

/** A few lines that fit an 80-column terminal. */
export function describeWord(word: Word, why: boolean): readonly string[] {
  const sounds = `${word.soundCount} ${word.soundCount === 1 ? 'sound' : 'sounds'}`
  const division = word.graphemes.map(grapheme => grapheme.letters).join('·')
  const said = word.pronunciations.map(pronunciation => `/${pronunciation}/`).join(' or ')
  const lines = [
    `${word.text}${sourceNote(word)}`,
    `  ${sounds}: ${division}   said ${said}`,
    `  ${word.syllables.length === 1 ? '1 syllable' : `${word.syllables.length} syllables`}: ${word.syllables.join('·')}`,
    `  ${word.partsOfSpeech.join(', ') || 'part of speech unknown'}${pluralNote(word)}`,
  ]
  const findings = word.patterns.map(finding =>
    why
      ? `  ${finding.pattern} ${finding.letters} (${finding.place}): ${finding.why}`
      : `  ${finding.pattern} ${finding.letters} (${finding.place})`,
  )
  return [...lines, ...findings].flatMap(line => wrapLine(line, 80))
}

function sourceNote(word: Word): string {
  if (word.source === 'guess') return '  (not in the lexicon: everything below is a guess)'
  return word.source === 'teacher' ? '  (your own division)' : ''
}

function pluralNote({ plural }: Word): string {
  if (plural === null) return ''
  const others = plural.alternatives ?? []
  return `; plural ${[plural.form, ...others].join(' or ')} (${plural.rule})`
}
