import { describe, expect, it } from 'vitest'
import { isUnfit } from '../../../layouts/roll-and-build/known-parts.js'
import { THROWS } from '../../../layouts/roll-and-build/record-sheet.js'
import { kindsOf, linesOn, piecesOf, printItem, problemsOf } from '../print-item.js'

describe('roll and build', () => {
  it('prints three nets of six faces, a sheet to write on, rules and answers', async () => {
    const printed = await printItem('{layout: roll-and-build}')
    expect(kindsOf(printed)).toEqual(['pieces', 'list', 'rules', 'answers', 'cover'])
    expect(piecesOf(printed).map(({ text }) => text.length)).toEqual([6, 6, 6])
    expect(linesOn(printed, 'list')).toContain('Real words | Not words yet')
  })

  it.each(['normal', 'large'])(
    'has lines for all throws of a game in %s print, under their heads',
    async size => {
      const printed = await printItem(`{layout: roll-and-build, orientation: landscape, size: ${size}}`)
      const sheets = printed.sheets.filter(({ kind }) => kind === 'list')
      const lines = sheets.flatMap(({ furniture }) =>
        furniture.flatMap(({ art }) =>
          art.shapes.filter(shape => shape.kind === 'path' && shape.fill === '#737373'),
        ),
      )
      expect(lines.length).toBeGreaterThanOrEqual(2 * THROWS)
      const heads = linesOn(printed, 'list').filter(line => line === 'Real words | Not words yet')
      expect(heads).toHaveLength(sheets.length)
      expect(linesOn(printed, 'rules').join(' ')).toContain('ten throws')
    },
  )

  it('tells the children what an empty side does, where a die has one', async () => {
    const rules = async (words: string) =>
      linesOn(await printItem('{layout: roll-and-build}', plan(words)), 'rules').join(' ')
    expect(await rules('bee, duck, frog, knock, rain, reed')).toContain('An empty side adds nothing.')
    expect(await rules('duck, frog, rain, reed, mud, fog')).not.toContain('An empty side')
  })

  it('promises no answer for every word of a dictionary', async () => {
    const rules = linesOn(await printItem('{layout: roll-and-build}'), 'rules').join(' ')
    expect(rules).toContain('that many children know; look a rarer one up in a dictionary')
  })

  it('warns of scissors, glue and small children', async () => {
    const rules = linesOn(await printItem('{layout: roll-and-build}'), 'rules').join(' ')
    expect(rules).toContain('Scissors and glue are for older hands; dice are not for children under three')
  })

  it('has all words that the dice build on the answer page', async () => {
    const printed = await printItem('{layout: roll-and-build}')
    const answers = linesOn(printed, 'answers').join('\n')
    expect(answers).toMatch(/\d+ words among 216 throws, \d+ of them on your list/)
    expect(answers).toContain('your words | ')
  })

  it('has letters that fit its faces in large print', async () => {
    const dice = piecesOf(await printItem('{layout: roll-and-build, size: x-height 12 mm}'))
    expect(dice.every(({ xHeightMm }) => (xHeightMm ?? 0) >= 12 - 1e-6)).toBe(true)
  })

  it('says so where the dice would be too small to fold', async () => {
    expect(await problemsOf('{layout: roll-and-build, card: 63 x 88 mm}')).toMatch(
      /the dice would be 1\d mm wide, too small to fold/,
    )
  })

  it('says so where no word of the list can be built', async () => {
    expect(await problemsOf('{layout: roll-and-build, words: [heron]}', plan('heron'))).toContain(
      'no word of the list can be built with three dice',
    )
  })
})

function plan(word: string): string {
  return `title: Along the marsh\nclass: Room 7, Heron Lane School\nseed: 12\nwords: [${word}]\nprint:\n`
}

describe('what a throw must not spell', () => {
  it('is what reads like an unfit word too, unless it is a word that children may meet', () => {
    expect(['sit', 'duck', 'shell'].map(isUnfit)).toEqual([false, false, false])
    expect(['shit', 'shitt'].map(isUnfit)).toEqual([true, true])
  })
})
