/** What a class has been taught to read: names of patterns, letters, words of earlier lists. */
import { andThen, failWith, succeed } from '../../outcomes.js'
import { errorAt, type Outcome, type Place } from '../../problems.js'
import type { FileAccess } from '../disk/file-access.js'
import { readTextFile } from '../disk/text-file.js'
import { reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import type { TaughtEntry } from '../plan.js'
import { foldName } from '../values/fold-name.js'
import { nearestAdvice } from '../values/nearest.js'
import { whereArePatterns } from '../words/pattern-override.js'
import { plainListEntries } from '../words/plain-list.js'
import { sameWord, wordText } from '../words/word-text.js'
import { type Entry, misfit, oneOrMore } from '../yaml/entry.js'

const form =
  'Write a pattern such as vowel-team, letters such as sh, a_e or ea as in sea, or a word, each on a line of its own.'

export function taughtReader(patterns: readonly string[]): ValueReader<readonly TaughtEntry[]> {
  const of: Takes = {
    kind: 'form',
    what: 'a pattern, letters or a word',
    samples: ['vowel-team', 'sh', 'ea as in sea'],
    pattern: String.raw`^\D+$`,
    plain: ['boolean', 'null'],
  }
  return reading({ kind: 'list', of, alone: true, empty: true }, entry => readTaught(entry, patterns))
}

/** A list or a single value; commas part several on one line. */
export function readTaught(entry: Entry, patterns: readonly string[]): Outcome<readonly TaughtEntry[]> {
  const read = oneOrMore(entry).flatMap(item => {
    if (item.kind !== 'text') return [misfit<TaughtEntry>(item, 'what has been taught', form)]
    const parts = item.text.split(/[,;]/).map(part => part.trim())
    return parts.filter(part => part !== '').map(part => readOne(part, item.place, patterns))
  })
  const problems = read.flatMap(outcome => outcome.problems)
  const taught = read.flatMap(outcome => (outcome.ok ? [outcome.value] : []))
  return taught.length < read.length ? failWith(problems) : succeed(taught, problems)
}

export interface TaughtFile {
  /** Path of a text file with one or several of them a line. */
  readonly path: string
  readonly files: FileAccess
  readonly patterns: readonly string[]
}

export function readTaughtFile({ path, files, patterns }: TaughtFile): Outcome<readonly TaughtEntry[]> {
  const place: Place = { file: path }
  return andThen(readTextFile({ path, what: 'the list of what is taught', place }, files), text => {
    const items = plainListEntries(path, text)
    if (items.length > 0) return readTaught({ kind: 'list', items, place }, patterns)
    return failWith([errorAt(place, 'the list of what is taught is empty', form)])
  })
}

function readOne(text: string, place: Place, patterns: readonly string[]): Outcome<TaughtEntry> {
  const folded = foldName(text)
  if (patterns.includes(folded)) return succeed({ kind: 'pattern', pattern: folded, place })
  const [, head = text, , asIn] = /^(\S+)(\s+as\s+in\s+(\S+))?$/i.exec(text) ?? []
  const letters = sameWord(head.replace(/^[-–…]+|[-–…]+$/g, ''))
  const fine = [...letters.split('_'), ...(asIn === undefined ? [] : [asIn])].every(
    part => !part.includes('-') && wordText(part, place).ok,
  )
  if (fine && !/\s/.test(head) && letters.split('_').length <= 2)
    return succeed({
      kind: 'letters',
      letters,
      place,
      ...(asIn === undefined ? {} : { asIn: sameWord(asIn) }),
    })
  const advice = /[\s-]/.test(text)
    ? nearestAdvice({ name: folded, known: patterns, where: whereArePatterns })
    : form
  return failWith([errorAt(place, `"${text}" is no pattern, no letters and no word`, advice)])
}
