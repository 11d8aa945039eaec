/** The keys that every item under `print:` takes, whatever its layout. */
import type { Size } from '../../geometry.js'
import { present } from '../../outcomes.js'
import { errorAt, type Problem } from '../../problems.js'
import type { Division, Paper } from '../plan.js'
import { readContrast } from '../settings/contrast.js'
import { lengthReader, sizeReader } from '../values/lengths.js'
import { choiceReader, fileNameReader, nameReader } from '../values/names.js'
import { wholeNumberReader } from '../values/numbers.js'
import { yesNo } from '../values/options.js'
import { otherNames } from '../values/other-names.js'
import { paperReader } from '../values/papers.js'
import { typeSizeReader } from '../values/type-size.js'
import type { Vocabulary } from '../vocabulary.js'
import type { MapEntry, Reader } from '../yaml/entry.js'
import { valueAt } from '../yaml/keys.js'
import { groupsReader, subsetReader } from './item-references.js'

export interface ItemContext {
  readonly vocabulary: Vocabulary
  readonly font: Reader<string>
  /** The plan's own paper, for items that name none. */
  readonly paper: Paper
  /** The words of the plan and of its groups; left out where the word list could not be read at all. */
  readonly words?: readonly string[]
  readonly groups: readonly string[]
}

export function itemReaders({ vocabulary, font, words, groups }: ItemContext) {
  const count = wholeNumberReader('a number', 1, 20)
  return {
    layout: nameReader({
      what: 'a layout',
      known: [...vocabulary.layouts.keys()],
      where: '`oaktag list layouts` shows all of them.',
      others: otherNames('layout', vocabulary),
    }),
    name: fileNameReader("an item's name"),
    paper: paperReader(vocabulary),
    orientation: choiceReader('an orientation', ['portrait', 'landscape']),
    margin: lengthReader('the margin', { minMm: 0, maxMm: 100 }),
    across: count,
    down: count,
    card: sizeReader('the card', { minMm: 10, maxMm: 600 }),
    gap: lengthReader('the gap', { minMm: 0, maxMm: 50 }),
    copies: wholeNumberReader('a number', 1, 500),
    size: typeSizeReader(vocabulary),
    font,
    marks: choiceReader('a value of "marks"', ['all', 'none']),
    words: subsetReader(words),
    groups: groupsReader(groups),
    border: nameReader({
      what: 'a border',
      known: ['none', ...vocabulary.borders],
      where:
        'It can be none, or a line such as single, with the shape of its corners where they are not square: dashed round.',
      others: otherNames('border', vocabulary),
    }),
    order: choiceReader('a value of "order"', ['rows', 'stack', 'child'], {
      collate: 'child',
      'cut and stack': 'stack',
    }),
    back: choiceReader('a value of "back"', ['none', 'name', 'answer', 'clue', 'picture', 'pattern']),
    flip: choiceReader('a value of "flip"', ['long edge', 'short edge']),
    cut: choiceReader('a value of "cut"', ['lines', 'ticks', 'none']),
    key: choiceReader('a value of "key"', ['cover', 'strip', 'none']),
    cover: yesNo(true).read,
    contrast: readContrast,
  } as const
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
