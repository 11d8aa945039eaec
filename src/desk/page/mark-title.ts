/** What a mark is put on, and how that is called. */
import type { Data } from '../messages.js'
import { textOf } from '../plan-values.js'

export const wholeWords: readonly string[] = ['part of speech', 'plural', 'sounds', 'syllables']

export function targetIn(entry: Data): { readonly key: string; readonly value: string } {
  const keys = ['pattern', 'letters', ...wholeWords]
  const key = keys.find(each => textOf(entry, each) !== '') ?? ''
  return { key, value: textOf(entry, key) }
}

export function markTitle(entry: Data, plain: (pattern: string) => string): string {
  const { key, value } = targetIn(entry)
  if (key === 'pattern') return plain(value)
  if (key === 'letters') return `letters ${value}`
  if (key === 'part of speech') return `each ${value}`
  if (key === 'plural') return `words whose plural is made so: ${value}`
  return `words of ${value} ${Number(value) === 1 ? key.replace(/s$/, '') : key}`
}
