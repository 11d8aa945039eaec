import type { LayoutRequest } from '../../../layouts/layout.js'
import { type KeyEntry, keyEntries } from '../../pieces/marks/key-entries.js'
import { soundKeyEntries } from '../../pieces/marks/sound-key.js'

/** The lines of an item's key: what its words show, and nothing else. */
export function itemKey({ shownWithWords, marked, words, marks }: LayoutRequest): readonly KeyEntry[] {
  const own = marked ? keyEntries(words, marks) : []
  const { soundMarks } = shownWithWords
  if (soundMarks === undefined) return own
  return [...own, ...soundKeyEntries(words, soundMarks, new Set(own.map(({ letters }) => letters)))]
}
