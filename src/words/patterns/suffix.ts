/** Suffixes that primary grades teach. */
import { lazily } from '../../lazily.js'
import { soundsOf } from '../alignment/arpabet.js'
import { byLetter } from '../by-letter.js'
import { irregularVerbs } from '../endings/irregular-verbs.js'
import type { Finding, PartOfSpeech } from '../word.js'
import { type BaseSpelling, isFamiliar, spellingsBehind } from './base-words.js'
import { oncePerWord } from './once-per-word.js'
import type { Pattern, StudiedLetters, WordEvidence } from './pattern.js'
import { findingAt } from './spelled-sounds.js'
import { isInWordGroup } from './words-apart.js'

interface Suffix {
  readonly letters: string
  readonly sounds: RegExp
  /** Without it the letters and sounds are evidence enough. */
  readonly makes?: readonly PartOfSpeech[]
}

/**
 * Suffixes with their sounds and the parts of speech that they make: -ly an adverb or a describing word, so that the
 * nouns ally and assembly have none.
 */
const suffixes: readonly Suffix[] = [
  { letters: 'ness', sounds: /N (AH|IH|EH) S$/, makes: ['noun'] },
  { letters: 'less', sounds: /L (AH|IH|EH) S$/, makes: ['adjective', 'adverb'] },
  { letters: 'ment', sounds: /M (AH|IH|EH) N T$/, makes: ['noun'] },
  { letters: 'able', sounds: /AH B AH L$/, makes: ['adjective'] },
  { letters: 'ible', sounds: /AH B AH L$/, makes: ['adjective'] },
  { letters: 'ship', sounds: /SH IH P$/, makes: ['noun'] },
  { letters: 'hood', sounds: /HH UH D$/, makes: ['noun'] },
  { letters: 'ward', sounds: /W ER D$/, makes: ['adjective', 'adverb', 'preposition'] },
  { letters: 'some', sounds: /S AH M$/, makes: ['adjective', 'noun'] },
  { letters: 'teen', sounds: /T IY N$/, makes: ['number'] },
  { letters: 'tion', sounds: /(SH|CH) AH N$/ },
  { letters: 'sion', sounds: /(SH|ZH) AH N$/ },
  { letters: 'ful', sounds: /F (AH|UH) L$/, makes: ['adjective', 'noun'] },
  { letters: 'ous', sounds: /AH S$/ },
  { letters: 'ess', sounds: /(IH|EH|AH) S$/, makes: ['noun'] },
  { letters: 'ish', sounds: /IH SH$/, makes: ['adjective'] },
  { letters: 'ic', sounds: /IH K$/, makes: ['adjective'] },
  { letters: 'al', sounds: /AH L$/, makes: ['adjective', 'noun'] },
  { letters: 'ly', sounds: /L IY$/, makes: ['adverb', 'adjective'] },
  { letters: 'en', sounds: /AH N$/, makes: ['verb', 'adjective'] },
  { letters: 'or', sounds: /ER$/, makes: ['noun'] },
  { letters: 'y', sounds: /IY$/, makes: ['adjective', 'noun', 'adverb'] },
]

const suffixesByLast = byLetter(suffixes, ({ letters }) => letters.at(-1)!)

/** The dictionary wavers between reduced vowels (different, differently), and between AA and AO. */
function alike(first: string, second: string | undefined): boolean {
  const reduced = /^(?:AH|IH|EH)$/
  if (second === undefined || first === second) return first === second
  return (reduced.test(first) && reduced.test(second)) || (/^A[AO]$/.test(first) && /^A[AO]$/.test(second))
}

/** The base's sounds stand at the beginning; a last /IY/ (happy, happily), /AH L/ (simple, simply) or /ER/ (hunger, hungry) may change. */
function keepsSounds(base: readonly string[], sounds: readonly string[]): boolean {
  const fixed =
    base.at(-1) === 'IY' ? base.slice(0, -1) : base.slice(-2).join(' ') === 'AH L' ? base.slice(0, -2) : base
  const last = fixed.length - 1
  return (
    fixed.length > 0 &&
    fixed.every(
      (sound, index) =>
        alike(sound, sounds[index]) || (index === last && sound === 'ER' && sounds[index] === 'R'),
    )
  )
}

