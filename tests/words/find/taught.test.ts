import { describe, expect, it } from 'vitest'
import type { TaughtEntry } from '../../../src/plan/plan.js'
import { readTaught } from '../../../src/plan/settings/taught.js'
import { openOfferedWords } from '../../../src/words/find/offered-file.js'
import { readableWords, thisWeeks } from '../../../src/words/find/taught.js'
import { patternNames } from '../../../src/words/patterns/index.js'
import { lexicon, offered } from './offered.js'

function entries(...lines: readonly string[]): readonly TaughtEntry[] {
  const items = lines.map(
    (text, index) => ({ kind: 'text', text, place: { file: 'taught.txt', line: index + 1 } }) as const,
  )
  const read = readTaught({ kind: 'list', items, place: { file: 'taught.txt' } }, patternNames)
  if (!read.ok) throw new Error(read.problems.map(({ message }) => message).join('\n'))
  return read.value
}

function reading(...lines: readonly string[]) {
  const known = readableWords(entries(...lines), lexicon)
  if (!known.ok) throw new Error(known.problems.map(({ message }) => message).join('\n'))
  return (words: string) =>
    words
      .split(' ')
      .filter(word => known.value(offered(word)))
      .join(' ')
}

describe('what a class can read that has been taught so far', () => {
  it('is single consonants with their own sounds, once there is a vowel', () => {
    expect(reading('short-vowel')('cat gum his fox van yes jam')).toBe('cat gum his fox van yes jam')
    expect(reading('consonant-digraph')('cat ship')).toBe('')
  })

  it('is no consonant with another sound: soft c and g, the t of nation', () => {
    expect(reading('short-vowel', 'silent-e')('cell gem cake')).toBe('cake')
  })

  it('is one short vowel where one letter is on the list', () => {
    expect(reading('a')('cat pig make was')).toBe('cat')
  })

  it('is the letters of a pattern, wherever a word shows it', () => {
    expect(reading('short-vowel', 'consonant-digraph')('ship much rain thin')).toBe('ship much thin')
    expect(reading('vowel-team')('rain head moon pie cat')).toBe('rain head moon pie')
    expect(reading('short-vowel', 'silent-e')('cake have cube car')).toBe('cake have cube')
    expect(reading('r-controlled')('car fire sir bird care')).toBe('car fire sir bird care')
  })

  it('is letters with the sound that they mostly spell, or that they have in a word', () => {
    expect(reading('ea')('sea bean bread')).toBe('sea bean')
    expect(reading('ea as in bread')('sea bean dead')).toBe('dead')
    expect(reading('ow as in snow', 'n')('low cow')).toBe('low')
    expect(reading('th', 'i', 'e')('thin then')).toBe('thin then')
    expect(reading('y as in my')('my by baby')).toBe('my by')
    expect(reading('a_e')('cake have dance bike')).toBe('cake')
  })

  it('is a blend only when the blend is on the list, by its pattern or by its letters', () => {
    expect(reading('short-vowel')('stop sop')).toBe('sop')
    expect(reading('short-vowel', 'beginning-blend')('stop frog hand')).toBe('stop frog')
    expect(reading('short-vowel', 'st')('stop frog nest')).toBe('stop nest')
    expect(reading('short-vowel', 'consonant-digraph')('shrub bench')).toBe('')
    expect(reading('short-vowel', 'beginning-blend', 'ending-blend')('kremlin crest')).toBe('crest')
    expect(reading('short-vowel', 'ending-blend', 'digraph-blend')('shrub bench')).toBe('shrub bench')
  })

  it('is what a word on the list shows', () => {
    expect(reading('ship', 'rain')('rash chip pain pair ship')).toBe('pain ship')
    expect(reading('stamp')('stamp past map step')).toBe('stamp past map')
    expect(reading('cake')('take bike')).toBe('take')
  })

  it('is no vowel that has lost its sound before schwa is on the list', () => {
    expect(reading('short-vowel', 'double-consonant')('rabbit wagon')).toBe('rabbit')
    expect(reading('short-vowel', 'schwa')('wagon')).toBe('wagon')
  })

  it('is not opened by what is said of a whole word or of a kind of syllable', () => {
    expect(reading('compound', 'closed-syllable', 'homophone')('sunset sea')).toBe('')
  })

  it('holds no letter that is not known, in any word to offer', () => {
    const known = readableWords(entries('short-vowel', 'consonant-digraph'), lexicon)
    if (!known.ok) throw new Error('not read')
    const readable = openOfferedWords().filter(known.value)
    expect(readable.length).toBeGreaterThan(200)
    // Said anew without the rule's own tables: short vowels, digraphs, single consonant letters, nothing else.
    const word =
      /^(?:[bcdfghjklmnprstvwxyz]|sh|ch|th|wh|ph|ng|ck)?[aeiou](?:(?:[bcdfghjklmnprstvwxyz]|sh|ch|th|wh|ph|ng|ck|gh)+[aeiou]?)*$/
    expect(readable.filter(({ text }) => !word.test(text)).map(({ text }) => text)).toEqual([])
  })
})

describe('a list of what is taught', () => {
  const problems = (...lines: readonly string[]) => {
    const known = readableWords(entries(...lines), lexicon)
    return known.problems.map(({ place, message }) => `${place.line}: ${message}`)
  }

  it('says of each entry that is nothing what it is not, at its own line', () => {
    expect(problems('sh', 'digraff', 'ea as in rock', 'ea as in blorp')).toEqual([
      '2: "digraff" is no pattern, no letters of one sound or blend and no known word',
      '3: "ea" spells no sound of its own in "rock"',
      '4: "blorp" is not in the lexicon',
    ])
  })
})

describe('what a plan teaches this week', () => {
  it('is what its marks stand on; letters that spell nothing are passed over', () => {
    const place = { file: 'week.yaml' }
    const marks = [
      { place, target: { kind: 'pattern', pattern: 'vowel-team' } },
      { place, target: { kind: 'letters', letters: 'sh' } },
      { place, target: { kind: 'letters', letters: 'zq' } },
    ] as const
    expect(thisWeeks(marks, lexicon)).toEqual([
      { kind: 'pattern', pattern: 'vowel-team', place },
      { kind: 'letters', letters: 'sh', place },
    ])
  })
})
