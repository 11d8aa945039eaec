/** The forms that a verb takes by an ending: -s, -ed, -ing. */
import { lazily } from '../../lazily.js'
import type { Word } from '../word.js'
import { irregularVerbs } from './irregular-verbs.js'
import { type BuiltForm, ingFormOf, pastOf, sFormOf, type VerbQuestion } from './verb-endings.js'

export interface VerbForms {
  readonly s: BuiltForm
  readonly past: BuiltForm
  readonly ing: BuiltForm
}

/** Helping verbs and forms of be take none of the endings, or not by a rule. */
const noEndings = new Set(
  'am are be been being can could is may might must ought shall should was were will would'.split(' '),
)

const irregularForms = lazily(
  () =>
    new Set(
      [...irregularVerbs()].flatMap(([base, { past, participle }]) =>
        [...past, ...participle].filter(form => form !== base && !irregularVerbs().has(form)),
      ),
    ),
)

/** False for a guess, for a word that has an ending already, or for two words made shorter (can't). */
export function takesEndings({ text, source, partsOfSpeechGuessed, patterns }: Word): boolean {
  const base = text.toLowerCase()
  const isMade = patterns.some(({ pattern }) =>
    /^(?:ending-(?:s|es|ed|ing|er|est)|contraction)$/.test(pattern),
  )
  if (source === 'guess' || partsOfSpeechGuessed || isMade) return false
  return !noEndings.has(base) && !irregularForms().has(base)
}

/** What the ending rules ask of a word. */
export function formQuestion({ text, pronunciations: [pronunciation] }: Word): VerbQuestion {
  return { text, ...(pronunciation === undefined ? {} : { pronunciation }) }
}

/** Undefined for a word that is no verb, or takes no ending. */
export function verbFormsOf(word: Word): VerbForms | undefined {
  if (!word.partsOfSpeech.includes('verb') || !takesEndings(word)) return undefined
  const question = formQuestion(word)
  return { s: sFormOf(question), past: plainForm(pastOf(question)), ing: ingFormOf(question) }
}

/** How -ed is said has its own finding. */
function plainForm({ form, rule, alternatives }: BuiltForm): BuiltForm {
  return { form, rule, ...(alternatives === undefined ? {} : { alternatives }) }
}
