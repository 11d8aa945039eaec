/** One word of a list: plain text, or keys with the teacher's clue, picture and own analysis. */

import { andThen, fail, present, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome, type Place, type Problem } from '../../problems.js'
import { disk } from '../disk/disk.js'
import type { FileAccess } from '../disk/file-access.js'
import { key, reading } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import type { OverridePlaces, PlanWord, WordOverrides } from '../plan.js'
import { foldName } from '../values/fold-name.js'
import { choiceReader } from '../values/names.js'
import type { OtherNames } from '../values/nearest.js'
import { textReader } from '../values/texts.js'
import { type Entry, type MapEntry, misfit, oneOrMore } from '../yaml/entry.js'
import { readKeys, valueAt } from '../yaml/keys.js'
import { divisionTaken, readDivision } from './letter-division.js'
import { partsOfSpeech } from './parts-of-speech.js'
import { findingsTaken, readAlsoPatterns, readNotPatterns } from './pattern-override.js'
import { pictureReader } from './pictures.js'
import { isWord, wordPattern, wordText } from './word-text.js'

export interface WordContext {
  readonly patterns: readonly string[]
  readonly files: FileAccess
  /** The file that the word stands in: the paths of pictures are relative to it. */
  readonly file: string
  /** For keys that are none of a word. */
  readonly otherKeys?: () => OtherNames
}

const form = 'Write the word alone, or word: and its keys, such as clue: or sounds:.'

export function readWord(entry: Entry, context: WordContext): Outcome<PlanWord> {
  if (entry.kind === 'text') {
    return andThen(wordText(entry.text, entry.place), text =>
      succeed({ text, place: entry.place, overrides: {} }),
    )
  }
  if (entry.kind === 'map') return wordFromKeys(entry, context)
  if (entry.kind === 'list') return misfit(entry, 'a word', form)
  return fail(errorAt(entry.place, 'a place in the list is empty', 'Write the word, or take the line out.'))
}

/** `no`, `true` and `null` are words in a list. */
const wordAlone: Takes = {
  kind: 'form',
  what: 'a word',
  samples: ['marsh'],
  pattern: wordPattern,
  plain: ['boolean', 'null'],
}

const readTypedWord = reading<string>(wordAlone, entry =>
  entry.kind === 'text' ? wordText(entry.text, entry.place) : misfit(entry, 'a word', form),
)

const wordSynonyms = { 'parts of speech': 'part of speech' } as const

/** What must fit the letters of the word is held against a good word only. */
function wordKeys({ patterns, files, file }: WordContext, word: string | undefined) {
  const fitting = <T>(takes: Takes, read: (entry: Entry, word: string) => Outcome<T>) =>
    reading<T | undefined>(takes, entry => (word === undefined ? succeed(undefined) : read(entry, word)))
  const division = (part: 'sounds' | 'syllables') =>
    fitting(divisionTaken(part), (entry, text) => readDivision(part, entry, text))
  return {
    word: key('the word', readTypedWord, { example: 'marsh' }),
    clue: key('what it means, for call cards, pairs and backs', textReader('a clue', 300), {
      example: 'wet, grassy land',
    }),
    sentence: key('a sentence with it, to write from dictation', textReader('a sentence', 160), {
      example: 'The marsh is wet.',
    }),
    picture: key('your own picture of it', pictureReader(files, file)),
    meant: key(
      'which of two words spelled alike you mean, as study tells them',
      textReader('a meaning', 60),
      {
        example: 'to turn',
        usual: 'the first that study tells',
        beside: 'word: wind',
      },
    ),
    sounds: key('your own division into sounds; it wins over ours', division('sounds')),
    syllables: key('your own division into syllables; it wins over ours', division('syllables'), {
      beside: 'word: market',
    }),
    'part of speech': key('what kind of word it is in your lesson', readPartsOfSpeech),
    plural: key('its plural, or none', readPlural),
    not: key(
      'patterns that you do not want found in it',
      fitting(findingsTaken(patterns, false), (entry, text) =>
        readNotPatterns(entry, { patterns, word: text }),
      ),
    ),
    also: key(
      'patterns that you see in it besides',
      fitting(findingsTaken(patterns, true), (entry, text) =>
        readAlsoPatterns(entry, { patterns, word: text }),
      ),
      { beside: 'word: knot' },
    ),
  }
}

