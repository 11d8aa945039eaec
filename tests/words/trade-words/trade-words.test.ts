import { describe, expect, it } from 'vitest'
import { planVocabulary } from '../../../src/pipeline/vocabulary.js'
import { disk } from '../../../src/plan/disk/disk.js'
import { readPlan } from '../../../src/plan/read-plan.js'
import { foldName } from '../../../src/plan/values/fold-name.js'
import { rowsOf } from '../../../src/words/tables/installed-tables.js'

const vocabulary = planVocabulary()
const rows = rowsOf('trade-words/trade-words')
const namesOfKind: Readonly<Record<string, readonly string[]>> = {
  pattern: vocabulary.patterns,
  layout: [...vocabulary.layouts.keys()],
  line: vocabulary.lines,
  outline: vocabulary.outlines,
  border: vocabulary.borders,
  paper: vocabulary.papers.map(({ name }) => name),
  place: ['beginning', 'middle', 'end'],
  size: ['normal', 'large'],
}

/** Whatever the advice gives to write: names, and keys with a value. */
const hyphened = /\b[a-z]+(?:-[a-z0-9]+)+\b/g

describe('the words of the trade', () => {
  it('stand once for each kind, and are no name of that kind already', () => {
    const keys = rows.map(([kind = '', said = '']) => `${kind}: ${foldName(said)}`)
    expect(keys.filter((key, index) => keys.indexOf(key) !== index)).toEqual([])
    const known = rows.filter(([kind = '', said = '']) =>
      namesOfKind[kind]?.some(name => foldName(name) === foldName(said)),
    )
    expect(known).toEqual([])
  })

  it('lead to names that a plan knows', () => {
    const all = new Set(Object.values(namesOfKind).flat())
    const unknown = rows.flatMap(([, said = '', instead = '']) =>
      [...instead.matchAll(hyphened)].flatMap(([name]) => (all.has(name) ? [] : [`${said}: ${name}`])),
    )
    expect(unknown).toEqual([])
    expect(rows.some(([, , instead = '']) => hyphened.test(instead))).toBe(true)
  })
})

describe('what is told of them', () => {
  const adviceOn = (text: string) =>
    readPlan({ file: 'week.yaml', text, vocabulary, files: disk }).problems.map(({ advice }) => advice)
  const marked = (mark: string) => adviceOn(`words: [reed]\nmarks:\n  - ${mark}\nprint: [key]\n`)
  const printed = (item: string) => adviceOn(`words: [reed]\nprint:\n  - layout: ${item}\n`)

  it.each([
    ['pattern: digraph', 'Write consonant-digraph, or vowel-team for two vowel letters.'],
    ['pattern: sh', 'Write letters: sh instead of pattern: sh.'],
    ['pattern: magic e', 'Write silent-e.'],
    ['pattern: bossy r', 'Write r-controlled.'],
    [
      'pattern: short a',
      'Write short-vowel, which marks all five; "letters: a" marks the letter a, whatever it says.',
    ],
    ['pattern: noun', '"noun" is a part of speech: write part of speech: noun.'],
    ['pattern: wavy', '"wavy" is a line: write line: wavy.'],
    ['pattern: bingo', '"bingo" is a layout: write - layout: bingo under print:.'],
    ['{letters: ee, line: rounded}', '"rounded" is an outline: write outline: rounded.'],
    ['{letters: ee, line: red}', '"red" is a colour: write color: red.'],
    ['{letters: ee, line: circle}', 'That goes round the letters: write "outline: oval".'],
    ['{letters: ee, outline: dotted}', '"dotted" is a line: write line: dotted.'],
    ['{letters: ee, place: start}', 'Write beginning.'],
  ])('a mark with %s', (mark, expected) => {
    expect(marked(mark)).toEqual([expected])
  })

  it.each([
    ['memory', 'Write matching-pairs.'],
    ['dominoes', 'Write chain-cards.'],
    ['list', "Write marked-list for your copy, blank-list for the children's."],
    ['cards', 'Write word-cards.'],
    ['vowel-team', '"vowel-team" is a pattern: write - pattern: vowel-team under marks:.'],
    ['zebra', '`oaktag list layouts` shows all of them.'],
    ['key\n    paper: landscape', '"landscape" is a way to turn it: write orientation: landscape.'],
    ['key\n    size: big', 'Write large, or a size such as 28 pt.'],
    [
      'key\n    size: 20/200',
      'An acuity needs the distance at which the child reads: size: {for: {acuity: 20/200, distance: 40 cm}}.',
    ],
    ['word-cards\n    border: rounded', 'A border names its line too: write single round.'],
  ])('an item that is %s', (item, expected) => {
    expect(printed(item)).toEqual([expected])
  })
})
