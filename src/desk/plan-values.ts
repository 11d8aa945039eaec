/** Reading the plan's data: keys in any spelling, lists that may be a single entry, and what is to be changed there. */
import type { Change, Data, DeskPlan, DeskWord, Path, ToldEntry } from './messages.js'

export interface Keys {
  readonly [key: string]: Data
}

export function isKeys(data: Data | null | undefined): data is Keys {
  return typeof data === 'object' && data !== null && !Array.isArray(data)
}

function isList(data: Data | null | undefined): data is readonly Data[] {
  return Array.isArray(data)
}

/** What of these keys no control of the page stands for. */
export function keysBeside(
  data: Data | null,
  shown: readonly string[],
): readonly (readonly [string, Data])[] {
  const known = shown.map(folded)
  return isKeys(data) ? Object.entries(data).filter(([key]) => !known.includes(folded(key))) : []
}

/** Names and keys in any spelling. */
export function folded(key: string): string {
  return key
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, '-')
}

/** The key as the plan writes it, or as it is given. */
export function keyIn(data: Data | null | undefined, ...spellings: readonly string[]): string {
  const keys = isKeys(data) ? Object.keys(data) : []
  const found = keys.find(key => spellings.some(each => folded(each) === folded(key)))
  return found ?? spellings[0] ?? ''
}

export function valueAt(data: Data | null | undefined, ...spellings: readonly string[]): Data | undefined {
  return isKeys(data) ? data[keyIn(data, ...spellings)] : undefined
}

export function textOf(data: Data | null | undefined, ...spellings: readonly string[]): string {
  const value = valueAt(data, ...spellings)
  return typeof value === 'string' ? value : ''
}

/** The entries of a list; a text alone is one. */
export function entriesOf(data: Data | undefined): readonly Data[] {
  if (isList(data)) return data
  return data === undefined || data === '' ? [] : [data]
}

export function listOf(data: Data | null | undefined, key: string): readonly Data[] {
  return entriesOf(valueAt(data, key))
}

/** What a text is to become; an empty one takes the key out. */
export function textChange(
  holder: Data | undefined,
  path: Path,
  value: string,
  textAs?: string,
): readonly Change[] {
  const key = path.at(-1)
  const isThere = typeof key === 'string' && valueAt(holder, key) !== undefined
  if (value === '') return isThere ? [{ kind: 'remove', path }] : []
  return [{ kind: 'set', path, value, ...(textAs === undefined ? {} : { textAs }) }]
}

/**
 * What a list of texts is to hold. One with lines of its own is changed by what goes and what comes, so that the notes in
 * it stay; an empty one takes its key out.
 */
export function listChange(
  holder: Data | undefined,
  path: Path,
  values: readonly Data[],
  textAs?: string,
): readonly Change[] {
  const key = path.at(-1)
  const old = typeof key === 'string' ? valueAt(holder, key) : undefined
  if (values.length === 0) return old === undefined ? [] : [{ kind: 'remove', path }]
  if (!isList(old)) return [{ kind: 'set', path, value: values, ...(textAs === undefined ? {} : { textAs }) }]
  const come = values.filter(each => !old.includes(each))
  const gone = old.flatMap((each, at) => (values.includes(each) ? [] : [at])).toReversed()
  return [
    ...(come.length === 0 ? [] : [{ kind: 'insert', path, at: old.length, values: come } as const]),
    ...gone.map(at => ({ kind: 'remove', path: [...path, at] }) as const),
  ]
}

/** What stands there becomes another value, whatever it was: what has lines of its own is taken out first, its notes stay. */
export function replaced(
  holder: Data | undefined,
  path: Path,
  value: Data,
  textAs?: string,
): readonly Change[] {
  const key = path.at(-1)
  const old = typeof key === 'string' ? valueAt(holder, key) : undefined
  const come: Change = { kind: 'set', path, value, ...(textAs === undefined ? {} : { textAs }) }
  return typeof old === 'object' ? [{ kind: 'remove', path }, come] : [come]
}

