import { type Box, moveBox } from '../geometry.js'
import type { Contrast } from '../plan/plan.js'
import type { Outcome, Place, Problem } from '../problems.js'
import type { Word } from '../words/word.js'
import type { Face, WordSlot } from './face.js'
import { type Fit, fitWords, type NoFit, type WordInRoom } from './fit-words.js'
import { faceLayouter } from './lay-out-face.js'
import { targetsOf } from './marks/find-targets.js'
import type { MarkSpan, StyledMark } from './marks/styled-mark.js'
import type { PlacedArt, PlacedMark } from './piece.js'
import { recolourer } from './recolour.js'
import { noFitProblem } from './size-problem.js'
import type { TypeScale } from './type-scale.js'
import type { Typeface } from './typeface/typeface.js'
import { drawWord, type WordArt } from './word-art.js'

export interface FaceDrawing {
  readonly typeface: Typeface
  readonly marks: readonly StyledMark[]
  readonly type: TypeScale
  /** Where the item stands in the plan. */
  readonly place: Place
  /** Ink and ground; black on white where left out. */
  readonly contrast?: Contrast | undefined
}

/** A face drawn: its art in paint order, its marks in the face's own coordinates. */
export interface DrawnFace<F extends Face> {
  readonly face: F
  readonly art: readonly PlacedArt[]
  readonly marks: readonly PlacedMark[]
  readonly mainWord?: { readonly sizeMm: number; readonly xHeightMm: number }
}

/** How the words of one size group came out. */
export interface GroupFit extends Fit {
  readonly sizeGroup: string
}

export interface DrawnFaces<F extends Face> {
  readonly faces: readonly DrawnFace<F>[]
  readonly fits: readonly GroupFit[]
}

interface FoundSlot {
  readonly slot: WordSlot
  readonly box: Box
}

/**
 * Draws the faces of one set: each template laid out once, one size for all words of a size group, each word
 * drawn once however often it stands.
 */
export async function drawFaces<F extends Face>(
  faces: readonly F[],
  drawing: FaceDrawing,
): Promise<Outcome<DrawnFaces<F>>> {
  const layOut = faceLayouter(fontsOf(drawing.typeface))
  const laidOut = await Promise.all(faces.map(layOut))
  const wordSlots = faces.map((face, index) =>
    Object.entries(face.slots).flatMap(([name, slot]): FoundSlot[] =>
      slot.kind === 'word' ? [{ slot, box: slotBox(laidOut[index]!.slots, name) }] : [],
    ),
  )
  const spansOf = spanFinder(drawing.marks)
  const fits = fitGroups(wordSlots.flat(), spansOf, drawing)
  if (!fits.ok) return fits
  const drawn = wordDrawer(drawing)
  const recolour = recolourer(drawing.contrast)
  return {
    ok: true,
    problems: [],
    value: {
      fits: [...fits.value.values()],
      faces: faces.map((face, index) => {
        const { art, slots } = laidOut[index]!
        const placed: PlacedArt[] = [{ art, xMm: 0, yMm: 0 }]
        for (const [name, slot] of Object.entries(face.slots)) {
          const box = slotBox(slots, name)
          if (slot.kind === 'art') placed.push({ art: slot.draw(box), xMm: box.xMm, yMm: box.yMm })
        }
        const marks: PlacedMark[] = []
        let mainWord: DrawnFace<F>['mainWord']
        for (const { slot, box } of wordSlots[index]!) {
          const fit = fits.value.get(slot.sizeGroup)!
          const word = drawn(slot.word, spansOf(slot), fit.sizeMm)
          const at = placeWord(word, fit, slot, box)
          placed.push({ art: word.art, ...at })
          marks.push(...word.marks.map(mark => ({ ...mark, ...moveBox(mark, at.xMm, at.yMm) })))
          if (slot.sizeGroup === 'main') mainWord = { sizeMm: fit.sizeMm, xHeightMm: word.xHeightMm }
        }
        return { face, art: recolour(placed, face), marks, ...(mainWord === undefined ? {} : { mainWord }) }
      }),
    },
  }
}

