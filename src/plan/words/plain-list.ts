import type { Place } from '../../problems.js'
import type { Entry } from '../yaml/entry.js'

/** A word a line; blank lines and what follows a `#` are passed over. */
export function plainListEntries(file: string, text: string): readonly Entry[] {
  return text.split('\n').flatMap((line, index): readonly Entry[] => {
    const content = line.replace(/(?:^|\s)#.*$/, '')
    const word = content.trim()
    if (word === '') return []
    const place: Place = { file, line: index + 1, column: content.indexOf(word) + 1 }
    return [{ kind: 'text', text: word.normalize('NFC'), place }]
  })
}
