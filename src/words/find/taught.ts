/**
 * Which words a class can read that has been taught so far. Each grapheme of the word must be one that it knows:
 *
 * - a single consonant letter with its own sound (c as in cat, g as in gate, s as in sun or in his, x as in box, the n of
 *   ink): known from the start;
 * - letters on the list, with the sound that they mostly spell or that they have in the word behind `as in`; a single
 *   vowel letter has its short sound; a_e is the vowel and its silent e;
 * - letters in which the word shows a pattern on the list: with vowel-team its teams, with short-vowel its short vowels,
 *   with silent-e both the vowel and the e, with schwa the vowels that have lost their sound;
 * - what a word on the list shows: its letters with the sounds that they have there, and its blends.
 *
 * Besides, consonants that blend must be known as a blend: by the pattern, by the blend's own letters, or from a word on
 * the list; consonants at the beginning that are no blend (kremlin) never are. What is said of whole words (compound, homophone) and of kinds of syllables opens no letters. So a word that
 * passes holds nothing that the class has not met. Our own rule.
 */

import { andThen, failWith, succeed } from '../../outcomes.js'
import type { MarkTarget, TaughtEntry } from '../../plan/plan.js'
import { nearestAdvice } from '../../plan/values/nearest.js'
import { errorAt, type Outcome, type Place } from '../../problems.js'
import { isVowelSound } from '../alignment/arpabet.js'
import { learnedTable } from '../alignment/graphemes.js'
import type { Lexicon } from '../lexicon/entry.js'
import { blendOf, plainSounds } from '../patterns/blends.js'
import { patternNames } from '../patterns/index.js'
import { shortSounds } from '../patterns/vowels.js'
import { studyWord } from '../study.js'
import { tradeWords } from '../trade-words/trade-words.js'
import type { Grapheme } from '../word.js'
import { type OfferedFinding, type OfferedWord, offeredWord } from './offered-word.js'

/** What children know who have been taught so far. */
export interface Known {
  readonly patterns: ReadonlySet<string>
  /** `ea IY`. */
  readonly spellings: ReadonlySet<string>
  /** `a_e`; `e` for a silent e that lengthens nothing. */
  readonly silentE: ReadonlySet<string>
  /** `str`. */
  readonly blends: ReadonlySet<string>
}

/** Whether a word can be read, or what is wrong with the list. */
export function readableWords(
  taught: readonly TaughtEntry[],
  lexicon: Lexicon,
): Outcome<(word: OfferedWord) => boolean> {
  return andThen(knownBy(taught, lexicon), known => succeed(word => isReadable(word, known)))
}

export function knownBy(taught: readonly TaughtEntry[], lexicon: Lexicon): Outcome<Known> {
  const outcomes = taught.map(entry => knownFrom(entry, lexicon))
  const problems = outcomes.flatMap(outcome => outcome.problems)
  const parts = outcomes.flatMap(outcome => (outcome.ok ? [outcome.value] : []))
  if (parts.length < outcomes.length) return failWith(problems)
  const all = (each: (part: Partial<Known>) => ReadonlySet<string> | undefined) =>
    new Set(parts.flatMap(part => [...(each(part) ?? [])]))
  const known: Known = {
    patterns: all(part => part.patterns),
    spellings: all(part => part.spellings),
    silentE: all(part => part.silentE),
    blends: all(part => part.blends),
  }
  return succeed(known, problems)
}

/** What a plan's own marks teach: this week's words are to show it. Letters that no rule reads are passed over, and marks on whole words. */
export function thisWeeks(
  marks: readonly { readonly target: MarkTarget; readonly place: Place }[],
  lexicon: Lexicon,
): readonly TaughtEntry[] {
  return marks.flatMap(({ target, place }): readonly TaughtEntry[] => {
    if (target.kind === 'pattern') return [{ kind: 'pattern', pattern: target.pattern, place }]
    if (target.kind === 'word') return []
    const entry: TaughtEntry = { kind: 'letters', letters: target.letters, place }
    return knownFrom(entry, lexicon).ok ? [entry] : []
  })
}

function isReadable(word: OfferedWord, known: Known): boolean {
  const { graphemes, findings } = word
  const knownBlends = findings.filter(isBlend).every(finding => isKnown(finding, known))
  if (!knownBlends || beginsStrangely(word)) return false
  return graphemes.every(graphemesKnown(word, known))
}

/** Whether the class knows what a grapheme of the word says in it. */
export function graphemesKnown({ graphemes, findings }: OfferedWord, known: Known) {
  const open = findings.filter(finding => isKnown(finding, known)).filter(opensLetters)
  return (grapheme: Grapheme): boolean =>
    isPlainConsonant(grapheme, graphemes[graphemes.indexOf(grapheme) + 1]) ||
    known.spellings.has(spellingKey(grapheme)) ||
    open.some(finding => stands(grapheme, finding))
}

/** Two consonants at the beginning that no blend names: kremlin, shtick. */
function beginsStrangely({ graphemes, findings }: OfferedWord): boolean {
  const [first, second] = graphemes
  if (first === undefined || second === undefined || !isConsonant(first) || !isConsonant(second)) return false
  return !findings.some(finding => finding.start === 0 && isBlend(finding))
}

function isConsonant({ sounds }: Grapheme): boolean {
  return sounds.length > 0 && !sounds.some(isVowelSound)
}

const blends: ReadonlySet<string> = new Set(
  'beginning-blend ending-blend three-letter-blend digraph-blend'.split(' '),
)

export function isBlend({ pattern }: OfferedFinding): boolean {
  return blends.has(pattern)
}

