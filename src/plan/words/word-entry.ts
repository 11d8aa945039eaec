/** One word of a list: plain text, or keys with the teacher's clue, picture and own analysis. */

import { andThen, fail, present, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem } from '../../problems.js'
import type { FileAccess } from '../disk/file-access.js'
import type { OverridePlaces, PlanWord, WordOverrides } from '../plan.js'
import { foldName } from '../values/fold-name.js'
import { choiceReader } from '../values/names.js'
import { textReader } from '../values/texts.js'
import { type Entry, type MapEntry, misfit, oneOrMore, type Reader } from '../yaml/entry.js'
import { readKeys, valueAt } from '../yaml/keys.js'
import { readDivision } from './letter-division.js'
import { partsOfSpeech } from './parts-of-speech.js'
import { readAlsoPatterns, readNotPatterns } from './pattern-override.js'
import { pictureReader } from './pictures.js'
import { isWord, wordText } from './word-text.js'

export interface WordContext {
  readonly patterns: readonly string[]
  readonly files: FileAccess
  /** The file that the word stands in: the paths of pictures are relative to it. */
  readonly file: string
}

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

const readTypedWord: Reader<string> = entry =>
  entry.kind === 'text' ? wordText(entry.text, entry.place) : misfit(entry, 'a word', wordKeys)

function wordFromKeys(map: MapEntry, context: WordContext): Outcome<PlanWord> {
  const mistaken = clueAsKey(map)
  if (mistaken !== undefined) return fail(mistaken)
  const typed = valueAt(map, 'word')
  const text = typed && readTypedWord(typed)
  /** What must fit the letters of the word is held against a good word only. */
  const fitting =
    <T>(read: (entry: Entry, word: string) => Outcome<T>): Reader<T | undefined> =>
    entry =>
      text?.ok ? read(entry, text.value) : succeed(undefined)
  const { patterns } = context
  const keys = readKeys(map, {
    what: 'a word',
    rules: typed ? [] : [wordMissing(map)],
    readers: {
      word: readTypedWord,
      clue: textReader('a clue', 300),
      picture: pictureReader(context.files, context.file),
      sounds: fitting((entry, word) => readDivision('sounds', entry, word)),
      syllables: fitting((entry, word) => readDivision('syllables', entry, word)),
      'part of speech': readPartsOfSpeech,
      plural: readPlural,
      not: fitting((entry, word) => readNotPatterns(entry, { patterns, word })),
      also: fitting((entry, word) => readAlsoPatterns(entry, { patterns, word })),
    },
    synonyms: { 'parts of speech': 'part of speech' },
  })
  return andThen(keys, ({ values, places }) => {
    const { word, clue, picture, sounds, syllables, plural = {} } = values
    const overrides: WordOverrides = {
      ...present({
        sounds,
        syllables,
        partsOfSpeech: values['part of speech'],
        notPatterns: values.not,
        alsoPatterns: values.also,
      }),
      ...plural,
    }
    const overridePlaces = placesOf(places)
    return succeed({
      text: word!,
      place: places.get('word')!,
      ...present({ clue, picture }),
      overrides,
      ...(Object.keys(overridePlaces).length === 0 ? {} : { overridePlaces }),
    })
  })
}

const overrideKeys = ['sounds', 'syllables', 'part of speech', 'plural', 'not', 'also'] as const

function placesOf(places: ReadonlyMap<string, Place>): OverridePlaces {
  return present(Object.fromEntries(overrideKeys.map(key => [key, places.get(key)])))
}

/** `- reed: a tall grass`. */
function clueAsKey(map: MapEntry): Problem | undefined {
  const [pair, ...more] = map.pairs
  if (pair === undefined || more.length > 0 || !isWord(pair.key) || wordKeyNames.has(foldName(pair.key)))
    return undefined
  const message = `"${pair.key}" is no key of a word`
  const advice = `For a word with a clue write "- word: ${pair.key}" and, on the line below it, "clue:" and the clue.`
  return errorAt(pair.keyPlace, message, advice)
}

const wordKeyNames = new Set(['word', 'clue', 'picture', 'sounds', 'syllables', 'plural', 'not', 'also'])

function wordMissing(map: MapEntry): Problem {
  return errorAt(map.place, 'an entry of the word list has no "word"', wordKeys)
}

/** One name or several, in a list or divided by commas. */
const readPartsOfSpeech: Reader<readonly string[]> = entry => {
  const read = choiceReader('a part of speech', partsOfSpeech)
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
