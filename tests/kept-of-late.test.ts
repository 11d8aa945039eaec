import { expect, it } from 'vitest'
import { keptOfLate } from '../src/kept-of-late.js'

function counted(most: number) {
  const made: string[] = []
  const kept = keptOfLate<string, { readonly key: string }>(most)
  const ask = (key: string) =>
    kept(key, () => {
      made.push(key)
      return { key }
    })
  return { ask, made }
}

it('gives the same thing again, made once', () => {
  const { ask, made } = counted(2)
  expect(ask('reed')).toBe(ask('reed'))
  expect(made).toEqual(['reed'])
})

it('lets go of what was not asked for while others came', () => {
  const { ask, made } = counted(2)
  for (const key of ['reed', 'marsh', 'gnat', 'wren', 'moth', 'reed']) ask(key)
  expect(made).toEqual(['reed', 'marsh', 'gnat', 'wren', 'moth', 'reed'])
})

it('keeps what is asked for again and again, whatever comes between', () => {
  const { ask, made } = counted(2)
  for (const key of ['a', 'b', 'c', 'd', 'e', 'f']) {
    ask('reed')
    ask(key)
  }
  expect(made.filter(key => key === 'reed')).toHaveLength(1)
})

it('holds as many as it says: a set that goes round in them makes each once', () => {
  const { ask, made } = counted(3)
  for (const _copy of [1, 2, 3]) for (const key of ['reed', 'marsh', 'gnat']) ask(key)
  expect(made).toHaveLength(3)
})
