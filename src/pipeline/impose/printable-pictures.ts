import { type DecodedPicture, decodePicture, finenessFor } from '../../files/page/decode-picture.js'
import { alikeInSize, printablePicture } from '../../files/page/picture.js'
import { drawnSheet, type PlacedItem } from '../../files/printed-plan.js'
import { failWith, succeed } from '../../outcomes.js'
import type { Art, ImageShape, Piece, PlacedArt, Shape } from '../../pieces/piece.js'
import { errorAt, type Outcome, type Problem, type Success } from '../../problems.js'
import { asToDraw, type Sheet } from '../../sheets/sheet.js'
import type { PreparedItem } from '../deal/prepare-item.js'
import { byIdentity, type KeptStore } from '../kept-store.js'

export interface PicturePreparing {
  /** Pictures made ready for printing before, by their bytes and the size of their box. */
  readonly pictures: KeptStore<ImageShape>
  /** Pictures as pixels without their white edges, by their bytes and how fine they are kept: each is decoded once. */
  readonly decoded: KeptStore<DecodedPicture | undefined>
}

/**
 * The item with its pictures upright, without their white edges, alike in size where their rooms are, no finer than they
 * can be printed and without what a camera writes beside them (where and when), so that every format shows the same and
 * no file carries megabytes that nobody sees. Arts and pieces that were shared stay shared.
 */
export async function withPrintablePictures(
  printed: Success<PlacedItem>,
  prepared: PreparedItem,
  { pictures, decoded }: PicturePreparing,
): Promise<Outcome<PlacedItem>> {
  if (![...prepared.studied.words.keys()].some(({ picture }) => picture !== undefined)) return printed
  // How large a picture is depends on all the others, so an item that has some is held drawn.
  const sheets = printed.value.sheets.map(drawnSheet)
  const ready = new Map<Shape, ImageShape>()
  const problems: Problem[] = []
  const measured: MeasuredPicture[] = []
  for (const shape of picturesOn(sheets)) {
    const fineness = finenessFor(shape.box)
    const from = { parts: [byIdentity(shape.bytes), fineness], places: [] }
    const picture = await decoded.onceAsync(from, () => decodePicture(shape.bytes, fineness))
    if (picture === undefined) problems.push(unreadable(prepared, shape))
    else measured.push({ shape, picture })
  }
  if (problems.length > 0) return failWith([...printed.problems, ...problems])
  for (const { shape, placed, picture } of placedAlike(measured)) {
    const { bytes, ...wanted } = placed
    const from = { parts: [byIdentity(bytes), wanted], places: [] }
    ready.set(shape, await pictures.onceAsync(from, () => printablePicture(placed, picture)))
  }
  if (ready.size === 0) return printed
  return succeed({ ...printed.value, sheets: withPictures(sheets, ready).map(asToDraw) }, printed.problems)
}

interface MeasuredPicture {
  readonly shape: ImageShape
  readonly picture: DecodedPicture
}

/** Pictures of rooms of one size are a set, whose pictures look alike in size. */
function placedAlike(
  measured: readonly MeasuredPicture[],
): readonly (MeasuredPicture & { readonly placed: ImageShape })[] {
  const roomOf = ({ shape: { box } }: MeasuredPicture) => `${box.widthMm} ${box.heightMm}`
  return [...new Set(measured.map(roomOf))].flatMap(room => {
    const set = measured.filter(each => roomOf(each) === room)
    const boxes = alikeInSize(set.map(({ shape, picture }) => ({ room: shape.box, extent: picture })))
    return set.map((each, index) => ({ ...each, placed: { ...each.shape, box: boxes[index]! } }))
  })
}

function picturesOn(sheets: readonly Sheet[]): ReadonlySet<ImageShape> {
  const arts = new Set(sheets.flatMap(artsOf))
  return new Set(
    [...arts].flatMap(({ shapes }) => shapes.flatMap(shape => (shape.kind === 'image' ? [shape] : []))),
  )
}

function artsOf({ pieces, furniture }: Sheet): readonly Art[] {
  return [...pieces.flatMap(({ piece }) => piece.art), ...furniture].map(({ art }) => art)
}

function withPictures(sheets: readonly Sheet[], settled: ReadonlyMap<Shape, ImageShape>): readonly Sheet[] {
  const art = once(
    (old: Art): Art =>
      old.shapes.some(shape => settled.has(shape))
        ? { ...old, shapes: old.shapes.map(shape => settled.get(shape) ?? shape) }
        : old,
  )
  const placed = (old: PlacedArt): PlacedArt => ({ ...old, art: art(old.art) })
  const piece = once((old: Piece): Piece => ({ ...old, art: old.art.map(placed) }))
  return sheets.map(sheet => ({
    ...sheet,
    pieces: sheet.pieces.map(each => ({ ...each, piece: piece(each.piece) })),
    furniture: sheet.furniture.map(placed),
  }))
}

/** The same result for the same argument. */
function once<T>(make: (from: T) => T): (from: T) => T {
  const made = new Map<T, T>()
  return from => {
    const result = made.get(from) ?? make(from)
    made.set(from, result)
    return result
  }
}

function unreadable({ job }: PreparedItem, { description }: ImageShape): Problem {
  const word = job.words.find(({ text }) => text === description)
  return errorAt(
    word?.place ?? job.item.place,
    `the picture of "${description}" cannot be read`,
    'Save the picture again as PNG, JPEG or SVG, or leave it out.',
  )
}
