import { hash } from 'node:crypto'
import { type Box, moveBox } from '../../geometry.js'
import { keptOfLate } from '../../kept-of-late.js'
import { succeed } from '../../outcomes.js'
import type { Contrast } from '../../plan/plan.js'
import { type Outcome, withoutPlaces } from '../../problems.js'
import { recolourer } from '../art/recolour.js'
import type { PlacedArt, PlacedMark } from '../piece.js'
import { wordRules } from '../text/type-scale.js'
import type { Typeface } from '../typeface/typeface.js'
import { type CornerTags, drawCornerTags } from '../word/corner-tags.js'
import type { Fit } from '../word/fit-words.js'
import { drawWord, type WordArt } from '../word/word-art.js'
import type { Face, WordSlot } from './face.js'
import { textDrawer } from './face-texts.js'
import {
  cornerTagsOf,
  type FaceFitting,
  type FittedFace,
  type FittedFaces,
  fitFaces,
  type GroupFit,
  slotBox,
} from './fit-faces.js'
import { levelWithWords } from './level-with-words.js'
import { type SlotWord, slotWordFinder } from './slot-words.js'
import { type WidenedWord, widenedWords } from './widened-words.js'

export type { GroupFit } from './fit-faces.js'
export type { WidenedWord } from './widened-words.js'

export interface FaceDrawing extends FaceFitting {
  /** Ink and ground; black on white where left out. */
  readonly contrast?: Contrast | undefined
  /** Whether each face, once drawn, is held and given again. */
  readonly holdsDrawn?: boolean
}

/** A face drawn: its art in paint order, its marks in the face's own coordinates. */
export interface DrawnFace<F extends Face> {
  readonly face: F
  readonly art: readonly PlacedArt[]
  readonly marks: readonly PlacedMark[]
  readonly mainWord?: { readonly sizeMm: number; readonly xHeightMm: number }
}

export interface DrawnFaces<F extends Face> {
  readonly faces: readonly DrawnFace<F>[]
  readonly fits: readonly GroupFit[]
  /** Words whose letters were spread to make room for an outline, and by how much, in the order of the faces. */
  readonly widened: readonly WidenedWord[]
}

/**
 * Draws the faces of one set: each template laid out once, one size for all words of a size group, each word
 * drawn once however often it stands.
 */
export async function drawFaces<F extends Face>(
  faces: readonly F[],
  drawing: FaceDrawing,
): Promise<Outcome<DrawnFaces<F>>> {
  const fitted = await fitFaces(faces, drawing)
  if (!fitted.ok) return fitted
  return succeed(drawFitted(fitted.value, drawing))
}

/** The same for faces whose sizes are found already. */
export function drawFitted<F extends Face>(fitted: FittedFaces<F>, drawing: FaceDrawing): DrawnFaces<F> {
  const { faces, fits, widened, draw } = facesToDraw(fitted, drawing)
  return { faces: faces.map((_, index) => draw(index)), fits, widened }
}

/** Faces whose sizes are found, to be drawn one by one. */
export interface FacesToDraw<F extends Face> extends Omit<DrawnFaces<F>, 'faces'> {
  readonly faces: readonly F[]
  /** The face with this index; what is drawn on it is shared with the faces drawn of late. */
  readonly draw: (index: number) => DrawnFace<F>
}

export function facesToDraw<F extends Face>(fitted: FittedFaces<F>, drawing: FaceDrawing): FacesToDraw<F> {
  const drawFace = faceDrawer(fitted, drawing)
  const draw = (index: number) => drawFace(fitted.faces[index]!)
  return {
    faces: fitted.faces.map(({ face }) => face),
    fits: [...fitted.fits.values()],
    widened: widenedWords(fitted, drawing),
    draw: drawing.holdsDrawn === true ? heldOnceMade(draw) : draw,
  }
}

function heldOnceMade<T>(make: (index: number) => T): (index: number) => T {
  const made: T[] = []
  return index => {
    const value = made[index] ?? make(index)
    made[index] = value
    return value
  }
}

function faceDrawer<F extends Face>(
  { fits }: FittedFaces<F>,
  drawing: FaceDrawing,
): (face: FittedFace<F>) => DrawnFace<F> {
  const drawn = wordDrawer(drawing)
  const tagsFor = cornerDrawer(drawing)
  const drawText = textDrawer(drawing.typeface)
  // Found again: the marks may have other colours than when the sizes were found.
  const show = slotWordFinder(drawing.marks)
  const recolour = recolourer(drawing.contrast)
  return ({ face, drawArt, slots, words, texts }) => {
    const placed: PlacedArt[] = [{ art: drawArt(), xMm: 0, yMm: 0 }]
    for (const [name, slot] of Object.entries(face.slots)) {
      const box = slotBox(slots, name)
      if (slot.kind === 'art' && slot.levelWith === undefined)
        placed.push({ art: slot.draw(box), xMm: box.xMm, yMm: box.yMm })
    }
    placed.push(...texts.map(drawText))
    const marks: PlacedMark[] = []
    const baselines = new Map<string, number>()
    let mainWord: DrawnFace<F>['mainWord']
    for (const { name, slot, box } of words) {
      const shown = show(slot)
      const fit = fits.get(slot.sizeGroup)!
      const word = drawn(shown, fit.sizeMm)
      const at = placeWord(word, fit, slot, box)
      placed.push({ art: word.art, ...at })
      baselines.set(name, at.yMm + word.baselineMm)
      marks.push(...word.marks.map(mark => ({ ...mark, ...moveBox(mark, at.xMm, at.yMm) })))
      const corner = tagsFor(shown, slot, box)
      if (corner !== undefined) {
        const tagsAt = placeCorner(corner, slot, box, { ...at, widthMm: word.art.widthMm })
        placed.push({ art: corner.art, ...tagsAt })
        marks.push(...corner.marks.map(mark => ({ ...mark, ...moveBox(mark, tagsAt.xMm, tagsAt.yMm) })))
      }
      if (slot.sizeGroup === 'main') mainWord = { sizeMm: fit.sizeMm, xHeightMm: word.xHeightMm }
    }
    placed.push(...levelWithWords({ face, slots, baselines, typeface: drawing.typeface }))
    const seen = placed.filter(({ art: { shapes, text } }) => shapes.length + text.length > 0)
    return { face, art: recolour(seen, face), marks, ...(mainWord === undefined ? {} : { mainWord }) }
  }
}

