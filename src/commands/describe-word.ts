/** A studied word as `study` prints it. */
import type { Explanation } from '../words/explain.js'
import { soundsInASentence } from '../words/sounds-in-words.js'
import type { Word } from '../words/word.js'
import { wrapLine } from './wrap-line.js'

/** A few lines that fit an 80-column terminal; with the reasons where they are given. */
export function describeWord(word: Word, why?: Explanation): readonly string[] {
  const lines = [
    `${word.text}${sourceNote(word)}`,
    ...soundLines(word, why),
    ...reasoned(syllablesOf(word), why?.syllables),
    ...reasoned(partsOfSpeechOf(word), why?.partsOfSpeech),
    ...word.patterns.map(({ pattern, letters, place, why: reason }) =>
      why === undefined ? `${pattern} ${letters} (${place})` : `${pattern} ${letters} (${place}): ${reason}`,
    ),
    ...(word.notes ?? []),
    ...clueLines(word),
  ]
  return lines.flatMap((line, index) => wrapLine(index === 0 ? line : `  ${line}`, 80))
}

function soundLines(word: Word, why: Explanation | undefined): readonly string[] {
  const said = word.pronunciations.map(pronunciation => `/${pronunciation}/`)
  const shown = why === undefined ? said.slice(0, mostSaid) : said
  return reasoned(`${soundsInASentence(word)}   said ${shown.join(' or ')}`, why?.pronunciation)
}

/** What the dictionary has besides is for those who ask why. */
const mostSaid = 2

function reasoned(line: string, why: string | undefined): readonly string[] {
  return why === undefined || why === '' ? [line] : [line, `  why: ${why}`]
}

function syllablesOf({ syllables }: Word): string {
  return `${syllables.length === 1 ? '1 syllable' : `${syllables.length} syllables`}: ${syllables.join('·')}`
}

function sourceNote({ source, overridden = [] }: Word): string {
  const yours = overridden.length === 0 ? '' : `  (yours: ${overridden.join(', ')})`
  return source === 'guess' ? `  (not in the lexicon: its sounds are a guess)${yours}` : yours
}

function partsOfSpeechOf({ partsOfSpeech, partsOfSpeechGuessed, plural }: Word): string {
  const parts = partsOfSpeech.join(', ') || 'part of speech unknown'
  const others = plural?.alternatives ?? []
  const endings = plural === null ? '' : `; plural ${[plural.form, ...others].join(' or ')} (${plural.rule})`
  return `${parts}${endings}${partsOfSpeechGuessed ? '  (a guess)' : ''}`
}

/** The teacher's own clue, or a draft of one. */
function clueLines({ clue, clueDraft }: Word): readonly string[] {
  if (clue !== undefined) return [`clue: ${clue}`]
  return clueDraft === undefined ? [] : [`draft of a clue: ${clueDraft}`]
}
