import type { Box, Size } from '../../geometry.js'
import { fail, failWith, succeed } from '../../outcomes.js'
import type { Outcome, Place } from '../../problems.js'
import type { StyledMark } from '../marks/styled-mark.js'
import { type TypeScale, wordRules } from '../text/type-scale.js'
import type { Typeface } from '../typeface/typeface.js'
import { type CornerTagRequest, cornerRoom } from '../word/corner-tags.js'
import {
  canFitWords,
  type Fit,
  type FitRequest,
  fitWords,
  largestForLetters,
  type NoFit,
  type WordInRoom,
} from '../word/fit-words.js'
import { type WordMeasurer, wordMeasurer } from '../word/word-measurer.js'
import type { Face, LaidOutFace, WordSlot } from './face.js'
import { type FoundText, findText, textOffFace } from './face-texts.js'
import { type FaceLayOut, faceLayouter } from './lay-out-face.js'
import { noFitProblem, noRoomProblem } from './size-problem.js'
import { type SlotWord, slotWordFinder } from './slot-words.js'

export interface FaceFitting {
  /** Keeps what it laid out; a new one where left out. */
  readonly layOut?: FaceLayOut
  /** Remembers what it measured; a new one where left out. */
  readonly measureWord?: WordMeasurer
  readonly typeface: Typeface
  readonly marks: readonly StyledMark[]
  readonly type: TypeScale
  /** Where the item stands in the plan. */
  readonly place: Place
  /** What the faces are; pieces of a sheet where left out. */
  readonly on?: 'piece' | 'board' | 'page'
  /** Tried only: where words do not fit, nobody asks which. */
  readonly untold?: true
}

/** How the words of one size group came out. */
export interface GroupFit extends Fit {
  readonly sizeGroup: string
}

/** A word's slot and the room it has. */
export interface FoundWord {
  readonly name: string
  readonly slot: WordSlot
  readonly box: Box
}

export interface FittedFace<F extends Face> extends LaidOutFace {
  readonly face: F
  readonly words: readonly FoundWord[]
  readonly texts: readonly FoundText[]
}

/** Faces laid out, and the size of each group of their words. */
export interface FittedFaces<F extends Face> {
  readonly faces: readonly FittedFace<F>[]
  readonly fits: ReadonlyMap<string, GroupFit>
}

/** No faces, for a set without backs. */
export const nothingFitted: FittedFaces<never> = { faces: [], fits: new Map() }

/**
 * Lays out the faces of one set and finds the sizes of their words; a word that does not fit its place is an error,
 * and so is a text for which its face has no room.
 */
export async function fitFaces<F extends Face>(
  faces: readonly F[],
  fitting: FaceFitting,
): Promise<Outcome<FittedFaces<F>>> {
  const layOut = fitting.layOut ?? faceLayouter().layOut
  // One after another: all at once would be no faster and would hold every face's workings in memory.
  const laidOut: LaidOutFace[] = []
  for (const face of faces) laidOut.push(await layOut(face, fitting.typeface))
  const fitted = faces.map((face, index): FittedFace<F> => {
    const { slots, text, drawArt } = laidOut[index]!
    const words: FoundWord[] = []
    const texts: FoundText[] = []
    for (const name in face.slots) {
      const slot = face.slots[name]!
      if (slot.kind === 'word') words.push({ name, slot, box: slotBox(slots, name) })
      else if (slot.kind === 'text' && slot.levelWith === undefined)
        texts.push(findText(slot, slotBox(slots, name), fitting.typeface))
    }
    // It is laid out by now, and the trees of thousands of cards take room.
    return { face: { ...face, tree: null }, text, slots, drawArt, words, texts }
  })
  const outcome = fitAgain(fitted, fitting)
  const [spilt] = fitted.flatMap(textOffFace)
  // A word too long for its card is the better thing to be told; where it is, other text seldom has room either.
  return outcome.ok && spilt !== undefined ? fail(noRoomProblem(spilt, fitting.place)) : outcome
}

/** The same faces, as they are laid out, with their words held to other sizes. */
function fitAgain<F extends Face>(
  faces: readonly FittedFace<F>[],
  fitting: FaceFitting,
): Outcome<FittedFaces<F>> {
  const found = faces.flatMap(({ words }) => words)
  const fits = fitGroups(found, fitting)
  return fits.ok ? succeed({ faces, fits: fits.value }) : fits
}

