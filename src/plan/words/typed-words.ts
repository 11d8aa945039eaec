import type { Outcome } from '../../problems.js'
import type { FileAccess } from '../disk/file-access.js'
import type { PlanWord } from '../plan.js'
import { type EntryInFile, readWords } from './list-words.js'

export interface TypedWords {
  readonly words: readonly string[]
  readonly files: FileAccess
  readonly patterns: readonly string[]
}

/** Words typed on the command line, held to the same rules as a list's; no place but the command itself is told: the message names the word. */
export function typedWordList({ words, files, patterns }: TypedWords): Outcome<readonly PlanWord[]> {
  const file = 'oaktag'
  const items = words.map((text): EntryInFile => ({ entry: { kind: 'text', text, place: { file } }, file }))
  return readWords({ items, file }, { patterns, files, file })
}
