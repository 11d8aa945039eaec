/** The forms that a word takes by an ending, each with its rule: for a verb -s, -ed, -ing, for an adjective -er, -est. */

import type { Lexicon } from '../lexicon/entry.js'
import type { Word } from '../word.js'
import { comparativeOf, superlativeOf } from './comparing.js'
import { isCompared } from './is-compared.js'
import type { BuiltForm } from './verb-endings.js'
import { formQuestion, takesEndings, verbFormsOf } from './verb-forms.js'

export interface WordForm extends BuiltForm {
  readonly ending: '-s' | '-ed' | '-ing' | '-er' | '-est'
}

/** None for a guess, for a word that has such an ending already, or for two words made shorter (can't). */
export function formsOf(word: Word, lexicon: Pick<Lexicon, 'lookUp'>): readonly WordForm[] {
  if (!takesEndings(word)) return []
  const base = word.text.toLowerCase()
  const question = formQuestion(word)
  const verb = verbFormsOf(word)
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
    ...(verb === undefined
      ? []
      : ([
          { ending: '-s', ...verb.s },
          { ending: '-ed', ...verb.past },
          { ending: '-ing', ...verb.ing },
        ] as const)),
    ...(word.partsOfSpeech.includes('adjective') ? adjective() : []),
  ]
}