/** soft, soften; haste, hasten. */
function withoutFinalT(sounds: readonly string[]): readonly string[] {
  return sounds.at(-1) === 'T' ? sounds.slice(0, -1) : sounds
}

function findSuffix(word: StudiedLetters): readonly Finding[] {
  const text = word.text.toLowerCase()
  const spoken = soundsOf(word.pronunciation).join(' ')
  for (const { letters, sounds, makes } of suffixesByLast.get(text.at(-1)!) ?? []) {
    if (!text.endsWith(letters) || text.length < letters.length + 2) continue
    const said = sounds.exec(spoken)?.[0]
    if (said === undefined) continue
    if (isInWordGroup(text, 'no suffix')) return []
    const finding = (why: string) =>
      findingAt(word, { pattern: 'suffix', start: text.length - letters.length, end: text.length, why })
    if (makes === undefined) {
      const base = baseBeforeTion(letters, word)
      return [finding(`-${letters}, said /${said}/${base === undefined ? '' : `: ${base}`}`)]
    }
    const base = mayBe(makes, word) ? baseBefore(letters, word) : undefined
    if (base !== undefined) return [finding(`-${letters} added to ${base.inWords}`)]
  }
  return []
}

/** A word whose parts of speech are not known may be anything. */
function mayBe(parts: readonly PartOfSpeech[], { partsOfSpeech = [] }: StudiedLetters): boolean {
  return partsOfSpeech.length === 0 || partsOfSpeech.some(part => parts.includes(part))
}

/** The base that is a familiar word and keeps its sounds; the most familiar where there are several. */
function baseBefore(letters: string, word: StudiedLetters): BaseSpelling | undefined {
  const { evidence } = word
  if (evidence === undefined) return undefined
  const text = word.text.toLowerCase()
  const sounds = soundsOf(word.pronunciation)
  const stem = text.slice(0, -letters.length)
  const verb = letters === 'en' ? verbOfParticiple().get(text) : undefined
  if (verb !== undefined) return { base: verb, inWords: verb }
  const isBase = ({ base }: BaseSpelling) =>
    (base.length >= 3 || letters === 'ward') &&
    isFamiliar(base, evidence) &&
    evidence.pronunciationsOf(base).some(pronunciation => {
      const ofBase = soundsOf(pronunciation)
      return keepsSounds(letters === 'en' && /[fs]t$/.test(stem) ? withoutFinalT(ofBase) : ofBase, sounds)
    })
  if (letters === 'ly') return baseBeforeLy(word, evidence, isBase)
  const bases = [...spellingsBehind(stem), ...spellingsWithEr(letters, word)].filter(isBase)
  // mess in messy, not mes with its last letter doubled.
  const whole = bases.filter(({ base }) => base.length >= stem.length)
  return mostFamiliar(whole.length > 0 ? whole : bases, evidence)
}

/** -er and -or lose their vowel before a describing -y and before -ess: hungry from hunger, actress from actor. */
function spellingsWithEr(letters: string, { text, partsOfSpeech }: StudiedLetters): readonly BaseSpelling[] {
  const stem = /^(.*[^aeiou])r$/.exec(text.toLowerCase().slice(0, -letters.length))?.[1]
  const mayLose = letters === 'ess' || (letters === 'y' && partsOfSpeech?.[0] === 'adjective')
  if (stem === undefined || !mayLose) return []
  return ['er', 'or'].map(end => ({ base: `${stem}${end}`, inWords: `${stem}${end} without its ${end[0]}` }))
}

