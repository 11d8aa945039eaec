import { describe, expect, it } from 'vitest'
import type { Box } from '../../src/geometry.js'
import { linesOn, marshWithClues, printAll, problemsOf } from './print-item.js'

const withOtters = marshWithClues.replace(
  'print:\n',
  'groups:\n  - {name: Otters, words: [mud, pond, frog], size: large}\nprint:\n',
)

async function last(items: readonly string[], plan = marshWithClues) {
  const printed = await printAll(items, plan)
  if (!printed.ok) throw new Error(printed.problems.map(problem => problem.message).join('\n'))
  return printed.value.at(-1)!
}

/** Lines of text on an item's sheets, with where they stand. */
function runsOf({ sheets }: Awaited<ReturnType<typeof last>>, wanted: RegExp) {
  return sheets
    .flatMap(sheet => sheet.furniture)
    .flatMap(({ art, xMm, yMm }) =>
      art.text.map(run => ({ text: run.text, xMm: xMm + run.xMm, baselineMm: yMm + run.baselineMm })),
    )
    .filter(run => wanted.test(run.text))
}

const overlap = (a: Box, b: Box) =>
  a.xMm < b.xMm + b.widthMm &&
  b.xMm < a.xMm + a.widthMm &&
  a.yMm < b.yMm + b.heightMm &&
  b.yMm < a.yMm + a.heightMm

describe('a checklist', () => {
  it('has a slip for every set of the plan and of its groups, with every piece on it', async () => {
    const lines = linesOn(
      await last(
        [
          '{layout: word-cards}',
          '{layout: bingo, boards: 3, grid: 3x3, groups: none}',
          '{layout: checklist}',
        ],
        withOtters,
      ),
      'checklist',
    )
    const cells = lines.flatMap(line => line.split(' | '))
    for (const cell of ['Word cards', 'Along the marsh', '12 pieces', '1 reed', '12 perch'])
      expect(cells).toContain(cell)
    for (const cell of ['Bingo', 'board 3', 'Word cards, Otters', '2 pond']) expect(cells).toContain(cell)
  })

  it('has a slip for each copy of a set, which has its own bag', async () => {
    const lines = linesOn(await last(['{layout: word-cards, copies: 5}', '{layout: checklist}']), 'checklist')
    const titles = lines.flatMap(line => line.split(' | ')).filter(cell => cell === 'Word cards')
    expect(titles).toHaveLength(5)
  })

  it('lists headers as headers', async () => {
    const lines = linesOn(
      await last(['{layout: closed-sort, sort: how the plural is made}', '{layout: checklist}']),
      'checklist',
    )
    expect(lines.join(' | ')).toContain('1 header: add s')
  })

  it('sets long entries in two columns, broken over lines, with no number parted from its words', async () => {
    const printed = await last(['{layout: matching-pairs, pair: clue}', '{layout: checklist}'])
    const slips = runsOf(printed, /^\d+( (?!pieces)|$)/)
    expect(new Set(slips.map(run => Math.round(run.xMm))).size).toBe(2)
    expect(slips.filter(run => /^\d+$/.test(run.text))).toEqual([])
  })

  it('says so where the plan prints no set', async () => {
    expect(await problemsOf('{layout: checklist}')).toContain('has no set of cards or boards')
  })
})

