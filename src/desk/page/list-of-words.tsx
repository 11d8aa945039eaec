import type { ToldEntry } from '../messages.js'
import { Listed, type ListPlace } from './listed.js'
import { NewWord, Paste } from './new-words.js'
import { WordRow } from './word-row.js'

/** The server studies no more of them. */
const mostShown = 300

export interface ListOfWordsProps {
  readonly place: ListPlace
  /** Beside its entries. */
  readonly words: readonly ToldEntry[]
  /** Whose words they are, where it is not the class: `Otters`. */
  readonly whose?: string
}

/** A list of words to type in, each with its study beside it. */
export function ListOfWords({ place, words, whose = '' }: ListOfWordsProps) {
  const { entries } = place
  return (
    <Listed.Provider value={place}>
      <ol class="words">
        {entries.slice(0, mostShown).map((entry, index) => (
          // An entry is its place in the list: a word that is being typed must stay the same field.
          <WordRow key={index} entry={entry} index={index} told={words[index] ?? null} whose={whose} />
        ))}
        <NewWord whose={whose} />
      </ol>
      {entries.length > mostShown && (
        <p>
          The list has {entries.length} words; the first {mostShown} are shown here, all of them are in the
          file.
        </p>
      )}
      <Paste whose={whose} />
    </Listed.Provider>
  )
}
