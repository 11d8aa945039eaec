import type { PathShape, PlacedWord } from '../piece.js'

/**
 * A line of text, one word or more. Its outline in one is put together each time somebody asks, and held by nobody: labels of a
 * thousand sheets are, and what draws lines takes them word by word.
 */
export function lineOfWords(words: readonly PlacedWord[], outline: () => string): PathShape {
  return {
    kind: 'path',
    get d() {
      return outline()
    },
    fill: words[0]!.outline.fill,
    words,
  }
}