export function slotBox(slots: ReadonlyMap<string, Box>, name: string): Box {
  const box = slots.get(name)
  if (box === undefined) throw new Error(`a face fills the slot "${name}", which its tree does not have`)
  return box
}

/** Whether the words would fit the same faces, as they are laid out, at other sizes. */
export function canFitAgain<F extends Face>(faces: readonly FittedFace<F>[], fitting: FaceFitting): boolean {
  const found = faces.flatMap(({ words }) => words)
  return groupsToFit(found, fitting).every(({ request }) => canFitWords(request))
}

/** The size that words of a group could have at most if these faces were of another size: known before one is laid out. */
export function largestOnFaces<F extends Face>(
  faces: readonly FittedFace<F>[],
  sizeGroup: string,
  fitting: FaceFitting,
): (size: Size) => number {
  const found = faces.flatMap(({ words }) => words.filter(({ slot }) => slot.sizeGroup === sizeGroup))
  const [group] = groupsToFit(found, fitting)
  return size => (group === undefined ? Number.POSITIVE_INFINITY : largestForLetters(group.request, size))
}

function fitGroups(
  found: readonly FoundWord[],
  fitting: FaceFitting,
): Outcome<ReadonlyMap<string, GroupFit>> {
  const fits = new Map<string, GroupFit>()
  const failed: NoFit[] = []
  for (const { sizeGroup, request } of groupsToFit(found, fitting)) {
    const fit = fitWords(request)
    if (isFit(fit)) fits.set(sizeGroup, { ...fit, sizeGroup })
    else failed.push(fit)
  }
  if (failed.length === 0) return succeed(fits)
  return failWith(fitting.untold === true ? [] : failed.map(fit => noFitProblem(fit, fitting)))
}

interface GroupToFit {
  readonly sizeGroup: string
  readonly request: FitRequest
}

function groupsToFit(
  found: readonly FoundWord[],
  { marks, typeface, type, measureWord = wordMeasurer() }: FaceFitting,
): readonly GroupToFit[] {
  const show = slotWordFinder(marks)
  const inShort = shortened()
  return [...new Set(found.map(({ slot }) => slot.sizeGroup))].map(sizeGroup => {
    const words = new Map<string, WordInRoom>()
    const minimumMm = sizeGroup === 'main' ? type.mainMinimumMm : type.wordMinimumMm
    let maximumMm = type.wordMaximumMm
    for (const { slot, box } of found.filter(each => each.slot.sizeGroup === sizeGroup)) {
      maximumMm = Math.min(maximumMm, slot.maximumMm ?? maximumMm)
      const { paddingMm, paddingAboveMm = paddingMm } = slot
      const room = { widthMm: box.widthMm - 2 * paddingMm, heightMm: box.heightMm - 2 * paddingAboveMm }
      const shown = show(slot, slot.marked || slot.sizedAsMarked === true)
      const key = `${shown.key} ${inShort(room.widthMm)} ${inShort(room.heightMm)}`
      if (words.has(key)) continue
      const corner = cornerRoom(cornerTagsOf(shown, slot, room.heightMm, { typeface, type }))
      words.set(key, { ...shown, room, ...(corner === undefined ? {} : { corner }) })
    }
    const request: FitRequest = {
      measure: measureWord,
      typeface,
      words: [...words.values()],
      minimumMm,
      maximumMm: Math.max(maximumMm, minimumMm),
      ...wordRules(type),
    }
    return { sizeGroup, request }
  })
}

/** Lengths in hundredths of a millimetre: the cells of thirty boards have a few between them, and are hundreds. */
function shortened(): (mm: number) => string {
  const known = new Map<number, string>()
  return mm => {
    const text = known.get(mm) ?? mm.toFixed(2)
    known.set(mm, text)
    return text
  }
}

/** What stands in the corner of a word's slot. */
export function cornerTagsOf(
  { word, tags }: SlotWord,
  { align, tagsBeside }: WordSlot,
  roomHeightMm: number,
  { typeface, type }: Pick<FaceFitting, 'typeface' | 'type'>,
): CornerTagRequest {
  return { typeface, word, tags, align, tagsBeside, roomHeightMm, ...wordRules(type) }
}

function isFit(fit: Fit | NoFit): fit is Fit {
  return 'sizeMm' in fit
}
