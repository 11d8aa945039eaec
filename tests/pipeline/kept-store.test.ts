import { describe, expect, it } from 'vitest'
import { failWith, succeed } from '../../src/outcomes.js'
import { byIdentity, identities, keptOutcomes, keptStore } from '../../src/pipeline/kept-store.js'
import { warningAt } from '../../src/problems.js'

const line = (number: number) => ({ file: 'week.yaml', line: number })
const warning = (number: number) => warningAt(line(number), 'a wish is not met', 'Change it.')

describe('kept work', () => {
  it('is given again for the same parts, wherever they stand in the plan', () => {
    const store = keptOutcomes<object>(identities())
    const first = store.once({ parts: [{ word: 'reed', place: line(3) }], places: [line(3)] }, () =>
      succeed({}),
    )
    const again = store.once({ parts: [{ word: 'reed', place: line(4) }], places: [line(4)] }, () =>
      succeed({}),
    )
    expect(again).toBe(first)
    expect(store.made()).toBe(1)
  })

  it('is done anew for other parts', () => {
    const store = keptOutcomes<object>(identities())
    for (const word of ['reed', 'marsh']) store.once({ parts: [{ word }], places: [] }, () => succeed({}))
    expect(store.made()).toBe(2)
    // Where in a word a mark stands.
    for (const place of ['beginning', 'end'])
      store.once({ parts: [{ target: { place } }], places: [] }, () => succeed({}))
    expect(store.made()).toBe(4)
  })

  it('tells two objects of an earlier step apart though they look alike', () => {
    const store = keptOutcomes<object>(identities())
    const set = { cards: [] }
    for (const each of [set, set, { cards: [] }])
      store.once({ parts: [byIdentity(each)], places: [] }, () => succeed({}))
    expect(store.made()).toBe(2)
  })

  it.each([
    ['a warning', succeed({}, [warning(3)])],
    ['an error', failWith<object>([warning(3)])],
  ])(
    'with %s is kept for its own place alone, so that no message names a line that has moved',
    (_, outcome) => {
      const store = keptOutcomes<object>(identities())
      const told = (number: number) =>
        store.once({ parts: ['reed'], places: [line(number)] }, () =>
          number === 3 ? outcome : { ...outcome, problems: [warning(number)] },
        ).problems[0]?.place.line
      expect([told(3), told(3), told(4)]).toEqual([3, 3, 4])
      expect(store.made()).toBe(2)
    },
  )

  it('lets go of what a whole run did not ask for, and of nothing else', () => {
    const store = keptStore<object>(identities(), () => false)
    const ask = (word: string) => store.once({ parts: [word], places: [] }, () => ({}))
    ask('reed')
    ask('marsh')
    store.letGo()
    ask('reed')
    store.letGo()
    ask('reed')
    ask('marsh')
    expect(store.made()).toBe(3)
  })

  it('waits for what is made later', async () => {
    const store = keptStore<number>(identities(), () => false)
    const ask = () => store.onceAsync({ parts: ['reed'], places: [] }, async () => 7)
    expect([await ask(), await ask(), store.made()]).toEqual([7, 7, 1])
  })
})