/** -tion and -sion take a t or an s from the word before them: collect·ion, creat·ion, discuss·ion; -ous takes none. */
function baseBeforeTion(letters: string, word: StudiedLetters): string | undefined {
  const { text, pronunciation, evidence } = word
  if (evidence === undefined || isInWordGroup(text.toLowerCase(), 'no base')) return undefined
  const added = letters === 'ous' ? 'ous' : 'ion'
  const sounds = soundsOf(pronunciation)
  const keepsAllButLast = (base: string) =>
    evidence
      .pronunciationsOf(base)
      .map(soundsOf)
      .some(
        ofBase => ofBase.length > 1 && keepsSounds(added === 'ion' ? ofBase.slice(0, -1) : ofBase, sounds),
      )
  const bases = spellingsBehind(text.toLowerCase().slice(0, -added.length)).filter(
    ({ base }) => base.length >= 3 && isFamiliar(base, evidence) && keepsAllButLast(base),
  )
  const found = mostFamiliar(bases, evidence)
  return found === undefined ? undefined : `-${added} added to ${found.inWords}`
}

/**
 * A consonant is not doubled before -ly, and a word in -le or -l that explains the l is the better base: wiggly is wiggle
 * and -y, curly is curl and -y, gently is gentle and -ly.
 */
function baseBeforeLy(
  { text, partsOfSpeech }: StudiedLetters,
  evidence: WordEvidence,
  isBase: (spelling: BaseSpelling) => boolean,
): BaseSpelling | undefined {
  const stem = text.toLowerCase().slice(0, -'ly'.length)
  const own = mostFamiliar(
    spellingsBehind(stem).filter(spelling => spelling.base.length >= stem.length && isBase(spelling)),
    evidence,
  )
  const known = (base: string) => (isBase({ base, inWords: base }) ? evidence.familiarity(base) : 0)
  const [ofOwn, ofLe, ofL] = [own === undefined ? 0 : known(own.base), known(`${stem}le`), known(`${stem}l`)]
  if (partsOfSpeech?.[0] === 'adjective' && ofLe > ofOwn / rarestAgainstStem) return undefined
  if (ofL > ofOwn) {
    // fully and dully drop an l of full and dull.
    return partsOfSpeech?.[0] === 'adverb'
      ? { base: `${stem}l`, inWords: `${stem}l without its last l` }
      : undefined
  }
  return ofLe > ofOwn ? { base: `${stem}le`, inWords: `${stem}le without its le` } : own
}

/** sparkly has more of sparkle than of spark, but sickly has nothing of sickle. */
const rarestAgainstStem = 100

function mostFamiliar(bases: readonly BaseSpelling[], evidence: WordEvidence): BaseSpelling | undefined {
  return bases.toSorted((a, b) => evidence.familiarity(b.base) - evidence.familiarity(a.base))[0]
}

/** written → write: its own base, though writ is a word too. */
const verbOfParticiple: () => ReadonlyMap<string, string> = lazily(
  () =>
    new Map(
      [...irregularVerbs()].flatMap(([verb, { participle }]) =>
        participle.filter(form => form.endsWith('en') && form !== verb).map(form => [form, verb] as const),
      ),
    ),
)

export const suffix: Pattern = {
  name: 'suffix',
  scope: 'letters',
  definition:
    'a part with a meaning after a base word: -ful -less -ness -ly -ment -y …, and -tion, -sion, -ous',
  condition: `${suffixes.map(({ letters }) => letters).join(' ')} after a known word that keeps its sounds, in a word of the kind that the suffix makes: -ly an adverb or a describing word, -ness a noun (tion, sion, ous: by letters and sounds); -ed -ing -er -est -s -es are named as endings; a list names look-alikes`,
  example: { word: 'harmless', letters: 'less' },
  counterExample: { word: 'lily', why: 'there is no word li that -ly was added to' },
  source: 'the commonest suffixes after White, Sowell and Yanagihara 1989; from memory',
  find: oncePerWord(findSuffix),
}
