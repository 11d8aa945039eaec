/**
 * Cut-and-stack arithmetic: on S sheets of p places the card at place p of sheet s is number p · S + s, all counted
 * from 0. The formula is the usual one of N-up cut-and-stack imposition (common practice, no source); the worked
 * example, 1,000 cards 4 up, was computed from it by hand.
 */
import { describe, expect, it } from 'vitest'
import { inStack } from '../../src/sheets/order.js'

describe('cut and stack', () => {
  const sheets = inStack({ copies: Array<number>(1000).fill(1), places: 4 })

  it('takes 250 sheets for 1,000 cards 4 up', () => {
    expect(sheets).toHaveLength(250)
  })

  it('puts cards 1, 251, 501 and 751 on the first sheet and 250, 500, 750 and 1,000 on the last', () => {
    const cardNumbers = (sheet: readonly (number | null)[]) => sheet.map(card => card! + 1)
    expect(cardNumbers(sheets[0]!)).toEqual([1, 251, 501, 751])
    expect(cardNumbers(sheets[249]!)).toEqual([250, 500, 750, 1000])
  })
})
