/** Two or three consonant letters that spell one sound: digraphs, trigraphs, doubled letters. */
import type { Accent } from '../../plan/plan.js'
import { digraphBlendRuns } from './blends.js'
import { isDigraph } from './digraph-sounds.js'
import type { Pattern, StudiedLetters } from './pattern.js'
import { commonPractice } from './pattern.js'
import { soundName, soundNames } from './sound-names.js'
import { findEach, findingAt, type SpelledSound, spelledSounds } from './spelled-sounds.js'

const trigraphSounds: Readonly<Record<string, readonly string[]>> = {
  tch: ['CH'],
  dge: ['JH'],
  igh: ['AY'],
  eau: ['OW', 'UW', 'AA'],
}

function digraphWhy({ letters, sounds, said: sound }: SpelledSound, accent: Accent | undefined): string {
  if (letters === 'wh' && accent?.wh === 'own') return 'wh has its own sound in this accent, /HH W/'
  if (letters === 'ch' && sound === 'SH')
    return 'ch spells one sound, /SH/ here, as in many words from French'
  if (letters === 'ck') return 'ck spells one sound, /K/, right after a short vowel'
  return `${letters} spells one sound of its own, ${soundNames(sounds)}`
}

function findDigraphs(word: StudiedLetters) {
  const blended = digraphBlendRuns(word)
  return spelledSounds(word)
    .filter(({ letters, said }) => isDigraph(letters, said))
    .filter(({ start, end }) => !blended.some(run => run.start <= start && end <= run.end))
    .map(spelled => {
      const { start, end } = spelled
      return findingAt(word, {
        pattern: 'consonant-digraph',
        start,
        end,
        why: digraphWhy(spelled, word.accent),
      })
    })
}

export const consonantDigraph: Pattern = {
  name: 'consonant-digraph',
  scope: 'letters',
  definition: 'two consonant letters with one new sound: sh ch th wh ph ng ck (and gh as /F/)',
  condition:
    'one grapheme of these two letters with one sound that is new; not where one letter is silent (the ch of school, the wh of who), not where each letter keeps its own sound, and not inside a digraph blend, which is named as a whole',
  example: { word: 'marsh', letters: 'sh' },
  counterExample: { word: 'pothole', why: 't and h stand in different syllables and keep their own sounds' },
  source: commonPractice,
  spelledWith: /[sctwpg]h|ng|ck/,
  find: findDigraphs,
}

export const trigraph: Pattern = {
  name: 'trigraph',
  scope: 'letters',
  definition: 'three letters that spell one sound: tch dge igh eau',
  condition:
    'one grapheme of these three letters with one sound; r-controlled ear, eer, air and the like are named r-controlled',
  example: { word: 'hatch', letters: 'tch' },
  counterExample: { word: 'courtship', why: 't and sh stand in different syllables and make two sounds' },
  source: commonPractice,
  spelledWith: /tch|dge|igh|eau/,
  find: findEach('trigraph', ({ letters, sounds }) =>
    sounds.length === 1 && trigraphSounds[letters]?.includes(sounds[0]!)
      ? `the three letters ${letters} spell one sound, ${soundName(sounds[0]!)}`
      : undefined,
  ),
}

export const doubleConsonant: Pattern = {
  name: 'double-consonant',
  scope: 'letters',
  definition: 'the same consonant letter twice, heard once',
  condition:
    'two like consonant letters with one sound, or in one with the vowel before them (the rr of hurry); not two like letters that meet in a compound and are both heard',
  example: { word: 'puddle', letters: 'dd' },
  counterExample: {
    word: 'success',
    letters: 'cc',
    why: 'its cc is heard as two sounds, /K/ and /S/ (its ss is a double consonant)',
  },
  source: commonPractice,
  spelledWith: /([bcdfgklmnprstvz])\1/,
  find: word =>
    spelledSounds(word).flatMap(({ letters, sounds, end }) => {
      const doubled = /^[aeiou]*(([bcdfgklmnprstvz])\2)$/.exec(letters)?.[1]
      if (
        doubled === undefined ||
        word.text.at(end - 3) === "'" ||
        sounds.length > (letters === doubled ? 1 : 2)
      )
        return []
      const why = `${doubled[0]} is doubled and heard once`
      return [findingAt(word, { pattern: 'double-consonant', start: end - 2, end, why })]
    }),
}
