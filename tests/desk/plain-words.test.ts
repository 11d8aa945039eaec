/** What the page calls things: in a teacher's words, without what only the file or the command line knows. */
import { expect, it } from 'vitest'
import { asLabel, titled, usualTitle, valueTitle } from '../../src/desk/plain-words.js'
import { namesFor } from '../../src/desk/server/desk-names.js'

const ofCommandsOrFiles = /oaktag|"|`/

it('labels every option without a command or a key of the file', async () => {
  const { itemKeys, layoutKeys, patterns } = await namesFor()
  const keys = [...itemKeys, ...Object.values(layoutKeys).flat()]
  const told = keys.flatMap(({ name, does, usual = '' }) => [asLabel(does), usualTitle(name, usual)])
  expect(keys.length).toBeGreaterThan(100)
  expect(told.filter(each => ofCommandsOrFiles.test(each))).toEqual([])
  expect(patterns.filter(each => titled(each).includes('_') || / -le$/.test(titled(each)))).toEqual([])
  expect(titled(patterns.find(({ name }) => name === 'three-letter-blend')!)).toBe('three-letter blend')
})

it.each([
  ['order', 'stack', 'so that a pile cut through once stays in order'],
  ['border', 'dashed-round', 'dashed, round corners'],
  ['border', 'wavy', 'wavy'],
  ['count sounds', 'every phoneme', 'each for itself: the a and the r of marsh are two'],
])('calls the value of %s %s: %s', (key, value, title) => {
  expect(valueTitle(key, value)).toBe(title)
})
