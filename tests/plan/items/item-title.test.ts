import { expect, test } from 'vitest'
import { itemInWords, itemTitle } from '../../../src/plan/items/item-title.js'

test('a layout that has no other name is called by its own in plain words', () => {
  expect(itemTitle({ name: 'marked-list' })).toBe('Marked list')
  expect(itemTitle({ name: 'word-cards-2' })).toBe('Word cards 2')
  expect(itemInWords({ name: 'word-cards-2' })).toBe('word cards 2')
})

test('a name that the teacher gave stands as she wrote it', () => {
  const item = { name: 'iPad-corner--sort', givenName: 'iPad corner  sort' }
  expect(itemTitle(item)).toBe('iPad corner  sort')
  expect(itemInWords(item)).toBe('iPad corner  sort')
})
