/** The words that never come before children, as a file: a line a word. `npm run build` writes it with the lexicon. */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildFolder } from '../../installation.js'
import { lazily } from '../../lazily.js'

export const unfitPath = join(buildFolder, 'unfit-words.txt')

/** Two letters beside each other say nothing yet. */
const LEAST_LETTERS = 3

export function writeUnfitWords(words: ReadonlySet<string>): string {
  const kept = [...words].filter(word => word.length >= LEAST_LETTERS && /^[a-z]+$/.test(word))
  return `${kept.sort().join('\n')}\n`
}

/** @throws Error with what to do, when the file is missing */
export const unfitWords: () => ReadonlySet<string> = lazily(() => {
  if (!existsSync(unfitPath))
    throw new Error(
      `The list of words kept from children is missing (${unfitPath}). Run "npm run build" to make it.`,
    )
  return new Set(
    readFileSync(unfitPath, 'latin1')
      .split('\n')
      .filter(word => word !== ''),
  )
})
