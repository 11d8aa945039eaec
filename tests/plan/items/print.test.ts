import { describe, expect, it } from 'vitest'
import { planOf, problemsOf, toldAtMark } from '../reading.js'

const head = 'words: [reed, Marsh, heron]\ngroups: [{name: Otters, words: [mud]}, {name: Terns}]\nprint:\n'
const printing = (...items: string[]) => `${head}${items.map(item => `  - ${item}\n`).join('')}`
const itemOf = (keys: string) => planOf(printing(`{layout: key, ${keys}}`)).print[0]
const namesOf = (...items: string[]) => planOf(printing(...items)).print.map(item => item.name)

describe('an item', () => {
  it('may be the layout’s name alone', () => {
    expect(namesOf('Word Cards', 'key')).toEqual(['word-cards', 'key'])
    expect(planOf('words: [reed]\nprint: key').print).toHaveLength(1)
  })

  it('reads every key', () => {
    const keys =
      'paper: a4, orientation: landscape, margin: 0.25 in, across: 3, down: 4, gap: 2 mm, copies: 6, size: large, ' +
      'font: lexend, marks: none, words: [marsh, reed], groups: Otters, border: dashed, order: stack, back: clue, ' +
      'flip: short-edge, cut: ticks, contrast: white on black'
    expect(itemOf(keys)).toEqual({
      place: { file: 'week.yaml', line: 4, column: 5 },
      layout: 'key',
      name: 'key',
      paper: { name: 'a4', widthMm: 210, heightMm: 297 },
      orientation: 'landscape',
      marginMm: 6.35,
      division: { kind: 'count', across: 3, down: 4 },
      gapMm: 2,
      copies: 6,
      size: { kind: 'large' },
      font: 'lexend',
      marks: 'none',
      words: ['Marsh', 'reed'],
      groups: ['Otters'],
      border: 'dashed',
      order: 'stack',
      back: 'clue',
      flip: 'short edge',
      cut: 'ticks',
      key: 'cover',
      cover: true,
      contrast: { ink: '#ffffff', ground: '#000000' },
      options: {},
    })
  })

  it.each([
    ['across: 3', { kind: 'count', across: 3 }],
    ['card: 2.5 x 3.5 in', { kind: 'card', size: { widthMm: 63.5, heightMm: expect.closeTo(88.9, 9) } }],
    ['gap: 0', { kind: 'layout' }],
  ])('divides its sheet by {%s}', (keys, division) => {
    expect(itemOf(keys)?.division).toEqual(division)
  })

  it.each([
    ['collate', 'child'],
    ['cut-and-stack', 'stack'],
  ])('takes {order: %s} for %s', (order, meant) => {
    expect(itemOf(`order: ${order}`)?.order).toBe(meant)
  })

  it.each(['letter', 'US Letter', '8.5 x 11 in', '8.5×11'])('knows the paper "%s"', name => {
    expect(itemOf(`paper: ${name}`)?.paper).toEqual({ name: 'letter', widthMm: 215.9, heightMm: 279.4 })
  })

  it('takes a paper of any size, the shorter edge across', () => {
    expect(itemOf('paper: 150 x 100 mm')?.paper).toEqual({
      name: '150 x 100 mm',
      widthMm: 100,
      heightMm: 150,
    })
  })

  it('takes words of the groups, and no group at all', () => {
    expect(itemOf('words: mud')?.words).toEqual(['mud'])
    expect(itemOf('groups: none')?.groups).toEqual([])
  })

  it('spells a word as the plan does, though a group spells it otherwise', () => {
    const text =
      'words: [Marsh]\ngroups: [{name: Otters, words: [MARSH]}]\nprint: [{layout: key, words: marsh}]'
    expect(planOf(text).print[0]?.words).toEqual(['Marsh'])
  })

  it('takes a border that is none', () => {
    expect(itemOf('border: none')?.border).toBe('none')
  })

  it.each([
    ['{layout: ▸bingoo}', 'unknown layout "bingoo"'],
    ['▸{paper: letter}', 'an item has no "layout"'],
    ['{layout: key, paper: ▸lettr}', 'unknown paper "lettr"'],
    ['{layout: key, paper: ▸10 x 10 mm}', '"10 x 10 mm" is too small'],
    ['{layout: key, orientation: ▸tall}', 'unknown orientation "tall"'],
    ['{layout: key, margin: ▸-3}', '"-3" is no length'],
    ['{layout: key, margin: ▸1 m}', '"1 m" is no length'],
    ['{layout: key, margin: ▸300}', '"300" is too large'],
    ['{layout: key, across: ▸0}', '0 is too small'],
    ['{layout: key, across: ▸21}', '21 is too large'],
    ['{layout: key, down: ▸2.5}', '"2.5" is no whole number'],
    ['{layout: key, across: 3, card: ▸63 x 88 mm}', '"card" stands together with "across" or "down"'],
    ['{layout: key, card: ▸63}', '"63" is no size'],
    ['{layout: key, card: ▸5 x 5 mm}', '"5 x 5 mm" is too small'],
    ['{layout: key, gap: ▸wide}', '"wide" is no length'],
    ['{layout: key, copies: ▸501}', '501 is too large'],
    ['{layout: key, copies: ▸two}', '"two" is no whole number'],
    ['{layout: key, font: ▸andkia}', 'unknown font "andkia"'],
    ['{layout: key, marks: ▸some}', 'unknown value of "marks" "some"'],
    ['{layout: key, words: [▸reeds]}', '"reeds" is not among the words of the plan'],
    ['{layout: key, words: [reed, ▸REED]}', '"reed" stands twice, on line 4'],
    ['{layout: key, words: ▸[]}', 'expected at least one word, found a list'],
    ['{layout: key, groups: [▸Heron]}', 'unknown group "Heron"'],
    ['{layout: key, border: ▸fancy}', 'unknown border "fancy"'],
    ['{layout: key, order: ▸random}', 'unknown value of "order" "random"'],
    ['{layout: key, back: ▸photo}', 'unknown value of "back" "photo"'],
    ['{layout: key, flip: ▸side}', 'unknown value of "flip" "side"'],
    ['{layout: key, cut: ▸dots}', 'unknown value of "cut" "dots"'],
    ['{layout: key, contrast: ▸black}', '"black" is not one colour on another'],
    ['{layout: key, contrast: ▸black on black}', '"black on black" shows nothing'],
    ['{layout: key, name: ▸a/b}', '"a/b" cannot be a file\'s name'],
    ['{layout: key, name: ▸index.html}', '"index.html" cannot be a file\'s name'],
    ['{layout: key, name: ▸..}', '".." cannot be a file\'s name'],
    ['{layout: key, name: ▸CON}', '"CON" cannot be a file\'s name'],
    [`{layout: key, name: ▸${'x'.repeat(61)}}`, `"${'x'.repeat(61)}" cannot be a file's name`],
  ])('%s is refused', (item, message) => {
    expect(toldAtMark(printing(item))).toEqual([`▸ ${message}`])
  })

  it('is no list, and not empty', () => {
    expect(problemsOf(printing('[key]', ''))).toEqual([
      'week.yaml:4:5: error: expected a thing to print, found a list',
      'week.yaml:5:4: error: expected a thing to print, found nothing',
    ])
  })

  it('is looked at although the word list cannot be read', () => {
    expect(problemsOf('words: a.txt\nprint: [{layout: key, words: [reed], copies: x}]')).toEqual([
      'week.yaml:1:8: error: the word list "a.txt" is not there',
      'week.yaml:2:46: error: "x" is no whole number',
    ])
  })
})

