/** The graphemes of a word with what the rules ask of each: vowel or consonant, stress, syllable. */
import { isVowelSound } from '../alignment/arpabet.js'
import type { Finding, Grapheme, PlaceInWord } from '../word.js'
import { oncePerWord } from './once-per-word.js'
import type { StudiedLetters } from './pattern.js'

export interface SpelledSound {
  readonly index: number
  /** Lower case, without the hyphen or apostrophe that belongs to the grapheme. */
  readonly letters: string
  readonly start: number
  /** Index after the last letter. */
  readonly end: number
  readonly sounds: readonly string[]
  /** The same in one: `K S`; empty for a silent letter. */
  readonly said: string
  readonly kind: 'vowel' | 'consonant' | 'silent'
  /** 0, 1 or 2 for a vowel; undefined for the rest, and where the sounds are not those of the pronunciation. */
  readonly stress: number | undefined
  /** Index of the syllable that its first letter stands in. */
  readonly syllable: number
  /** Differs from `syllable` where a division runs through the letters, as in rab·bit. */
  readonly lastSyllable: number
}

export const spelledSounds: (word: StudiedLetters) => readonly SpelledSound[] = oncePerWord(readSpelledSounds)

function readSpelledSounds(word: StudiedLetters): readonly SpelledSound[] {
  const syllableAt = syllableOfEachLetter(word)
  const stresses = stressOfEachGrapheme(word)
  return word.graphemes.map((grapheme, index) => {
    const { sounds } = grapheme
    const { letters, start } = withoutSigns(grapheme)
    const end = start + letters.length
    return {
      index,
      letters,
      start,
      end,
      sounds,
      said: sounds.length === 1 ? sounds[0]! : sounds.join(' '),
      kind: sounds.length === 0 ? 'silent' : sounds.some(isVowelSound) ? 'vowel' : 'consonant',
      stress: stresses[index],
      syllable: syllableAt[start] ?? 0,
      lastSyllable: syllableAt[end - 1] ?? 0,
    }
  })
}

/** The letters alone: the ng of ping-pong, whose grapheme holds the hyphen, and the t of don't. */
function withoutSigns({ letters, start }: Grapheme): { readonly letters: string; readonly start: number } {
  const lower = letters.toLowerCase()
  if (!lower.includes("'") && !lower.includes('-')) return { letters: lower, start }
  const bare = lower.replace(/^['-]+|['-]+$/g, '')
  return { letters: bare, start: start + lower.indexOf(bare) }
}

function syllableOfEachLetter({ text, syllables }: StudiedLetters): readonly number[] {
  const found: number[] = []
  let syllable = 0
  let used = 0
  for (const letter of text.toLowerCase()) {
    while (syllable < syllables.length - 1 && used >= syllables[syllable]!.length) {
      syllable += 1
      used = 0
    }
    for (let unit = 0; unit < letter.length; unit += 1) found.push(syllable)
    const next = syllables[syllable]?.[used]
    if (next === letter || next?.toLowerCase() === letter) used += letter.length
  }
  return found
}

function stressOfEachGrapheme({ graphemes, pronunciation }: StudiedLetters): readonly (number | undefined)[] {
  const spoken = pronunciation.split(' ')
  const stresses: (number | undefined)[] = []
  let next = 0
  for (const { sounds } of graphemes) {
    let stress: number | undefined
    for (const sound of sounds) {
      const said = spoken[next] ?? ''
      next += 1
      if (said === sound) continue
      if (said.length !== sound.length + 1 || !said.startsWith(sound)) return []
      stress ??= Number(said.at(-1))
    }
    stresses.push(stress)
  }
  return next === spoken.length ? stresses : []
}

export function placeOf(text: string, start: number, end: number): PlaceInWord {
  if (start === 0) return end === text.length ? 'whole' : 'beginning'
  return end === text.length ? 'end' : 'middle'
}

/** A finding on the letters from `start` to `end`, as they stand in the word. */
export function findingAt(
  word: StudiedLetters,
  span: { readonly pattern: string; readonly start: number; readonly end: number; readonly why: string },
): Finding {
  const { pattern, start, end, why } = span
  return {
    pattern,
    letters: word.text.slice(start, end),
    start,
    end,
    place: placeOf(word.text, start, end),
    why,
  }
}

/** Findings of one pattern, one for each grapheme for which `why` gives a reason. */
export function findEach(
  pattern: string,
  why: (spelled: SpelledSound, all: readonly SpelledSound[]) => string | undefined,
): (word: StudiedLetters) => readonly Finding[] {
  return word => {
    const all = spelledSounds(word)
    const findings: Finding[] = []
    for (const spelled of all) {
      const reason = why(spelled, all)
      if (reason === undefined) continue
      findings.push(findingAt(word, { pattern, start: spelled.start, end: spelled.end, why: reason }))
    }
    return findings
  }
}
