/** The keys that every item under `print:` takes, whatever its layout. */
import type { Size } from '../../geometry.js'
import { present } from '../../outcomes.js'
import { errorAt, type Problem } from '../../problems.js'
import { key, reading, type ValueReader } from '../keys/key.js'
import type { KeysTaken } from '../keys/takes.js'
import type { Division, Paper } from '../plan.js'
import { readContrast } from '../settings/contrast.js'
import { lengthReader, sizeReader } from '../values/lengths.js'
import { choiceReader, fileNameReader, nameReader } from '../values/names.js'
import { wholeNumberReader } from '../values/numbers.js'
import { optionKeys, yesNo } from '../values/options.js'
import { otherNames } from '../values/other-names.js'
import { paperReader } from '../values/papers.js'
import { typeSizeReader } from '../values/type-size.js'
import type { Vocabulary } from '../vocabulary.js'
import type { MapEntry } from '../yaml/entry.js'
import { valueAt } from '../yaml/keys.js'
import { groupsReader, subsetReader } from './item-references.js'

export interface ItemContext {
  readonly vocabulary: Vocabulary
  readonly font: ValueReader<string>
  /** The plan's own paper, for items that name none. */
  readonly paper: Paper
  /** The words of the plan and of its groups; left out where the word list could not be read at all. */
  readonly words?: readonly string[]
  readonly groups: readonly string[]
}

/** The keys that an item of any layout takes. */
export function itemKeys({ vocabulary, font, words, groups }: ItemContext) {
  const count = wholeNumberReader('a number', 1, 20)
  return {
    layout: key('what is printed', layoutReader(vocabulary), { example: 'word-cards' }),
    name: key('what its folder and files are called', fileNameReader("an item's name"), {
      example: 'bingo for Friday',
      usual: 'the name of the layout',
    }),
    paper: key('the paper that it is printed on', paperReader(vocabulary), {
      example: 'letter',
      usual: 'the paper of the plan',
    }),
    orientation: key(
      'which way the paper is turned',
      choiceReader('an orientation', ['portrait', 'landscape']),
      { example: 'landscape', usual: 'what suits the layout and takes the fewest sheets' },
    ),
    margin: key(
      'white that is left at the edges of the sheet',
      lengthReader('the margin', { minMm: 0, maxMm: 100 }),
      { example: '12 mm', usual: 'what common printers need' },
    ),
    across: key('how many stand side by side on a sheet', count, { usual: 'what suits the layout' }),
    down: key('how many stand one below the other on a sheet', count, {
      example: '4',
      usual: 'what suits the layout',
    }),
    card: key(
      'the size of a card or board, instead of across and down',
      sizeReader('the card', { minMm: 10, maxMm: 600 }),
    ),
    gap: key('white between two cards', lengthReader('the gap', { minMm: 0, maxMm: 50 }), {
      example: '4 mm',
      usual: '0, so that one cut parts two cards',
    }),
    copies: key('how many sets are printed', wholeNumberReader('a number', 1, 500), { usual: '1' }),
    size: key('how large the words are at least', typeSizeReader(vocabulary), {
      example: '24 pt',
      usual: "the group's size, and normal for the class: the longest word decides",
    }),
    font: key('the typeface', font, { example: 'lexend', usual: 'the font of the group or of the plan' }),
    marks: key('whether the words are marked', choiceReader('a value of "marks"', ['all', 'none']), {
      example: 'none',
      usual: 'what suits the layout',
    }),
    words: key('the words to print, in this order', subsetReader(words), {
      example: '[reed, marsh]',
      usual: 'all words of the plan and of each group',
    }),
    groups: key('the groups to print it for', groupsReader(groups), {
      example: 'Otters',
      usual: 'the class and each group',
    }),
    border: key('a line round each card', borderReader(vocabulary), {
      example: 'dashed round',
      usual: 'none',
    }),
    order: key('the order of the cards on the sheets', orderReader, { example: 'stack', usual: 'rows' }),
    back: key('what stands on the backs of the cards', backReader, { example: 'name', usual: 'none' }),
    flip: key(
      'over which edge your printer turns the paper',
      choiceReader('a value of "flip"', ['long edge', 'short edge']),
      { example: 'short edge', usual: 'long edge' },
    ),
    cut: key(
      'how the cuts are shown: lines across, short ticks at the edges, or nothing',
      choiceReader('a value of "cut"', ['lines', 'ticks', 'none']),
      { example: 'ticks', usual: 'lines' },
    ),
    key: key(
      'where the key of the marks stands: on the cover, on a strip at the foot of every sheet, or nowhere',
      choiceReader('a value of "key"', ['cover', 'strip', 'none']),
      { example: 'strip', usual: 'cover' },
    ),
    cover: key('whether a cover goes with the set', reading({ kind: 'yes or no' }, yesNo(true).read), {
      usual: 'yes',
    }),
    contrast: key('the colours of ink and card', readContrast, { usual: 'black on white' }),
  } as const
}

function layoutReader(vocabulary: Vocabulary): ValueReader<string> {
  return nameReader({
    what: 'a layout',
    known: [...vocabulary.layouts.keys()],
    where: '`oaktag list layouts` shows all of them.',
    list: 'layouts',
    others: otherNames('layout', vocabulary),
  })
}

function borderReader(vocabulary: Vocabulary): ValueReader<string> {
  return nameReader({
    what: 'a border',
    known: ['none', ...vocabulary.borders],
    where:
      'It can be none, or a line such as single, with the shape of its corners where they are not square: dashed round.',
    list: 'borders',
    others: otherNames('border', vocabulary),
  })
}

const orderReader = choiceReader('a value of "order"', ['rows', 'stack', 'child'], {
  collate: 'child',
  'cut and stack': 'stack',
})

const backReader = choiceReader('a value of "back"', ['none', 'name', 'answer', 'clue', 'picture', 'pattern'])

/** An item as a value of `print:`, its keys and those of its layout. */
export function itemTaken(context: ItemContext): KeysTaken {
  const { layouts } = context.vocabulary
  return {
    kind: 'keys',
    what: 'an item under "print:"',
    keys: () => itemKeys(context),
    needed: ['layout'],
    beside: 'layout: word-cards',
    layouts: () => new Map([...layouts].map(([name, { options }]) => [name, optionKeys(options)])),
  }
}

/** What must hold between them. */
export function itemRules(map: MapEntry): readonly Problem[] {
  const problems: Problem[] = []
  if (!valueAt(map, 'layout')) {
    const advice = 'Begin each item with "- layout:" and a name, such as - layout: word-cards.'
    problems.push(errorAt(map.place, 'an item has no "layout"', advice))
  }
  const card = valueAt(map, 'card')
  if (card && (valueAt(map, 'across') || valueAt(map, 'down'))) {
    const advice = 'Give the size of a card, or how many stand on a sheet; not both.'
    problems.push(errorAt(card.place, '"card" stands together with "across" or "down"', advice))
  }
  return problems
}

export interface DivisionValues {
  readonly across?: number
  readonly down?: number
  readonly card?: Size
}

/** How a sheet is divided, the rules being kept. */
export function divisionOf({ across, down, card }: DivisionValues): Division {
  if (card) return { kind: 'card', size: card }
  if (across === undefined && down === undefined) return { kind: 'layout' }
  return { kind: 'count', ...present({ across, down }) }
}
