import { describe, expect, test } from 'vitest'
import { alignWord } from '../../../src/words/alignment/graphemes.js'
import { halvesOf } from '../../../src/words/compounds/halves.js'
import { unitsOf } from '../../../src/words/syllables/units.js'

const known: Readonly<Record<string, string>> = {
  snow: 'S N OW1',
  fall: 'F AO1 L',
  drum: 'D R AH1 M',
  stick: 'S T IH1 K',
  black: 'B L AE1 K',
  bird: 'B ER1 D',
  pump: 'P AH1 M P',
  kit: 'K IH1 T',
  near: 'N IH1 R',
  by: 'B AY1',
  fire: 'F AY1 R',
  man: 'M AE1 N',
  back: 'B AE1 K',
  backs: 'B AE1 K S',
  stop: 'S T AA1 P',
  top: 'T AA1 P',
  wood: 'W UH1 D',
  peck: 'P EH1 K',
  dis: 'D IH1 S',
  play: 'P L EY1',
  cup: 'K AH1 P',
  board: 'B AO1 R D',
}
/** A form that the dictionary does not say. */
const unsaid = new Set(['pecker'])

function halves(word: string, pronunciation: string) {
  const letters = unitsOf(alignWord(word, pronunciation).graphemes, pronunciation)
  const found = halvesOf(
    { text: word, letters },
    {
      pronunciationsOf: other => (known[other] === undefined ? [] : [known[other]]),
      familiarity: other => (known[other] !== undefined || unsaid.has(other) ? 1000 : 0),
    },
  )
  return found && `${found.first} + ${found.second}`
}

describe('two familiar words that keep their sounds', () => {
  test.each([
    [
      'snowfall',
      'S N OW1 F AO0 L',
      'snow + fall',
      'without stress, but with a vowel that no weak syllable has',
    ],
    ['drumstick', 'D R AH1 M S T IH0 K', 'drum + stick', 'without stress, but too long for chance'],
    ['blackbird', 'B L AE1 K B ER0 D', 'black + bird', 'without stress, but too long for chance'],
    ['nearby', 'N IH1 R B AY1', 'near + by', 'by is short, and closes compounds'],
    ['fireman', 'F AY1 R M AH0 N', 'fire + man', 'man is weak in most compounds'],
    ['backstop', 'B AE1 K S T AA2 P', 'back + stop', 'not a plural and top'],
    ['woodpecker', 'W UH1 D P EH2 K ER0', 'wood + pecker', 'peck and its ending'],
    ['cupboard', 'K AH1 B ER0 D', 'cup + board', 'listed: its sounds have changed'],
  ])('%s is %s %s: %s', (word, pronunciation, expected) => {
    expect(halves(word, pronunciation)).toBe(expected)
  })

  test.each([
    ['pumpkit', 'P AH1 M P K IH0 T', 'three letters said weakly are chance'],
    ['display', 'D IH0 S P L EY1', 'dis opens words as a prefix'],
    ['snowfell', 'S N OW1 F EH2 L', 'fell is not known'],
  ])('%s (%s) has none: %s', (word, pronunciation) => {
    expect(halves(word, pronunciation)).toBeUndefined()
  })
})