export function isKnown(finding: OfferedFinding, { patterns, silentE, blends: ownBlends }: Known): boolean {
  if (patterns.has(finding.pattern)) return true
  if (finding.pattern === 'silent-e') return silentE.has(finding.letters)
  return isBlend(finding) && ownBlends.has(finding.letters)
}

export function opensLetters({ pattern }: OfferedFinding): boolean {
  return !/^(compound|contraction|homophone)$|-syllable$/.test(pattern)
}

/** Whether the grapheme is one of the letters that the finding stands on: of a_e the a and the e, not what is between. */
export function stands({ letters, start }: Grapheme, finding: OfferedFinding): boolean {
  const end = start + letters.length
  if (!finding.letters.includes('_')) return start >= finding.start && end <= finding.end
  return start === finding.start || end === finding.end
}

function isPlainConsonant({ letters, sounds }: Grapheme, next: Grapheme | undefined): boolean {
  const said = sounds.join(' ')
  if (letters === 'n' && said === 'NG') return /^[KG]$/.test(next?.sounds[0] ?? '')
  return plainSounds[letters] === said || moreConsonants[letters]?.includes(said) === true
}

/** Consonants that stand in no blend, and the second sound of s. */
const moreConsonants: Readonly<Record<string, readonly string[]>> = {
  h: ['HH'],
  j: ['JH'],
  s: ['Z'],
  v: ['V'],
  x: ['K S'],
  y: ['Y'],
  z: ['Z'],
}

/** th is taught as one, ue with and without its glide, o the same in hot and off. */
function spellingKey({ letters, sounds }: Pick<Grapheme, 'letters' | 'sounds'>): string {
  const lower = letters.toLowerCase()
  const said = sounds.join(' ').replace(/^Y UW/, 'UW')
  if (lower === 'th') return `th ${said.replace('DH', 'TH')}`
  return `${lower} ${lower === 'o' ? said.replace('AO', 'AA') : said}`
}

function knownFrom(entry: TaughtEntry, lexicon: Lexicon): Outcome<Partial<Known>> {
  if (entry.kind === 'pattern') return succeed({ patterns: new Set([entry.pattern]) })
  const { letters, asIn } = entry
  if (asIn !== undefined) return fromExample(entry, asIn, lexicon)
  if (/^[aeiouy]_e$/.test(letters)) return succeed({ silentE: new Set([letters]) })
  const spelled = Object.hasOwn(shortSounds, letters) ? shortSounds[letters]! : usualSounds(letters)
  if (blendOf(letters) !== undefined) return succeed({ blends: new Set([letters]) })
  if (spelled.length > 0)
    return succeed({
      spellings: new Set(spelled.map(said => spellingKey({ letters, sounds: said.split(' ') }))),
    })
  const word = wordIn(lexicon, letters)
  if (word !== undefined) return succeed(shownBy(word, word.graphemes))
  const advice = nearestAdvice({
    name: letters,
    known: patternNames,
    where: '"oaktag list patterns" shows the patterns.',
    others: () => tradeWords('pattern'),
  })
  return failWith([
    errorAt(
      entry.place,
      `"${letters}" is no pattern, no letters of one sound or blend and no known word`,
      advice,
    ),
  ])
}

/** The sound that the letters spell most often in familiar words; a silent letter is no sound to teach. */
function usualSounds(letters: string): readonly string[] {
  const [usual] = learnedTable()
    .pairings.filter(pairing => pairing.letters === letters && pairing.sounds.length > 0)
    .toSorted((a, b) => a.cost - b.cost)
  return usual === undefined ? [] : [usual.sounds.join(' ')]
}

function fromExample(
  { letters, place }: Extract<TaughtEntry, { readonly kind: 'letters' }>,
  example: string,
  lexicon: Lexicon,
): Outcome<Partial<Known>> {
  const word = wordIn(lexicon, example)
  if (word === undefined)
    return failWith([
      errorAt(
        place,
        `"${example}" is not in the lexicon`,
        `Name a familiar word in which ${letters} stands.`,
      ),
    ])
  if (word.findings.some(finding => finding.pattern === 'silent-e' && finding.letters === letters))
    return succeed({ silentE: new Set([letters]) })
  const own = word.graphemes.filter(grapheme => grapheme.letters === letters)
  if (own.length > 0) return succeed({ spellings: new Set(own.map(spellingKey)) })
  if (word.findings.some(finding => isBlend(finding) && finding.letters === letters))
    return succeed({ blends: new Set([letters]) })
  const spelled = word.graphemes.map(grapheme => grapheme.letters).join(' ')
  return failWith([
    errorAt(
      place,
      `"${letters}" spells no sound of its own in "${example}"`,
      `That word is spelled ${spelled}: name letters of it, or another word.`,
    ),
  ])
}

function shownBy({ findings }: OfferedWord, graphemes: readonly Grapheme[]): Partial<Known> {
  const letters = (those: readonly OfferedFinding[]) => new Set(those.map(finding => finding.letters))
  return {
    spellings: new Set(graphemes.filter(({ sounds }) => sounds.length > 0).map(spellingKey)),
    silentE: letters(findings.filter(({ pattern }) => pattern === 'silent-e')),
    blends: letters(findings.filter(isBlend)),
  }
}

function wordIn(lexicon: Lexicon, text: string): OfferedWord | undefined {
  const entry = lexicon.lookUp(text)
  if (entry === undefined || entry.pronunciations.length === 0) return undefined
  const studied = studyWord({ text, place: { file: 'lexicon' }, overrides: {} }, lexicon)
  return studied.ok ? offeredWord(studied.value, entry.familiarity) : undefined
}
