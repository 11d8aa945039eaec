import { describe, expect, test } from 'vitest'
import { findingsOf } from '../word-parts/word-parts.js'

function suffixOf(word: string): string | undefined {
  return findingsOf(word).find(({ pattern }) => pattern === 'suffix')?.why
}

describe('suffixes tell what they were added to', () => {
  test.each([
    ['heroic', '-ic added to hero'],
    ['scenic', '-ic added to scene without its e'],
    ['tropical', '-al added to tropic'],
    ['arrival', '-al added to arrive without its e'],
    ['lioness', '-ess added to lion'],
    ['actress', '-ess added to actor without its o'],
    ['wintry', '-y added to winter without its e'],
    ['collection', '-tion, said /SH AH N/: -ion added to collect'],
    ['discussion', '-sion, said /SH AH N/: -ion added to discuss'],
    ['famous', '-ous, said /AH S/: -ous added to fame without its e'],
  ])('%s: %s', (word, why) => expect(suffixOf(word)).toBe(why))
})

describe('words that only look as if they had one', () => {
  test.each(['mattress', 'metal', 'petal', 'rustic', 'pantry', 'animal', 'music'])('%s', word =>
    expect(suffixOf(word)).toBeUndefined(),
  )

  test('station and its like have the ending alone, not after state', () => {
    expect(suffixOf('station')).toBe('-tion, said /SH AH N/')
    expect(suffixOf('gorgeous')).toBe('-ous, said /AH S/')
  })
})
