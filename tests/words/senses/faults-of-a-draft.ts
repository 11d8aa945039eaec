/** What keeps a draft of a clue from a card: measured, so that nobody has to read four thousand lines to find it. */
import { join } from '../../../src/words/endings/adding.js'
import { comparativeOf, superlativeOf } from '../../../src/words/endings/comparing.js'
import { pluralOf } from '../../../src/words/endings/plural.js'
import { endingOf } from '../../../src/words/endings/recognise.js'
import { ingFormOf, pastOf, sFormOf } from '../../../src/words/endings/verb-endings.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'

/** So that it fits on a card in two lines. */
const longestDraft = 60
/** Occurrences of a word, or of the word it is a form of, in 51 million words of speech: one in a million. */
const leastFamiliarInDraft = 50
/** A half of a compound is a word that is met on its own. */
const leastFamiliarHalf = 100

const lexicon = openLexicon()
const familiarity = (word: string) => lexicon.lookUp(word)?.familiarity ?? 0

export function faultsOf(word: string, draft: string): readonly string[] {
  const words = draft.toLowerCase().match(/[a-z']+/g) ?? []
  const plain = words.map(one => one.replace(/'s?$/, ''))
  const halves = halvesOf(word)
  return [
    ...(draft.length > longestDraft ? [`${draft.length} characters`] : []),
    ...(/[.;]$/.test(draft) ? ['a stop at the end'] : []),
    ...plain.filter(isRare).map(one => `rare: ${one}`),
    ...plain.filter(one => lexicon.lookUp(one)?.unfit).map(one => `unfit for children: ${one}`),
    ...plain.filter(one => lexicon.lookUp(one)?.notReadAloud).map(one => `not read aloud: ${one}`),
    ...plain.filter(one => isFormOf(one, word)).map(one => `the word or its form: ${one}`),
    ...plain
      .filter(one => halves.some(half => one === half || formsOf(half).has(one)))
      .map(one => `a half of it: ${one}`),
  ]
}

function isRare(word: string): boolean {
  const base = endingOf({ text: word, isWord: text => familiarity(text) > 0 })?.base ?? word
  return Math.max(familiarity(word), familiarity(base)) < leastFamiliarInDraft
}

/** Either may be made from the other, or begins as the other does: paint, painter, painting; music, musician. */
function isFormOf(one: string, word: string): boolean {
  if (one === word || formsOf(word).has(one) || formsOf(one).has(word)) return true
  return Math.min(one.length, word.length) >= 4 && (one.startsWith(word) || word.startsWith(one))
}

const made = new Map<string, ReadonlySet<string>>()

function formsOf(text: string): ReadonlySet<string> {
  const known = made.get(text)
  if (known !== undefined) return known
  const past = pastOf({ text })
  const forms = new Set(
    [
      sFormOf({ text }).form,
      past.form,
      ...(past.alternatives ?? []),
      ingFormOf({ text }).form,
      pluralOf({ text, partsOfSpeech: ['noun'] })?.form,
      comparativeOf({ text })?.form,
      superlativeOf({ text })?.form,
      ...['er', 'y'].map(ending => join(text, ending).form),
      `${text}ly`,
    ].filter(form => form !== undefined),
  )
  made.set(text, forms)
  return forms
}

/** Of every place where two familiar words could meet, heard or not: cup and board, and also car and pet. */
function halvesOf(word: string): readonly string[] {
  const splits = [...word.slice(5)].map((_, index) => [word.slice(0, index + 3), word.slice(index + 3)])
  return splits.filter(parts => parts.every(part => familiarity(part) >= leastFamiliarHalf)).flat()
}
