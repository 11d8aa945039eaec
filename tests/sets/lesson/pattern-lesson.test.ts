import { describe, expect, it } from 'vitest'
import { patternLesson } from '../../../src/sets/lesson/pattern-lesson.js'
import { patternNamed } from '../../../src/words/patterns/index.js'
import { wordsOfAWeek } from '../sorts/words-of-a-week.js'

const lesson = (pattern: string, list: string) => patternLesson(pattern, wordsOfAWeek(list))

describe('what a list teaches of a pattern', () => {
  it('is nothing where no word shows it', () => {
    expect(lesson('trigraph', 'ship, moth')).toBeUndefined()
  })

  it('gathers words by their letters, with the reason of the rule that fired', () => {
    expect(lesson('silent-letters', 'knee, gnat, knot')!.shown).toEqual([
      {
        letters: 'kn',
        counted: '2 letters, 1 sound',
        words: ['knee', 'knot'],
        why: 'k is silent: kn spells /N/ as in net',
      },
      {
        letters: 'gn',
        counted: '2 letters, 1 sound',
        words: ['gnat'],
        why: 'g is silent: gn spells /N/ as in net',
      },
    ])
  })

  it('holds three letters of a vowel against no blends of consonants', () => {
    expect(lesson('trigraph', 'night, high')!.contrasts).toEqual([])
    expect(lesson('trigraph', 'night, catch')!.contrasts).toHaveLength(2)
  })

  it.each([
    ['digraph-blend', 'thrush', 'thr', '3 letters, 2 sounds'],
    ['three-letter-blend', 'spring', 'spr', '3 letters, 3 sounds'],
    ['trigraph', 'catch', 'tch', '3 letters, 1 sound'],
    ['silent-e', 'lake', 'a_e', '2 letters, 1 sound'],
    ['x', 'fox', 'x', '1 letter, 2 sounds'],
    ['r-controlled', 'farm', 'ar', '2 letters, 1 sound'],
    ['ending-ed', 'landed', 'ed', '2 letters, 2 sounds'],
    ['ending-ed', 'jumped', 'ed', '2 letters, 1 sound'],
  ])('counts letters and sounds: %s in %s', (pattern, word, letters, counted) => {
    expect(lesson(pattern, word)!.shown).toMatchObject([{ letters, counted, words: [word] }])
  })

  it('counts none of a pattern whose letters share a piece with others', () => {
    const [shown] = lesson('ending-ed', 'carried')!.shown
    expect(shown).not.toHaveProperty('counted')
  })

  it('counts none of syllables', () => {
    for (const shown of lesson('closed-syllable', 'rabbit')?.shown ?? [])
      expect(shown).not.toHaveProperty('counted')
  })

  it('tells it from what it is mixed up with by a word of the list', () => {
    expect(lesson('digraph-blend', 'thrush, spring, shrub')!.contrasts[0]).toBe(
      'three-letter blend: spr in spring, 3 letters, 3 sounds (three consonants before the vowel in one syllable, each with its own sound: s /S/, p /P/, r /R/)',
    )
  })

  it("tells it by the other pattern's own example where no word of the list shows that", () => {
    const { example, definition } = patternNamed('trigraph')!
    expect(lesson('digraph-blend', 'thrush')!.contrasts.at(-1)).toBe(
      `trigraph: ${example.letters} in ${example.word} (${definition})`,
    )
  })

  it('names a word that seems to show it, as the pattern itself does', () => {
    const { word, why } = patternNamed('vowel-team')!.counterExample
    expect(lesson('vowel-team', 'rain')!.seems).toBe(`${word} (${why})`)
  })
})
