/** The class file: what a teacher has decided about words, carried from week to week. The plan wins over it. */
import { andThen, fail, present, succeed } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import { readTextFile } from '../disk/text-file.js'
import { key, reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import type { Accent, CountSounds, PlanWord, PrinterSetting, TaughtEntry } from '../plan.js'
import { pathFrom } from '../review/earlier-plan.js'
import { type ReviewSetting, readClassReview } from '../review/review-key.js'
import { childrenReader } from '../values/numbers.js'
import { readWords } from '../words/list-words.js'
import { wordEntries, wordListTaken } from '../words/word-list.js'
import { sameWord } from '../words/word-text.js'
import { type Entry, misfit } from '../yaml/entry.js'
import { readKeys, valueAt } from '../yaml/keys.js'
import { withSlipsMended } from '../yaml/typing-slips.js'
import { yamlEntries } from '../yaml/yaml-entries.js'
import { readAccent } from './accent.js'
import { type ClassGroup, classGroupsReader } from './class-groups.js'
import { readCountSounds } from './count-sounds.js'
import { printerExample, readPrinter } from './printer.js'
import { type SettingsContext, type SettingsFile, settingsContext } from './settings-context.js'
import { taughtReader } from './taught.js'
import { type ClassWeek, weeksReader } from './weeks.js'

export interface ClassFile {
  /** Path as it can be opened from where the teacher stands. */
  readonly path: string
  /** By the word in the form of `sameWord`. */
  readonly words: ReadonlyMap<string, PlanWord>
  readonly accent?: Accent
  readonly countSounds?: CountSounds
  readonly printer?: PrinterSetting
  /** Before the first week. */
  readonly taught?: readonly TaughtEntry[]
  readonly groups?: readonly ClassGroup[]
  readonly weeks?: readonly ClassWeek[]
  readonly review?: ReviewSetting
  readonly children?: number
}

const form = 'Write words: and under it words with their keys, as in a plan.'

/** Reads the class file that the entry names, relative to the plan. */
export function readClassFile(entry: Entry, source: SettingsFile): Outcome<ClassFile> {
  if (entry.kind !== 'text') return misfit(entry, "a class file's path", 'Write the path of a .yaml file.')
  const path = pathFrom(entry.text, source.file)
  const text = readTextFile({ path, what: 'the class file', place: entry.place }, source.files)
  return andThen(text, content => classFileOf(content, { ...source, file: path }))
}

/** @param source the class file's own path */
export function classFileOf(text: string, source: SettingsFile): Outcome<ClassFile> {
  const { file: path } = source
  const read = (content: string) =>
    andThen(yamlEntries(path, content), (root): Outcome<ClassFile> => {
      // A class file that holds nothing yet is the first week's.
      if (root === null) return succeed({ path, words: new Map() })
      return classFileFrom(root, settingsContext(source))
    })
  return withSlipsMended(path, text, read)
}

export function classFileKeys(context: SettingsContext) {
  const words = reading<readonly PlanWord[]>(wordListTaken(context, { empty: true }), entry =>
    entry.kind === 'empty'
      ? succeed([])
      : andThen(wordEntries(entry, context), entries => readWords(entries, context)),
  )
  return {
    words: key('words with what you have decided about them, for every week', words),
    accent: key('how your class speaks', readAccent, { usual: 'american' }),
    'count sounds': key('what counts as a sound', readCountSounds, { usual: 'as taught' }),
    printer: key('what is known of your printer', readPrinter, { example: printerExample }),
    taught: key(
      'what the class has been taught to read, for "oaktag find --taught" and "oaktag class"',
      taughtReader(context.patterns),
      {
        example: '[short-vowel, consonant-digraph, ee]',
      },
    ),
    children: key(
      'how many children are given the sheets of the class, not counting those of groups',
      childrenReader,
      { example: '22' },
    ),
    groups: key('groups that the plans may name', classGroupsReader(context)),
    weeks: key('the plans of its weeks, in the order in which they are taught', weeksReader(context), {
      example: '[week-1.yaml, {plan: week-2.yaml, taught: vowel-team}]',
    }),
    review: key('whether words of the weeks before come back in the plans', readClassReview, {
      example: 'yes',
      usual: 'no',
    }),
  }
}

export function classFileReader(source: SettingsFile): ValueReader<ClassFile> {
  const takes: Takes = {
    kind: 'form',
    what: 'the path of a class file',
    samples: ['room-7.yaml'],
    pattern: String.raw`\S`,
  }
  return reading(takes, entry => readClassFile(entry, source))
}

function classFileFrom(root: Entry, context: SettingsContext): Outcome<ClassFile> {
  const { file } = context
  if (root.kind !== 'map') return fail(errorAt(root.place, 'the class file does not begin with a key', form))
  if (['print', 'week'].some(key => valueAt(root, key) !== undefined))
    return fail(
      errorAt(
        { file },
        'this is a plan, not a class file',
        'A class file has no print: and no week:; its weeks: name the plans.',
      ),
    )
  const keys = readKeys(root, {
    what: 'a class file',
    readers: classFileKeys(context),
  })
  return andThen(keys, ({ values: { words: list = [], 'count sounds': countSounds, ...rest } }) =>
    succeed({
      path: file,
      words: new Map(list.map(word => [sameWord(word.text), word])),
      ...present({ countSounds }),
      ...rest,
    }),
  )
}

/** The word with what earlier decisions hold of it; what stands at the word itself wins. */
export function withEarlier(word: PlanWord, earlier: ReadonlyMap<string, PlanWord>): PlanWord {
  const carried = earlier.get(sameWord(word.text))
  if (!carried) return word
  const { plural, noPlural, ...others } = carried.overrides
  const saysPlural = word.overrides.plural !== undefined || word.overrides.noPlural === true
  const carriedPlural = saysPlural ? {} : { ...(plural && { plural }), ...(noPlural && { noPlural }) }
  const overrides = { ...others, ...carriedPlural, ...word.overrides }
  const overridePlaces = { ...carried.overridePlaces, ...word.overridePlaces }
  const hasPlaces = Object.keys(overridePlaces).length > 0
  return { ...carried, ...word, overrides, ...(hasPlaces ? { overridePlaces } : {}) }
}