describe('bag labels', () => {
  it('have titles of one size, save one that is too long for it', async () => {
    const items = ['word-cards', 'missing-letters', 'matching-pairs'].map(
      layout => `{layout: ${layout}, words: [reed, marsh, moth]}`,
    )
    const long = '{layout: word-cards, name: cards for our walk to the pond, words: [reed]}'
    const labels = await last([...items, long, '{layout: bag-labels}'])
    const sizes = labels.sheets.flatMap(({ furniture }) =>
      furniture.flatMap(({ art }) =>
        art.text.filter(run => /^(Word|Missing|Matching|cards)/.test(run.text)).map(run => run.sizeMm),
      ),
    )
    expect(new Set(sizes.slice(0, 3)).size).toBe(1)
    expect(sizes.at(-1)).toBeLessThan(sizes[0]!)
  })

  it('tell the set, what it holds and which words', async () => {
    const lines = linesOn(await last(['{layout: word-cards}', '{layout: bag-labels}']), 'labels').join('\n')
    for (const part of [
      'Along the marsh',
      'Word cards',
      'whole class',
      'Room 7, Heron Lane School',
      '12 cards',
      'reed · marsh',
    ])
      expect(lines).toContain(part)
  })

  it('begin no line with the dot between two words', async () => {
    const lines = linesOn(
      await last(['{layout: word-cards}', '{layout: bag-labels, for: envelope}']),
      'labels',
    )
    const words = lines.flatMap(line => line.split(' | ')).filter(line => line.includes('·'))
    expect(words.length).toBeGreaterThan(2)
    expect(words.filter(line => line.startsWith('·'))).toEqual([])
  })

  it.each(['bag', 'envelope'])(
    'for a %s stand level in their row, however long their titles are',
    async on => {
      const printed = await last([
        '{layout: letter-tiles}',
        '{layout: matching-pairs, pair: clue}',
        `{layout: bag-labels, for: ${on}}`,
      ])
      for (const wanted of [/^(Letter tiles|Matching pairs)$/, /^whole class$/, /^\d+ cards$/, /^set mark/]) {
        const found = runsOf(printed, wanted)
        expect(found).toHaveLength(2)
        expect(found[0]!.baselineMm).toBeCloseTo(found[1]!.baselineMm, 5)
      }
    },
  )

  it.each(['letter-tiles', 'sound-mat'])('name the words of %s, whose pieces hold none', async layout => {
    const lines = linesOn(await last([`{layout: ${layout}}`, '{layout: bag-labels}']), 'labels').join(' ')
    expect(lines).toContain('reed · marsh')
  })

  it('number the bags of a set in copies', async () => {
    const lines = linesOn(
      await last(['{layout: word-cards, copies: 3}', '{layout: bag-labels, for: envelope}']),
      'labels',
    ).join('\n')
    for (const bag of [1, 2, 3]) expect(lines).toContain(`bag ${bag} of 3`)
  })

  it('are for the groups alone that the item names', async () => {
    const lines = linesOn(
      await last(['{layout: word-cards}', '{layout: bag-labels, groups: Otters}'], withOtters),
      'labels',
    ).join('\n')
    expect(lines).toContain('3 cards')
    expect(lines).not.toContain('12 cards')
  })
})

describe('the calibration sheet', () => {
  it('has a front and a back, once for the whole plan', async () => {
    const printed = await printAll(['{layout: calibration}'], withOtters)
    if (!printed.ok) throw new Error('not printed')
    expect(printed.value.map(item => item.name)).toEqual(['calibration'])
    expect(printed.value[0]!.sheets.map(sheet => [sheet.number, sheet.side, sheet.kind])).toEqual([
      [1, 'front', 'calibration'],
      [2, 'back', 'calibration'],
    ])
  })

  it.each(['letter', '4 x 6 card', '3 x 5 card'])(
    'has no line of text over its crosses and fields on %s',
    async paper => {
      const printed = await last([`{layout: calibration, paper: ${paper}}`])
      for (const { furniture } of printed.sheets) {
        const boxes = furniture.map(({ art, xMm, yMm }) => ({
          xMm,
          yMm,
          widthMm: art.widthMm,
          heightMm: art.heightMm,
          text: art.text,
        }))
        const lines = boxes.filter(({ text }) => text.some(run => run.text.length > 6))
        const others = boxes.filter(box => !lines.includes(box))
        expect(others.length).toBeGreaterThan(1)
        const over = lines.filter(line => others.some(other => overlap(line, other)))
        expect(over.flatMap(({ text }) => text.map(run => run.text))).toEqual([])
      }
    },
  )
})