/** How many words of a typeface are held drawn at least, a few kilobytes each: a week's set has fewer. */
const WORDS_HELD = 500

const wordsDrawn = new WeakMap<Typeface, (key: string, make: () => WordArt) => WordArt>()

/**
 * Draws a word once and gives the same art whenever it stands again in the same size, in this set or in another, and when
 * the plan is made again by a program that holds it open.
 */
function wordDrawer({ typeface, type }: FaceDrawing) {
  const kept = wordsDrawn.get(typeface) ?? keptOfLate(WORDS_HELD)
  wordsDrawn.set(typeface, kept)
  const rules = wordRules(type)
  const keys = new Map<string, string>()
  return ({ word, spans, syllableBreaks, key }: SlotWord, sizeMm: number): WordArt => {
    // What its own key says in short, told in full, which is some thousand signs: as a digest it is soon looked up.
    const shown =
      keys.get(key) ??
      hash('sha1', JSON.stringify([word, spans, syllableBreaks, rules], withoutPlaces), 'base64url')
    keys.set(key, shown)
    return kept(`${shown} ${sizeMm}`, () =>
      drawWord({ typeface, word, spans, syllableBreaks, sizeMm, ...rules }),
    )
  }
}

/** How many words have their tags held at least. */
const TAGS_HELD = 150

/** Draws the tags in a word's corner once for all slots alike. */
function cornerDrawer(drawing: FaceDrawing) {
  const known = keptOfLate<string, CornerTags | undefined>(TAGS_HELD)
  return (shown: SlotWord, slot: WordSlot, box: Box): CornerTags | undefined => {
    const roomHeightMm = box.heightMm - 2 * (slot.paddingAboveMm ?? slot.paddingMm)
    const name = `${shown.key} ${slot.align} ${roomHeightMm.toFixed(2)}`
    return known(name, () => drawCornerTags(cornerTagsOf(shown, slot, roomHeightMm, drawing)))
  }
}

/** In the upper right corner of the slot; beside a word that stands at the left, or has much room, level with the top of its ink. */
function placeCorner(
  { art }: CornerTags,
  { align, tagsBeside, paddingMm, paddingAboveMm = paddingMm }: WordSlot,
  box: Box,
  word: { readonly xMm: number; readonly yMm: number; readonly widthMm: number },
): { readonly xMm: number; readonly yMm: number } {
  const rightMm = box.xMm + box.widthMm - paddingMm - art.widthMm
  if (align === 'centre' && tagsBeside !== true) return { xMm: rightMm, yMm: box.yMm + paddingAboveMm }
  const besideMm = tagsBeside === true ? Math.max(BESIDE_MM, art.heightMm / 2) : BESIDE_MM
  return { xMm: Math.min(rightMm, word.xMm + word.widthMm + besideMm), yMm: word.yMm }
}

/** Between a word in a list and its tags. */
const BESIDE_MM = 1.2

/**
 * Centred by its letters (or set to the left), on a baseline that all words of the set share: their letters, not
 * what hangs below them, stand in the middle as far as there is room.
 */
function placeWord(word: WordArt, fit: Fit, slot: WordSlot, box: Box): { xMm: number; yMm: number } {
  const { letters, aboveMm, belowMm } = fit
  const { paddingMm, paddingAboveMm = paddingMm } = slot
  const middleMm = box.yMm + box.heightMm / 2 + (slot.loweredMm ?? 0)
  const wishedMm = middleMm + (letters.aboveMm - letters.belowMm) / 2
  const lowestMm = box.yMm + box.heightMm - paddingAboveMm - belowMm
  const baselineMm = Math.max(box.yMm + paddingAboveMm + aboveMm, Math.min(wishedMm, lowestMm))
  const leftMm = box.xMm + paddingMm
  const freeMm = box.widthMm - 2 * paddingMm - word.art.widthMm
  const letterShift = word.letterBox.xMm + word.letterBox.widthMm / 2 - word.art.widthMm / 2
  const xMm =
    slot.align === 'left' ? leftMm : leftMm + Math.min(freeMm, Math.max(0, freeMm / 2 - letterShift))
  return { xMm, yMm: baselineMm - word.baselineMm }
}
