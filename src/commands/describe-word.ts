/** A studied word as `study` prints it. */
import { type Explanation, formsOf, respelling, soundsInASentence, type Word } from '../door/words.js'
import { wrapLine } from './wrap-line.js'

export interface Telling {
  /** The reasons, where they are asked for. */
  readonly why: Explanation | undefined
  /** Whether sounds are told in ARPABET. */
  readonly arpabet: boolean
  /** A sentence as it is to be shown. */
  readonly shown: (text: string) => string
}

/** A few lines that fit an 80-column terminal; with the reasons where they are given. */
export function describeWord(word: Word, telling: Telling): readonly string[] {
  const { why, shown } = telling
  const lines = [
    `${word.text}${sourceNote(word)}`,
    ...soundLines(word, telling),
    ...reasoned(syllablesOf(word), why?.syllables),
    ...(why === undefined || why.kindsOfSyllables === '' ? [] : [`  kinds: ${why.kindsOfSyllables}`]),
    ...reasoned(partsOfSpeechOf(word), why?.partsOfSpeech),
    ...formLines(word),
    ...word.patterns.map(({ pattern, letters, place, why: reason, source }) => {
      const found = `${pattern} ${letters} (${source === 'teacher' ? `${place}, yours` : place})`
      return why === undefined ? found : `${found}: ${reason}`
    }),
    ...(word.notes ?? []),
    ...clueLines(word),
  ]
  return lines.flatMap((line, index) => wrapLine(index === 0 ? line : `  ${shown(line)}`, 80))
}

function soundLines(word: Word, { why, arpabet }: Telling): readonly string[] {
  const said = word.pronunciations.map(each => (arpabet ? `/${each}/` : respelling(word, each)))
  const shown = [...new Set(why === undefined ? said.slice(0, mostSaid) : said)]
  return reasoned(`${soundsInASentence(word)}   said ${shown.join(' or ')}`, why?.pronunciation)
}

/** What the dictionary has besides is for those who ask why. */
const mostSaid = 2

/** `-ed jumped (add ed), -ing jumping (add ing)`. */
function formLines(word: Word): readonly string[] {
  const forms = formsOf(word).map(
    ({ ending, form, rule, alternatives = [] }) =>
      `${ending} ${[form, ...alternatives].join(' or ')} (${rule})`,
  )
  return forms.length === 0 ? [] : [`with endings: ${forms.join(', ')}`]
}

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
function clueLines({ clue, clueIsDraft, clueDraft }: Word): readonly string[] {
  if (clue !== undefined && clueIsDraft !== true) return [`clue: ${clue}`]
  return clueDraft === undefined ? [] : [`draft of a clue: ${clueDraft}`]
}
