/** Short glosses as drafts for a clue, the familiar sense first. Build time. Source: WordNet 3.1. */
import { type OpenClass, readSenses, readSynsets, type WordNetSense } from '../parts-of-speech/wordnet.js'
import { lazily, rowsOf, tablesBeginning, wordsOf } from '../tables/installed-tables.js'
import type { PartOfSpeech } from '../word.js'
import { draftFrom } from './draft.js'

export interface SensesTask {
  /** Lower case; the most familiar 15,000 or so, to keep the lexicon small. */
  readonly words: Iterable<string>
  /** The word's parts of speech, the commonest first: its senses come in that order. */
  readonly partsOfSpeech: (word: string) => readonly PartOfSpeech[]
  /** Occurrences in a corpus of speech: a gloss in rare words helps no child. */
  readonly familiarity: (word: string) => number
  readonly isUnfit: (word: string) => boolean
}

/** Our own drafts by word, of every table of them. */
export const plainDrafts: () => ReadonlyMap<string, string> = lazily(
  () =>
    new Map(
      tablesBeginning('senses/drafts-')
        .flatMap(rowsOf)
        .map(([word = '', draft = '']) => [word, draft]),
    ),
)

const mostDrafts = 3
/** Senses further down are odd ones: fish as a sign of the zodiac. */
const lowestRank = 4

/** At most three drafts a word; none for a word unfit for children. */
export function gatherSenses(task: SensesTask): Map<string, readonly string[]> {
  const senses = readSenses()
  const wanted = [...task.words].filter(word => !task.isUnfit(word))
  const glosses = readGlosses(wanted.flatMap(word => senses.get(word) ?? []))
  const found = new Map<string, readonly string[]>()
  for (const word of wanted) {
    const plain = plainDrafts().get(word)
    const drafts = new Set<string>(plain === undefined ? [] : [plain])
    const parts = task.partsOfSpeech(word)
    const listed = isGrammar(word, parts) ? [] : (senses.get(word) ?? [])
    for (const sense of inOrderOfUse(listed, parts)) {
      if (drafts.size === mostDrafts) break
      const gloss = glosses.get(keyOf(sense.partOfSpeech, sense.offset))
      const draft = gloss === undefined ? undefined : draftFrom({ word, gloss, ...task })
      if (draft !== undefined) drafts.add(draft)
    }
    if (drafts.size > 0) found.set(word, [...drafts])
  }
  return found
}

/** Verbs that help another, and words that join, point or count: their dictionary senses are no clue to a child. */
function isGrammar(word: string, parts: readonly PartOfSpeech[]): boolean {
  const [first] = parts
  return helpingVerbs().has(word) || (first !== undefined && !openClasses.has(first))
}

const helpingVerbs = lazily(() => new Set(wordsOf('senses/helping-verbs')))
const openClasses: ReadonlySet<PartOfSpeech> = new Set(['noun', 'verb', 'adjective', 'adverb'])

/** The commonest part of speech first, within it as often as the tagged texts met the sense. */
function inOrderOfUse(
  senses: readonly WordNetSense[],
  parts: readonly PartOfSpeech[],
): readonly WordNetSense[] {
  const place = (sense: WordNetSense) => {
    const index = parts.indexOf(sense.partOfSpeech)
    return index < 0 ? parts.length : index
  }
  return senses
    .filter(sense => parts.length === 0 || parts.includes(sense.partOfSpeech))
    .filter(sense => sense.rank === 1 || (sense.count > 0 && sense.rank <= lowestRank))
    .toSorted((first, second) => place(first) - place(second) || first.rank - second.rank)
}

function readGlosses(senses: readonly WordNetSense[]): ReadonlyMap<string, string> {
  const wanted = new Set(senses.map(sense => keyOf(sense.partOfSpeech, sense.offset)))
  const glosses = new Map<string, string>()
  for (const partOfSpeech of ['noun', 'verb', 'adjective', 'adverb'] satisfies OpenClass[])
    readSynsets(partOfSpeech, (offset, { gloss, isInstance }) => {
      const key = keyOf(partOfSpeech, offset)
      if (wanted.has(key) && !isInstance) glosses.set(key, gloss)
    })
  return glosses
}

function keyOf(partOfSpeech: OpenClass, offset: number): string {
  return `${partOfSpeech} ${offset}`
}
