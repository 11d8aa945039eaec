/** Words for plans of any length, as YAML lists. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildFolder } from '../../src/installation.js'

/** Those that `find` offers, the most frequent first, quoted, since some of them are signs in YAML. */
export function familiarWords(): readonly string[] {
  const offered = readFileSync(join(buildFolder, 'offered-words.txt'), 'utf8')
  return [...new Set([...offered.matchAll(/^\d{4}([a-z]{3,9})\t/gm)].map(match => `"${match[1]}"`))]
}

export function list(words: readonly string[]): string {
  return words.join(', ')
}
