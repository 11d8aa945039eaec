/**
 * How a word is said, in letters that a teacher reads aloud: *bridge* is brij, *rabbit* RAB-it. The signs are those
 * that American school dictionaries use (long vowels with a bar, capitals for the stressed syllable; common practice, no
 * source); ARPABET stays for machines.
 */
import { lazily } from '../../lazily.js'
import { alignWord } from '../alignment/graphemes.js'
import { rowsOf } from '../tables/installed-tables.js'
import type { Grapheme, Word } from '../word.js'

/** What is not as its letter says; every other consonant is its letter, every short vowel too. */
const signs: Readonly<Record<string, string>> = {
  AA: 'o',
  AE: 'a',
  AH: 'u',
  AO: 'aw',
  AW: 'ow',
  AY: 'ī',
  EH: 'e',
  ER: 'er',
  EY: 'ā',
  HH: 'h',
  IH: 'i',
  IY: 'ē',
  JH: 'j',
  OW: 'ō',
  OY: 'oy',
  UH: 'uu',
  UW: 'oo',
}
/** The vowel of an unstressed syllable that says its letter no more. */
const WEAK = 'uh'

/** Before r three vowels are read otherwise than their letters say. */
const beforeR: Readonly<Record<string, string>> = { AA: 'ah', EH: 'ai', IH: 'ee' }

/** The sign of one ARPABET sound, with its stress or without: `IY1` → `ē`; spelled with an a, `AA1` is no short o: father. */
export function plainSign(sound: string, next?: string, letters = ''): string {
  const bare = sound.replace(/\d$/, '')
  if (sound === 'AH0') return WEAK
  if (bare === 'AA' && /a/i.test(letters) && !/o/i.test(letters)) return beforeR.AA!
  return (next === 'R' ? beforeR[bare] : undefined) ?? signs[bare] ?? bare.toLowerCase()
}

function plainRow(sounds: readonly string[], after?: string): string {
  return sounds.map((sound, index) => plainSign(sound, sounds[index + 1] ?? after)).join('')
}

/** Sounds in a row: `B R IH1 JH` → `brij`. */
export function plainSounds(sounds: string): string {
  return plainRow(sounds.split(' '))
}

/** Every /ARPABET/ in a sentence in plain signs. */
export function inPlainSounds(text: string): string {
  return text.replaceAll(
    /\/([A-Z]{1,2}[0-2]?(?: [A-Z]{1,2}[0-2]?)*)\//g,
    (_, sounds: string) => `/${plainSounds(sounds)}/`,
  )
}

/** The word as it is said, its syllables parted, the stressed one in capitals where there are several. */
export function respelling(
  word: Pick<Word, 'text' | 'graphemes' | 'syllables' | 'pronunciations'>,
  pronunciation: string,
): string {
  const isFirst = pronunciation === word.pronunciations[0]
  const graphemes = isFirst ? word.graphemes : alignWord(word.text, pronunciation).graphemes
  const sounds = pronunciation.split(' ')
  if (graphemes.flatMap(grapheme => grapheme.sounds).length !== sounds.length)
    return plainSounds(pronunciation)
  const syllables = soundsBySyllable(graphemes, word.syllables, sounds)
  return syllables
    .map(said => {
      const text = said
        .map(({ sound, letters }, index) => {
          const next = said[index + 1]?.sound
          return hasUnsaidR(sound, letters, next)
            ? `${plainSign(sound, 'R', letters)}(r)`
            : plainSign(sound, next, letters)
        })
        .join('')
      return syllables.length > 1 && said.some(({ sound }) => sound.endsWith('1')) ? text.toUpperCase() : text
    })
    .join('-')
}

/** Where a class drops its r, chair without it would read as che; ah and aw say enough (mahsh for marsh). */
function hasUnsaidR(sound: string, letters: string, next: string | undefined): boolean {
  return /^(?:IH|IY|EH|UH|UW|AY|AW)\d$/.test(sound) && /^[aeiouy][a-z]*r[eh]*$/i.test(letters) && next !== 'R'
}

/** A sound with the letters that spell it. */
interface Said {
  readonly sound: string
  readonly letters: string
}

/** The sounds of each syllable that has any. */
function soundsBySyllable(
  graphemes: readonly Grapheme[],
  syllables: readonly string[],
  sounds: readonly string[],
): readonly (readonly Said[])[] {
  const ends: number[] = []
  for (const syllable of syllables) ends.push((ends.at(-1) ?? 0) + lettersOf(syllable))
  const said: Said[][] = syllables.map(() => [])
  let letters = 0
  let taken = 0
  for (const grapheme of graphemes) {
    const index = ends.findIndex(end => letters < end)
    const own = sounds
      .slice(taken, taken + grapheme.sounds.length)
      .map(sound => ({ sound, letters: grapheme.letters }))
    said[index < 0 ? syllables.length - 1 : index]?.push(...own)
    letters += lettersOf(grapheme.letters)
    taken += own.length
  }
  return said.filter(each => each.length > 0)
}

function lettersOf(text: string): number {
  return text.replaceAll(/[^\p{L}]/gu, '').length
}

const keyWords = lazily(
  () => new Map(rowsOf('patterns/key-words').map(([sound = '', word = '']) => [sound, word])),
)
/** Signs that nobody has to be told. */
const plain = new Set('a e i o u b d f g h j k l m n p r s t v w y z er ch sh ng'.split(' '))

/** What the signs in these sounds mean, for the foot of a page: `ē see, th thin`. */
export function legend(pronunciations: readonly string[]): readonly string[] {
  const used = new Set(
    pronunciations.flatMap(each => each.split(' ')).filter(sound => !plain.has(plainSign(sound))),
  )
  const entries = [...used].map((sound): readonly [string, string] => {
    const sign = plainSign(sound)
    return [
      sign,
      sign === WEAK ? 'the weak sound of a in about' : (keyWords().get(sound.replace(/\d$/, '')) ?? ''),
    ]
  })
  return [...new Map(entries)].filter(([, word]) => word !== '').map(([sign, word]) => `${sign} ${word}`)
}
