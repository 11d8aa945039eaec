/** Consonants that stand together in one syllable and keep their own sounds. */
import type { Finding } from '../word.js'
import { isDigraphInBlend } from './digraph-sounds.js'
import { oncePerWord } from './once-per-word.js'
import type { Pattern, StudiedLetters } from './pattern.js'
import { commonPractice } from './pattern.js'
import { findingAt, type SpelledSound, spelledSounds } from './spelled-sounds.js'

const beginningPairs = new Set('bl cl fl gl pl sl br cr dr fr gr pr tr sc sk sm sn sp st sw tw dw'.split(' '))
/** squ counts: s and the two sounds of qu, /S K W/. */
const beginningTriples = new Set('scr spl spr str squ'.split(' '))
const beginningDigraphBlends = new Set('phl phr shr sph thr thw'.split(' '))

const endingPairs = new Set('ct ft lb ld lf lk lm lp lt mp nc nd nk nt pt sc sk sp st'.split(' '))
const endingTriples = new Set('dst lpt mpt nct nst'.split(' '))
const endingDigraphBlends = new Set('dth fth lch lfth lsh lth mph nch ngst ngth nth pth xth'.split(' '))

/** The blend's pattern that such letters make at the beginning or else at the end of a syllable; undefined for none. */
export function blendOf(letters: string): BlendName | undefined {
  return onsetName(letters) ?? codaName(letters)
}

/** A single letter in a blend has its plain sound: no silent letters, no soft c. */
export const plainSounds: Readonly<Record<string, string>> = {
  b: 'B',
  c: 'K',
  d: 'D',
  f: 'F',
  g: 'G',
  k: 'K',
  l: 'L',
  m: 'M',
  n: 'N',
  p: 'P',
  r: 'R',
  s: 'S',
  t: 'T',
  w: 'W',
}

function anyOf(letters: readonly string[]): RegExp {
  return new RegExp(letters.join('|'))
}

type BlendName = 'beginning-blend' | 'ending-blend' | 'three-letter-blend' | 'digraph-blend'

export interface BlendRun {
  readonly name: BlendName
  readonly position: 'before the vowel' | 'after the vowel'
  readonly start: number
  readonly end: number
  readonly members: readonly SpelledSound[]
}

function keepsItsSound({ letters, said }: SpelledSound): boolean {
  if (letters === 'n') return said === 'N' || said === 'NG'
  if (letters === 'qu') return said === 'K W'
  if (letters === 'x') return said === 'K S'
  return plainSounds[letters] === said || isDigraphInBlend(letters, said)
}

/** The consonants right before the syllable's vowel, all in its syllable, that keep their sounds; no sign between. */
function onsetBefore(vowel: SpelledSound, all: readonly SpelledSound[]): readonly SpelledSound[] {
  let first = vowel.index
  while (first > 0 && isBlendable(all[first - 1]!, vowel.syllable) && touches(all[first - 1]!, all[first]!))
    first -= 1
  return all.slice(first, vowel.index)
}

function codaAfter(vowel: SpelledSound, all: readonly SpelledSound[]): readonly SpelledSound[] {
  let end = vowel.index + 1
  while (
    end < all.length &&
    isBlendable(all[end]!, vowel.lastSyllable) &&
    (end === vowel.index + 1 || touches(all[end - 1]!, all[end]!))
  )
    end += 1
  return all.slice(vowel.index + 1, end)
}

/** The n and t of can't do not. */
function touches(left: SpelledSound, right: SpelledSound): boolean {
  return left.end === right.start
}

function isBlendable(spelled: SpelledSound, syllable: number): boolean {
  const { kind, syllable: first, lastSyllable } = spelled
  return kind === 'consonant' && first === syllable && lastSyllable === syllable && keepsItsSound(spelled)
}

function lettersOf(run: readonly SpelledSound[]): string {
  return run.map(spelled => spelled.letters).join('')
}

/** An s that was added to the word belongs to no blend: the sp of wasps, not its sps. */
function withoutAddedS(run: readonly SpelledSound[], wordEnd: number): readonly SpelledSound[] {
  const last = run.at(-1)
  return last?.letters === 's' && last.end === wordEnd ? run.slice(0, -1) : run
}

function onsetName(letters: string): BlendName | undefined {
  if (beginningDigraphBlends.has(letters)) return 'digraph-blend'
  if (beginningTriples.has(letters)) return 'three-letter-blend'
  return beginningPairs.has(letters) ? 'beginning-blend' : undefined
}

function codaName(letters: string): BlendName | undefined {
  if (endingDigraphBlends.has(letters)) return 'digraph-blend'
  if (endingTriples.has(letters)) return 'three-letter-blend'
  return endingPairs.has(letters) ? 'ending-blend' : undefined
}