/** Undefined takes the key out. */
export function sizeChange(
  holder: Data | undefined,
  path: Path,
  value: Data | undefined,
  textAs: string,
): readonly Change[] {
  if (value !== undefined) return replaced(holder, path, value, textAs)
  const key = path.at(-1)
  const isThere = typeof key === 'string' && valueAt(holder, key) !== undefined
  return isThere ? [{ kind: 'remove', path }] : []
}

/** A list of words in a file of its own, as a plan names it. */
export function isListFile(entry: Data): entry is string {
  return typeof entry === 'string' && /\.(?:txt|csv)$/i.test(entry)
}

/** Which of its two keys holds the words of a group. */
export function ownWordsKey(group: Data): 'words' | 'more words' {
  const isBeside = valueAt(group, 'words') === undefined && valueAt(group, 'more words') !== undefined
  return isBeside ? 'more words' : 'words'
}

/** Names of the lists that the plan takes words from, for the class or a group. */
export function listFilesIn(data: Data | null): readonly string[] {
  const ofGroups = listOf(data, 'groups').flatMap(group =>
    ['words', 'more words'].flatMap(key => listOf(group, key)),
  )
  return [...new Set([...listOf(data, 'words'), ...ofGroups].filter(isListFile))]
}

/** The entries of a list that are words, each with its place in the list. */
export function studiedWords(words: readonly ToldEntry[]): readonly {
  readonly word: DeskWord
  readonly index: number
}[] {
  return words.flatMap((word, index) => (word !== null && 'text' in word ? [{ word, index }] : []))
}

/** Every word of the plan, each once: of the class, of lists beside it, of groups. */
export function allWords({
  words,
  files,
  groups,
}: Pick<DeskPlan, 'words' | 'files' | 'groups'>): readonly string[] {
  const lists = [words, ...files.map(file => file.words), ...groups.map(group => group.words)]
  return [...new Set(lists.flatMap(list => studiedWords(list).map(({ word }) => word.text)))]
}

/** The form in which two entries are one word. */
export function spelling(entry: Data): string {
  return (typeof entry === 'string' ? entry : textOf(entry, 'word')).toLowerCase()
}

/** The words of a list's file stand in the plan, where its name stood; those that are there already stay as they are. */
export function broughtIn(
  words: readonly Data[],
  index: number,
  listed: readonly Data[],
  path: Path = ['words'],
): readonly Change[] {
  const there = words.map(spelling)
  const values = listed.filter(
    (each, at) =>
      !there.includes(spelling(each)) && listed.findIndex(other => spelling(other) === spelling(each)) === at,
  )
  const come: readonly Change[] = values.length === 0 ? [] : [{ kind: 'insert', path, at: index + 1, values }]
  return [...come, { kind: 'remove', path: [...path, index] }]
}

const partKeys = ['part of speech', 'parts of speech'] as const

/** The parts of speech that she gave a word, in her order. */
export function partsIn(entry: Data): readonly string[] {
  return entriesOf(valueAt(entry, ...partKeys)).flatMap(each =>
    typeof each === 'string' ? each.split(',').map(part => part.trim().toLowerCase()) : [],
  )
}

/** @param at where the word stands */
export function partsChange(entry: Data, at: Path, parts: readonly string[]): readonly Change[] {
  const path = [...at, keyIn(entry, ...partKeys)]
  const old = valueAt(entry, ...partKeys)
  const [only = ''] = parts
  if (parts.length < 2 && !isList(old)) return textChange(entry, path, only, 'word')
  // A list on lines of its own is not written over: it goes, and the new one comes.
  const gone: readonly Change[] = isList(old) ? [{ kind: 'remove', path }] : []
  if (parts.length === 0) return gone
  return [...gone, { kind: 'set', path, value: parts.length === 1 ? only : parts, textAs: 'word' }]
}
