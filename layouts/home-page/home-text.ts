/** What a page for home tells a parent, in our own words: nothing to log in to, no screen, a pencil and paper. */
import type { KeyEntry } from '../../src/pieces/marks/key-entries.js'
import type { Word } from '../../src/words/word.js'

export interface HomeIdea {
  readonly name: string
  readonly text: string
}

/** How to go about it, whatever the idea: our own judgement, no source. */
export const howToPractise: readonly string[] = [
  'Ten minutes a day are plenty. Stop while it is still fun.',
  'Read the words together first. Say a word slowly and listen for its sounds.',
  'If a word goes wrong, say what is right in it. Look at the word together, and let your child write it once more.',
]

/** Look, cover, write, check is common practice, no source; the rest is our own. */
export function homeIdeas(words: readonly Word[], entries: readonly KeyEntry[]): readonly HomeIdea[] {
  const [first] = words
  return [
    {
      name: 'Look, cover, write, check',
      text: 'Your child looks at a word, covers it, writes it and checks it. Five words are enough for one evening.',
    },
    hunt(entries),
    {
      name: 'Guess my word',
      text: `Say a sentence and leave a word out. Your child says which word is missing, and writes it. Then it is your child’s turn to leave out ${first === undefined || words.length === 1 ? 'the word' : `“${first.text}” or another word`}.`,
    },
  ]
}

/** With the first mark of the key that stands on letters, where there is one. */
function hunt(entries: readonly KeyEntry[]): HomeIdea {
  const name = 'Word hunt'
  const entry = entries.find(({ mark }) => mark.mark.target.kind !== 'word')
  if (entry === undefined)
    return {
      name,
      text: 'Look for the words of the list in a book, on a packet or on a sign. Your child keeps a list of where you found them.',
    }
  return {
    name,
    text: `Look in a book, on a packet or on a sign for more words like “${entry.examples[0]}” (${entry.label}). Your child writes them down and marks the letters.`,
  }
}
