/** What stands for a word on another card: its plural, its clue, how many sounds it has. */
import { verbFormsOf } from '../../words/endings/verb-forms.js'
import type { Word } from '../../words/word.js'

export const promptKinds = ['plural', 'clue', 'past form', 'ing form', 'sounds'] as const
export type PromptKind = (typeof promptKinds)[number]

/** Undefined where the word has none. */
export type PromptOf = (word: Word, kind: PromptKind) => string | undefined

/**
 * A noun that is not counted (mud) has a plural in the dictionary alone; nearly every noun can be a verb (to gull), and a
 * form that nobody meets is none for children.
 * @param isKnown whether children may meet the text in books
 */
export function promptsWith(isKnown: (text: string) => boolean): PromptOf {
  const met = (word: Word, form: string | undefined) =>
    form !== undefined && (word.partsOfSpeech[0] === 'verb' || isKnown(form.toLowerCase())) ? form : undefined
  return (word, kind) => {
    switch (kind) {
      case 'plural':
        return word.plural?.rule.startsWith('not counted') ? undefined : word.plural?.form
      case 'clue':
        return word.clue
      case 'past form':
        return met(word, verbFormsOf(word)?.past.form)
      case 'ing form':
        return met(word, verbFormsOf(word)?.ing.form)
      case 'sounds':
        return word.soundCount === 1 ? '1 sound' : `${word.soundCount} sounds`
    }
  }
}

/** Whether a prompt of the kind is one word, written as words are. */
export function isWord(kind: PromptKind): boolean {
  return kind !== 'clue' && kind !== 'sounds'
}

/** Words by prompt, where two words or more share one; such a prompt has no single answer. */
export function sharedPrompts(
  words: readonly Word[],
  kind: PromptKind,
  promptOf: PromptOf,
): ReadonlyMap<string, readonly Word[]> {
  const byPrompt = new Map<string, Word[]>()
  for (const word of words) {
    const prompt = promptOf(word, kind)
    if (prompt !== undefined) byPrompt.set(prompt, [...(byPrompt.get(prompt) ?? []), word])
  }
  return new Map([...byPrompt].filter(([, sharers]) => sharers.length > 1))
}