function slotBox(slots: ReadonlyMap<string, Box>, name: string): Box {
  const box = slots.get(name)
  if (box === undefined) throw new Error(`a face fills the slot "${name}", which its tree does not have`)
  return box
}

function fontsOf({ family, bytes }: Typeface) {
  return [
    { name: family, bytes: bytes.regular, weight: 400 as const },
    ...(bytes.bold === undefined ? [] : [{ name: family, bytes: bytes.bold, weight: 700 as const }]),
  ]
}

/** The marks of a slot's word; none where the slot shows it unmarked. */
function spanFinder(marks: readonly StyledMark[]): (slot: WordSlot) => readonly MarkSpan[] {
  const found = new Map<Word, readonly MarkSpan[]>()
  return ({ word, marked }) => {
    if (!marked) return []
    const spans = found.get(word) ?? targetsOf(word, marks)
    found.set(word, spans)
    return spans
  }
}

function fitGroups(
  found: readonly FoundSlot[],
  spansOf: (slot: WordSlot) => readonly MarkSpan[],
  { typeface, type, place }: FaceDrawing,
): Outcome<ReadonlyMap<string, GroupFit>> {
  const fits = new Map<string, GroupFit>()
  const problems: Problem[] = []
  for (const sizeGroup of new Set(found.map(({ slot }) => slot.sizeGroup))) {
    const words = new Map<string, WordInRoom>()
    let maximumMm = type.wordMaximumMm
    for (const { slot, box } of found.filter(each => each.slot.sizeGroup === sizeGroup)) {
      maximumMm = Math.min(maximumMm, slot.maximumMm ?? maximumMm)
      const room = { widthMm: box.widthMm - 2 * slot.paddingMm, heightMm: box.heightMm - 2 * slot.paddingMm }
      const key = `${slot.word.text} ${slot.marked} ${room.widthMm.toFixed(2)} ${room.heightMm.toFixed(2)}`
      if (!words.has(key))
        words.set(key, {
          word: slot.word.text,
          spans: spansOf({ ...slot, marked: slot.marked || slot.sizedAsMarked === true }),
          room,
        })
    }
    const fit = fitWords({
      typeface,
      large: type.large,
      words: [...words.values()],
      minimumMm: type.wordMinimumMm,
      maximumMm: Math.max(maximumMm, type.wordMinimumMm),
    })
    if (isFit(fit)) fits.set(sizeGroup, { ...fit, sizeGroup })
    else problems.push(noFitProblem(fit, type, place))
  }
  return problems.length > 0 ? { ok: false, problems } : { ok: true, value: fits, problems: [] }
}

function isFit(fit: Fit | NoFit): fit is Fit {
  return 'sizeMm' in fit
}

/** Draws a word once and gives the same art whenever it stands again in the same size. */
function wordDrawer({ typeface, type }: FaceDrawing) {
  const known = new Map<string, WordArt>()
  return (word: Word, spans: readonly MarkSpan[], sizeMm: number): WordArt => {
    const key = `${word.text} ${sizeMm} ${spans.map(span => `${span.mark.index}:${span.ranges[0].start}`).join()}`
    const art = known.get(key) ?? drawWord({ typeface, word: word.text, spans, sizeMm, large: type.large })
    known.set(key, art)
    return art
  }
}

/** Centred by its letters (or set to the left), on a baseline that all words of the set share. */
function placeWord(word: WordArt, fit: Fit, slot: WordSlot, box: Box): { xMm: number; yMm: number } {
  const bodyMm = fit.aboveMm + fit.belowMm
  const baselineMm = box.yMm + (box.heightMm - bodyMm) / 2 + fit.aboveMm
  const leftMm = box.xMm + slot.paddingMm
  const freeMm = box.widthMm - 2 * slot.paddingMm - word.art.widthMm
  const letterShift = word.letterBox.xMm + word.letterBox.widthMm / 2 - word.art.widthMm / 2
  const xMm =
    slot.align === 'left' ? leftMm : leftMm + Math.min(freeMm, Math.max(0, freeMm / 2 - letterShift))
  return { xMm, yMm: baselineMm - word.baselineMm }
}
