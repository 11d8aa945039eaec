import type { DeskWord } from '../messages.js'

/** The word as it is printed, with the plan's marks. */
export function WordPicture({ word }: { readonly word: DeskWord }) {
  return word.picture === undefined ? (
    <span class="plain-word">{word.text}</span>
  ) : (
    <img class="word" src={word.picture} alt={word.text} />
  )
}
