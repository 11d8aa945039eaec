import { wordRules } from '../text/type-scale.js'
import { wordMeasurer } from '../word/word-measurer.js'
import type { Face } from './face.js'
import type { FaceFitting, FittedFaces } from './fit-faces.js'
import { slotWordFinder } from './slot-words.js'

/** A word whose letters are spread to make room for an outline, and by how much. */
export interface WidenedWord {
  readonly word: string
  readonly addedMm: number
}

/**
 * The words that marks spread, in the order of the faces, known without drawing any. Nothing but a mark opens a word, so
 * the others are not even measured.
 */
export function widenedWords<F extends Face>(
  { faces, fits }: FittedFaces<F>,
  { marks, typeface, type, measureWord = wordMeasurer() }: FaceFitting,
): readonly WidenedWord[] {
  const show = slotWordFinder(marks)
  const added = new Map<string, { readonly word: string; readonly addedMm: number }>()
  for (const { words } of faces)
    for (const { slot } of words) {
      const { word, spans, syllableBreaks, key } = show(slot)
      const { sizeMm } = fits.get(slot.sizeGroup)!
      const name = `${key} ${sizeMm}`
      if (spans.length === 0 || added.has(name)) continue
      const { at } = measureWord({ typeface, word, spans, syllableBreaks, ...wordRules(type) })
      added.set(name, { word, addedMm: at(sizeMm).widenedEm * sizeMm })
    }
  const widened = [...added.values()].filter(({ addedMm }) => addedMm > 0)
  return [...new Map(widened.map(each => [each.word, each])).values()]
}