describe('the name of an item', () => {
  it('is the layout’s, numbered where it is printed again', () => {
    expect(namesOf('key', 'bingo', 'key', 'key')).toEqual(['key', 'bingo', 'key-2', 'key-3'])
  })

  it('is the teacher’s, made fit for a file', () => {
    expect(namesOf('{layout: key, name: Our  wall Key}', '{layout: key, name: café_2}')).toEqual([
      'Our-wall-Key',
      'café_2',
    ])
  })

  it('gives way to the teacher’s where it is the layout’s', () => {
    expect(namesOf('key', '{layout: bingo, name: KEY}')).toEqual(['key-2', 'KEY'])
  })

  it('gives way to the folder of a group', () => {
    expect(namesOf('{layout: key, name: key}', '{layout: bingo, name: bingo}')).toEqual(['key', 'bingo'])
    expect(problemsOf(printing('{layout: key, name: key}', '{layout: bingo, name: Key otters}'))).toEqual([
      'week.yaml:5:27: error: the names "key" and "Key otters" would fill one folder, on line 4 and on line 5',
    ])
  })

  it('is used once', () => {
    expect(problemsOf(printing('{layout: key, name: wall}', '{layout: bingo, name: Wall}'))).toContain(
      'week.yaml:5:27: error: the name "Wall" is used twice, on line 4 and on line 5',
    )
  })
})

describe('a layout’s own options', () => {
  it('are filled in where they are left out', () => {
    expect(planOf(printing('bingo')).print[0]?.options).toEqual({
      boards: 24,
      grid: { columns: 5, rows: 5 },
      'free centre': true,
      'caller order': 'fair',
    })
  })

  it('are read in any spelling of their keys', () => {
    const item = '{layout: bingo, Boards: 8, grid: 3 x 4, free_centre: no, caller-order: Random}'
    expect(planOf(printing(item)).print[0]?.options).toEqual({
      boards: 8,
      grid: { columns: 3, rows: 4 },
      'free centre': false,
      'caller order': 'random',
    })
  })

  it.each([
    ['{layout: bingo, boards: ▸0}', '0 is too small'],
    ['{layout: bingo, boards: ▸many}', '"many" is no whole number'],
    ['{layout: bingo, grid: ▸five}', '"five" is no grid'],
    ['{layout: bingo, grid: ▸1x5}', 'a grid of 1 by 5 is not made'],
    ['{layout: bingo, grid: ▸5x11}', 'a grid of 5 by 11 is not made'],
    ['{layout: bingo, free centre: ▸perhaps}', '"perhaps" is neither yes nor no'],
    ['{layout: bingo, caller order: ▸odd}', 'unknown choice "odd"'],
    ['{layout: bingo, ▸boards:}', '"boards" has no value'],
    ['{layout: bingo, ▸board: 3}', 'unknown key "board" in this item'],
  ])('%s is refused', (item, message) => {
    expect(toldAtMark(printing(item))).toEqual([`▸ ${message}`])
  })
})