/** A word alone, or its keys. */
export function wordTaken(context: WordContext): Takes {
  return {
    kind: 'any of',
    ways: [
      wordAlone,
      {
        kind: 'keys',
        what: 'a word',
        keys: () => wordKeys(context, undefined),
        needed: ['word'],
        beside: 'word: marsh',
        synonyms: wordSynonyms,
      },
    ],
  }
}

function wordFromKeys(map: MapEntry, context: WordContext): Outcome<PlanWord> {
  const mistaken = clueAsKey(map)
  if (mistaken !== undefined) return fail(mistaken)
  const typed = valueAt(map, 'word')
  const text = typed && readTypedWord(typed)
  const keys = readKeys(map, {
    what: 'a word',
    rules: typed ? [] : [wordMissing(map)],
    readers: wordKeys(context, text?.ok ? text.value : undefined),
    synonyms: wordSynonyms,
    ...present({ others: context.otherKeys }),
  })
  return andThen(keys, ({ values, places }) => {
    const { word, clue, sentence, picture, meant, sounds, syllables, plural = {} } = values
    const overrides: WordOverrides = {
      ...present({
        meant,
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
      ...present({ clue, sentence, picture }),
      overrides,
      ...(Object.keys(overridePlaces).length === 0 ? {} : { overridePlaces }),
    })
  })
}

const overrideKeys = ['meant', 'sounds', 'syllables', 'part of speech', 'plural', 'not', 'also'] as const

function placesOf(places: ReadonlyMap<string, Place>): OverridePlaces {
  return present(Object.fromEntries(overrideKeys.map(key => [key, places.get(key)])))
}

/** The keys that a word takes. */
export function keysOfWord(): readonly string[] {
  const context: WordContext = { patterns: [], files: disk, file: '' }
  return Object.keys(wordKeys(context, undefined))
}

function isKeyOfWord(name: string): boolean {
  return keysOfWord().some(known => foldName(known) === foldName(name))
}

/** `- reed: a tall grass`. */
function clueAsKey(map: MapEntry): Problem | undefined {
  const [pair, ...more] = map.pairs
  if (pair === undefined || more.length > 0 || !isWord(pair.key) || isKeyOfWord(pair.key)) return undefined
  const message = `"${pair.key}" is no key of a word`
  const advice = `For a word with a clue write "- word: ${pair.key}" and, on the line below it, "clue:" and the clue.`
  return errorAt(pair.keyPlace, message, advice)
}

function wordMissing(map: MapEntry): Problem {
  return errorAt(map.place, 'an entry of the word list has no "word"', form)
}

/** One name or several, in a list or divided by commas. */
const readPartOfSpeech = choiceReader('a part of speech', partsOfSpeech)

const partsTaken: Takes = {
  kind: 'list',
  of: {
    kind: 'form',
    what: 'a part of speech',
    samples: ['noun', 'verb'],
    pattern: String.raw`^(?:\s*(?:${partsOfSpeech.join('|')})\s*(?:[,;/]|\band\b|$))+$`,
  },
  alone: true,
  empty: false,
}

const readPartsOfSpeech = reading<readonly string[]>(partsTaken, entry => {
  const items = oneOrMore(entry).flatMap((item): readonly Entry[] =>
    item.kind === 'text'
      ? item.text.split(/\s*(?:[,;/]|\band\b)\s*/).map(text => ({ ...item, text }))
      : [item],
  )
  if (items.length === 0) return misfit(entry, 'a part of speech', 'Write noun, verb, adjective or another.')
  return andThen(together(items.map(readPartOfSpeech)), names => succeed([...new Set(names)]))
})

/** A word, or `none` for a word that has no plural. */
const pluralTaken: Takes = {
  kind: 'form',
  what: 'one word, or none',
  samples: ['marshes', 'none'],
  pattern: wordPattern,
  plain: ['boolean', 'null'],
}

const readPlural = reading<Pick<WordOverrides, 'plural' | 'noPlural'>>(pluralTaken, entry => {
  if (entry.kind !== 'text') return misfit(entry, 'a plural', 'Write one word, or none.')
  if (/^none$/i.test(entry.text)) return succeed({ noPlural: true })
  return andThen(wordText(entry.text, entry.place), plural => succeed({ plural }))
})