const blendRuns = oncePerWord(findRuns)

function findRuns(word: StudiedLetters): readonly BlendRun[] {
  const all = spelledSounds(word)
  const runs: BlendRun[] = []
  for (const vowel of all) {
    if (vowel.kind !== 'vowel') continue
    const onset = onsetBefore(vowel, all)
    const before = asRun(onset, onsetName(lettersOf(onset)), 'before the vowel')
    if (before !== undefined) runs.push(before)
    const heard = codaAfter(vowel, all)
    const coda = codaName(lettersOf(heard)) === undefined ? withoutAddedS(heard, all.at(-1)!.end) : heard
    const after = asRun(coda, codaName(lettersOf(coda)), 'after the vowel')
    if (after !== undefined) runs.push(after)
  }
  return runs
}

function asRun(
  members: readonly SpelledSound[],
  name: BlendName | undefined,
  position: BlendRun['position'],
): BlendRun | undefined {
  const first = members[0]
  const last = members.at(-1)
  if (name === undefined || first === undefined || last === undefined || members.length < 2) return undefined
  return { name, position, members, start: first.start, end: last.end }
}

export function digraphBlendRuns(word: StudiedLetters): readonly BlendRun[] {
  return blendRuns(word).filter(run => run.name === 'digraph-blend')
}

function blendsNamed(name: BlendName): (word: StudiedLetters) => readonly Finding[] {
  return word =>
    blendRuns(word)
      .filter(run => run.name === name)
      .map(run => findingAt(word, { pattern: name, start: run.start, end: run.end, why: whyOf(run) }))
}

function whyOf({ name, members, position }: BlendRun): string {
  const heard = members.map(({ letters, said }) => `${letters} /${said}/`).join(', ')
  if (name === 'digraph-blend') return `a digraph blended with another consonant ${position}: ${heard}`
  const count = name === 'three-letter-blend' ? 'three' : 'two'
  return `${count} consonants ${position} in one syllable, each with its own sound: ${heard}`
}

export const beginningBlend: Pattern = {
  name: 'beginning-blend',
  scope: 'letters',
  definition: 'two consonants before the vowel of a syllable, each with its own sound: bl, cr, st, tw …',
  condition: `two single consonant letters at the beginning of a word or syllable, of ${[...beginningPairs].join(' ')}; a longer blend is named as a whole`,
  example: { word: 'frog', letters: 'fr' },
  counterExample: { word: 'sword', why: 'its w is silent' },
  source: commonPractice,
  spelledWith: anyOf([...beginningPairs]),
  find: blendsNamed('beginning-blend'),
}

export const endingBlend: Pattern = {
  name: 'ending-blend',
  scope: 'letters',
  definition: 'two consonants after the vowel of a syllable, each with its own sound: nd, mp, st, nk …',
  condition: `two single consonant letters at the end of a syllable (a silent e may follow), of ${[...endingPairs].join(' ')}; never with an added s or ed; in nk the n is heard /NG/`,
  example: { word: 'pond', letters: 'nd' },
  counterExample: { word: 'cats', why: 'its s was added to cat' },
  source: commonPractice,
  spelledWith: anyOf([...endingPairs]),
  find: blendsNamed('ending-blend'),
}

export const threeLetterBlend: Pattern = {
  name: 'three-letter-blend',
  scope: 'letters',
  definition:
    'three consonants in one syllable that keep three sounds: spl spr str scr, squ (/S K W/), at the end mpt, nct',
  condition: 'three single consonant letters (or s and qu) together before or after the vowel, each heard',
  example: { word: 'stream', letters: 'str' },
  counterExample: { word: 'shrug', why: 'shr is three letters with two sounds, a digraph blend' },
  source: commonPractice,
  spelledWith: anyOf([...beginningTriples, ...endingTriples]),
  find: blendsNamed('three-letter-blend'),
}

export const digraphBlend: Pattern = {
  name: 'digraph-blend',
  scope: 'letters',
  definition: 'a digraph blended with another consonant in one syllable: shr-, thr-, -nch, -nth …',
  condition: `a digraph's new sound and another consonant's own: not the ch of school, said as c is; at the beginning ${[...beginningDigraphBlends].join(' ')}; at the end ${[...endingDigraphBlends].join(' ')}; the digraph inside is not named again`,
  example: { word: 'thread', letters: 'thr' },
  counterExample: { word: 'church', why: 'the r before ch belongs to the vowel ur' },
  source: commonPractice,
  spelledWith: anyOf([...beginningDigraphBlends, ...endingDigraphBlends]),
  find: blendsNamed('digraph-blend'),
}
