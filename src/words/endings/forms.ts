/** The forms that a word takes by an ending, each with its rule: for a verb -s, -ed, -ing, for an adjective -er, -est. */

import type { Lexicon } from '../lexicon/entry.js'
import { lazily } from '../tables/installed-tables.js'
import type { Word } from '../word.js'
import { comparativeOf, superlativeOf } from './comparing.js'
import { irregularVerbs } from './irregular-verbs.js'
import { isCompared } from './is-compared.js'
import { type BuiltForm, ingFormOf, pastOf, sFormOf } from './verb-endings.js'

export interface WordForm extends BuiltForm {
  readonly ending: '-s' | '-ed' | '-ing' | '-er' | '-est'
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

/** None for a guess, for a word that has such an ending already, or for two words made shorter (can't). */
export function formsOf(word: Word, lexicon: Pick<Lexicon, 'lookUp'>): readonly WordForm[] {
  const { text, source, partsOfSpeech, partsOfSpeechGuessed, patterns, pronunciations } = word
  const base = text.toLowerCase()
  const isMade = patterns.some(({ pattern }) =>
    /^(?:ending-(?:s|es|ed|ing|er|est)|contraction)$/.test(pattern),
  )
  if (source === 'guess' || partsOfSpeechGuessed || isMade) return []
  if (noEndings.has(base) || irregularForms().has(base)) return []
  const [pronunciation] = pronunciations
  const question = { text, ...(pronunciation === undefined ? {} : { pronunciation }) }
  const verb = (): readonly WordForm[] => [
    { ending: '-s', ...sFormOf(question) },
    { ending: '-ed', ...plainForm(pastOf(question)) },
    { ending: '-ing', ...ingFormOf(question) },
  ]
  const adjective = (): readonly WordForm[] => {
    const [more, most] = [comparativeOf(question), superlativeOf(question)]
    const isKnown = ({ form: er }: BuiltForm, { form: est }: BuiltForm) =>
      isCompared({ word: base, er: er.toLowerCase(), est: est.toLowerCase() }, lexicon.lookUp)
    return more === null || most === null || !isKnown(more, most)
      ? []
      : [
          { ending: '-er', ...more },
          { ending: '-est', ...most },
        ]
  }
  return [
    ...(partsOfSpeech.includes('verb') ? verb() : []),
    ...(partsOfSpeech.includes('adjective') ? adjective() : []),
  ]
}

/** How -ed is said has its own finding. */
function plainForm({ form, rule, alternatives }: BuiltForm): BuiltForm {
  return { form, rule, ...(alternatives === undefined ? {} : { alternatives }) }
}
