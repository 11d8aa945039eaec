/** Every key of a plan and of a class file: how it is read, and what is told of it. */
import { succeed } from '../outcomes.js'
import type { Outcome } from '../problems.js'
import { usualPaper } from './assemble-plan.js'
import { disk } from './disk/disk.js'
import type { ItemContext } from './items/item-keys.js'
import { printListReader } from './items/print-list.js'
import { type Schema, schemaOf } from './keys/json-schema.js'
import { key, reading } from './keys/key.js'
import { type PlacedKey, placedKeys } from './keys/placed-keys.js'
import type { KeysTaken } from './keys/takes.js'
import type { PlanWord } from './plan.js'
import { reviewReader } from './review/review-key.js'
import { readAccent } from './settings/accent.js'
import { classFileKeys, classFileReader } from './settings/class-file.js'
import type { ClassGroup } from './settings/class-groups.js'
import { readCluesFrom } from './settings/clues.js'
import { readContrast } from './settings/contrast.js'
import { readCountSounds } from './settings/count-sounds.js'
import { groupListReader } from './settings/groups.js'
import { marksReader } from './settings/marks.js'
import { printerExample, readPrinter } from './settings/printer.js'
import { type SettingsFile, settingsContext } from './settings/settings-context.js'
import { spreadReader } from './settings/spread.js'
import { childrenReader, LARGEST_SEED, wholeNumberReader } from './values/numbers.js'
import { paperReader } from './values/papers.js'
import { textReader } from './values/texts.js'
import type { Vocabulary } from './vocabulary.js'
import { readWeek } from './week/week-key.js'
import { wordListTaken } from './words/word-list.js'

/** The keys of a plan itself; `words` is read apart, since items refer to them. */
export function planKeys(
  source: SettingsFile,
  item: ItemContext,
  classGroups: readonly ClassGroup[] | undefined,
) {
  const context = settingsContext(source)
  const { vocabulary, font } = context
  return {
    title: key('what stands at the head of every page', textReader('the title', 120), {
      usual: "the file's name",
    }),
    class: key('your class, under the title', textReader('the name of the class', 120), {
      example: 'Room 7, Heron Lane School',
    }),
    seed: key(
      'a number from which boards and orders are dealt; the same number deals the same',
      wholeNumberReader('the seed', 0, LARGEST_SEED),
      { example: '12', usual: '1' },
    ),
    font: key('the typeface', font, { example: 'lexend', usual: 'andika' }),
    paper: key('the paper of all items that name none', paperReader(vocabulary), {
      example: 'letter',
      usual: 'letter',
    }),
    marks: key('what is marked, in the order in which the key shows it', marksReader(vocabulary)),
    print: key('what is printed', printListReader(item), { example: '[word-cards, bingo]' }),
    week: key(
      "whether the week's whole set is made, and without what; what print: names is made beside it, or in place of its own",
      readWeek,
      { example: 'yes', usual: 'no' },
    ),
    groups: key('other children in the same week', groupListReader({ ...context, classGroups })),
    children: key(
      'how many children are given the sheets of the class, not counting those of groups',
      childrenReader,
      {
        example: '22',
        usual: 'what the class file says',
      },
    ),
    review: key('which words of earlier weeks come back', reviewReader(context), {
      example: '[week-1.yaml, week-2.yaml]',
      usual: 'what the class file says, and else none',
    }),
    spread: key(
      'a pattern for which lists for groups, from short words to long, are shown; nothing is made of them',
      spreadReader(vocabulary),
      { example: 'vowel-team' },
    ),
    accent: key('how your class speaks', readAccent, { usual: 'american' }),
    'count sounds': key('what counts as a sound', readCountSounds, { usual: 'as taught' }),
    clues: key('whether words without a clue of yours take one of our drafts', readCluesFrom, {
      example: 'drafts',
      usual: 'own, your own alone',
    }),
    'class file': key(
      'a file with what you have decided about words, your printer and your class, for every week',
      classFileReader(source),
    ),
    printer: key('what is known of your printer', readPrinter, { example: printerExample }),
    contrast: key('the colours of ink and card', readContrast, { usual: 'black on white' }),
  }
}

/** Words as a key of the plan, in the reading that `planFrom` has made of them. */
export function wordsKey(source: SettingsFile, words: () => Outcome<readonly PlanWord[]>) {
  const taken = wordListTaken(settingsContext(source), { empty: false })
  return key('the words of the week', reading(taken, words), { example: '[reed, marsh, wren]' })
}

/** All that a plan takes, as one value. */
export function planTaken(vocabulary: Vocabulary): KeysTaken {
  const source: SettingsFile = { file: 'plan.yaml', vocabulary, files: disk }
  const item: ItemContext = {
    vocabulary,
    font: settingsContext(source).font,
    paper: usualPaper(vocabulary.papers),
    groups: [],
  }
  const words = wordsKey(source, () => succeed([]))
  const keys = () => {
    const { title, class: ofClass, ...rest } = planKeys(source, item, [])
    return { title, class: ofClass, words, ...rest }
  }
  return {
    kind: 'keys',
    what: 'a plan',
    keys,
    needed: [
      ['words', 'groups'],
      ['print', 'week'],
    ],
  }
}

/** Every key of a plan and of a class file, at each place where it can stand. */
export function keysOfPlan(vocabulary: Vocabulary): readonly PlacedKey[] {
  const inPlan = placedKeys(planTaken(vocabulary))
  const places = new Set(inPlan.map(({ place }) => place.what))
  const inClassFile = placedKeys(classFileTaken(vocabulary))
  return [...inPlan, ...inClassFile.filter(({ place }) => !places.has(place.what))]
}

export function planSchema(vocabulary: Vocabulary): Schema {
  return schemaOf(planTaken(vocabulary), { id: 'urn:oaktag:plan', title: 'A plan of oaktag' })
}

export function classFileSchema(vocabulary: Vocabulary): Schema {
  return schemaOf(classFileTaken(vocabulary), {
    id: 'urn:oaktag:class-file',
    title: 'A class file of oaktag',
  })
}

/** All that a class file takes. */
export function classFileTaken(vocabulary: Vocabulary): KeysTaken {
  const context = settingsContext({ file: 'class.yaml', vocabulary, files: disk })
  return { kind: 'keys', what: 'a class file', keys: () => classFileKeys(context), needed: [] }
}
