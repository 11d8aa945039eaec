/** One word of a list: plain text, or keys with the teacher's clue, picture and own analysis. */
import type { Outcome } from '../problems.js'
import { errorAt } from '../problems.js'
import { type Entry, type MapEntry, misfit, oneOrMore, type Reader } from './entry.js'
import type { FileAccess } from './file-access.js'
import { readKeys } from './keys.js'
import { readDivision } from './letter-division.js'
import { choiceReader } from './names.js'
import { andThen, fail, present, record, succeed, together } from './outcomes.js'
import { readAlsoPatterns, readNotPatterns } from './pattern-override.js'
import { pictureReader } from './pictures.js'
import type { PlanWord, WordOverrides } from './plan.js'
import { textReader } from './texts.js'
import { wordText } from './word-text.js'

export interface WordContext {
  readonly patterns: readonly string[]
  readonly files: FileAccess
  /** The file that the word stands in: the paths of pictures are relative to it. */
  readonly file: string
}

export const partOfSpeechNames = [
  'noun',
  'verb',
  'adjective',
  'adverb',
  'pronoun',
  'preposition',
  'conjunction',
  'determiner',
  'interjection',
  'number',
] as const

const wordKeys = 'Write the word alone, or word: and its keys, such as clue: or sounds:.'

export function readWord(entry: Entry, context: WordContext): Outcome<PlanWord> {
  if (entry.kind === 'text') {
    return andThen(wordText(entry.text, entry.place), text =>
      succeed({ text, place: entry.place, overrides: {} }),
    )
  }
  if (entry.kind === 'map') return wordFromKeys(entry, context)
  if (entry.kind === 'list') return misfit(entry, 'a word', wordKeys)
  return fail(errorAt(entry.place, 'a place in the list is empty', 'Write the word, or take the line out.'))
}

/** Kept unread until the word is known, which their letters must fit. */
const later: Reader<Entry> = entry =>
  entry.kind === 'empty' ? misfit(entry, 'a value', 'Write its value.') : succeed(entry)

const readTypedWord: Reader<string> = entry =>
  entry.kind === 'text' ? wordText(entry.text, entry.place) : misfit(entry, 'a word', wordKeys)

function wordFromKeys(map: MapEntry, context: WordContext): Outcome<PlanWord> {
  const keys = readKeys(map, {
    what: 'a word',
    readers: {
      word: readTypedWord,
      clue: textReader('a clue', 300),
      picture: pictureReader(context.files, context.file),
      sounds: later,
      syllables: later,
      'part of speech': readPartsOfSpeech,
      plural: readPlural,
      not: later,
      also: later,
    },
    synonyms: { 'parts of speech': 'part of speech' },
  })
  return andThen(keys, ({ values, places }) => {
    const { word: text, clue, picture, plural = {} } = values
    if (text === undefined) return fail(wordMissing(map))
    const about = { patterns: context.patterns, word: text }
    const divided = record({
      sounds: ifGiven(values.sounds, entry => readDivision('sounds', entry, text)),
      syllables: ifGiven(values.syllables, entry => readDivision('syllables', entry, text)),
      notPatterns: ifGiven(values.not, entry => readNotPatterns(entry, about)),
      alsoPatterns: ifGiven(values.also, entry => readAlsoPatterns(entry, about)),
    })
    return andThen(divided, read => {
      const overrides: WordOverrides = {
        ...present({ ...read, partsOfSpeech: values['part of speech'] }),
        ...plural,
      }
      return succeed({ text, place: places.get('word')!, ...present({ clue, picture }), overrides })
    })
  })
}

function ifGiven<T>(entry: Entry | undefined, read: (entry: Entry) => Outcome<T>): Outcome<T | undefined> {
  return entry === undefined ? succeed(undefined) : read(entry)
}

function wordMissing(map: MapEntry) {
  return errorAt(map.place, 'an entry of the word list without its "word"', wordKeys)
}

/** One name or several, in a list or divided by commas. */
const readPartsOfSpeech: Reader<readonly string[]> = entry => {
  const read = choiceReader('a part of speech', partOfSpeechNames)
  const items = oneOrMore(entry).flatMap((item): readonly Entry[] =>
    item.kind === 'text'
      ? item.text.split(/\s*(?:[,;/]|\band\b)\s*/).map(text => ({ ...item, text }))
      : [item],
  )
  if (items.length === 0) return misfit(entry, 'a part of speech', 'Write noun, verb, adjective or another.')
  return andThen(together(items.map(read)), names => succeed([...new Set(names)]))
}

/** A word, or `none` for a word that has no plural. */
const readPlural: Reader<Pick<WordOverrides, 'plural' | 'noPlural'>> = entry => {
  if (entry.kind !== 'text') return misfit(entry, 'a plural', 'Write one word, or none.')
  if (/^none$/i.test(entry.text)) return succeed({ noPlural: true })
  return andThen(wordText(entry.text, entry.place), plural => succeed({ plural }))
}
