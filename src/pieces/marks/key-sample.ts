import type { Size } from '../../geometry.js'
import { keptOfLate } from '../../kept-of-late.js'
import { withoutPlaces } from '../../problems.js'
import { silentInTeam } from '../../words/patterns/silent-letters.js'
import { moveArt } from '../art/move-art.js'
import { pathText, rectangle } from '../art/path-text.js'
import type { Art } from '../piece.js'
import type { Typeface } from '../typeface/typeface.js'
import { drawWord, type WordArt } from '../word/word-art.js'
import type { LetterRange, MarkSpan, StyledMark } from './styled-mark.js'
import { tagIn } from './word-features.js'

export interface KeySampleRequest {
  readonly typeface: Typeface
  readonly mark: StyledMark
  /** The letters to show it on, e.g. `sh`; `a_e` for a split pattern. */
  readonly letters: string
  /** The em; smaller where the room asks for it. */
  readonly sizeMm: number
  /** The sample stands in the middle of its height. */
  readonly room: Size
  /** At which edge of its room: the left one where left out. */
  readonly at?: 'left' | 'right'
  readonly color?: string
  readonly large?: boolean
  /** No tag may be smaller. */
  readonly leastTextMm?: number
}

/** The mark on sample letters, as large as `room`. */
export function drawKeySample(request: KeySampleRequest): Art {
  return inRoom(sampleAlone(request), request)
}

/** How wide the sample is in a room that it does not fill. */
export function keySampleWidthMm(request: KeySampleRequest): number {
  return sampleAlone(request).widthMm
}

function sampleAlone(request: KeySampleRequest): Art {
  const { room } = request
  if (isCornerTag(request.mark)) return drawTagSample(request)
  let sample = drawSample(request, request.sizeMm)
  const fit = Math.min(room.widthMm / sample.art.widthMm, room.heightMm / sample.art.heightMm)
  // Strokes have a least width, so a smaller sample is drawn anew; the margin covers what does not shrink with it.
  if (fit < 1) sample = drawSample(request, request.sizeMm * fit * 0.95)
  return sample.art
}

/** A whole word's mark that is no more than a tag in the corner. */
export function isCornerTag({ mark, line, outline }: StyledMark): boolean {
  return mark.target.kind === 'word' && line === undefined && outline === undefined
}

/** About how wide a sample is, in ems of its letters: with what an outline or an arc adds to them, `extraEm`. */
export function keySampleEm(
  { mark, letters }: { readonly mark: StyledMark; readonly letters: string },
  measure: (text: string, sizeMm: number) => number,
  extraEm: number,
): number {
  return isCornerTag(mark) ? card.widthEm : measure(letters, 1) + extraEm
}

/** The corner of a card with the tag in it, in ems of the sample. */
const card = { widthEm: 1.7, heightEm: 1.15, tagEm: 0.62, insetEm: 0.22 }

function drawTagSample(request: KeySampleRequest): Art {
  const { typeface, mark, sizeMm, room, color = '#000000', leastTextMm } = request
  const em = Math.min(sizeMm, room.widthMm / card.widthEm, room.heightMm / card.heightEm)
  const tagMm = Math.max(card.tagEm * em, leastTextMm ?? 0)
  const tag = drawWord({
    typeface,
    word: tagIn(mark.tag ?? '', typeface),
    spans: [],
    sizeMm: tagMm,
    color: mark.color ?? color,
  }).art
  const insetMm = card.insetEm * em
  const size = {
    widthMm: Math.max(card.widthEm * em, tag.widthMm + 2 * insetMm),
    heightMm: Math.max(card.heightEm * em, tag.heightMm + 2 * insetMm),
  }
  const lineMm = 0.35
  const edge: Art = {
    ...size,
    shapes: [
      {
        kind: 'path',
        d: pathText(rectangle(lineMm, lineMm, size.widthMm - lineMm, size.heightMm - lineMm)),
        fill: 'none',
        stroke: { color: '#737373', widthMm: lineMm },
      },
    ],
    text: [],
  }
  const placed = moveArt(tag, size.widthMm - insetMm - tag.widthMm, insetMm, size)
  return { ...size, shapes: [...edge.shapes, ...placed.shapes], text: placed.text }
}

/** A plan's keys have rooms of a few sizes; another word may make them wider. */
const ROOMS_HELD = 20

const placedSamples = new WeakMap<Art, (key: string, make: () => Art) => Art>()

/** The same shapes for all rooms of one size: every page that has a key has the same rooms. */
function inRoom(art: Art, { room, at = 'left' }: KeySampleRequest): Art {
  const kept = placedSamples.get(art) ?? keptOfLate(ROOMS_HELD)
  placedSamples.set(art, kept)
  const placed = kept(`${at} ${room.widthMm} ${room.heightMm}`, () => placedInRoom(art, room, at))
  // An art of its own: whether two on a sheet are one and the same must not depend on what is held.
  return { ...placed }
}

function placedInRoom(art: Art, room: Size, at: 'left' | 'right'): Art {
  const left = at === 'left' ? 0 : room.widthMm - art.widthMm
  return moveArt(art, left, (room.heightMm - art.heightMm) / 2, room)
}

/** A plan has a dozen marks, and shows each in a few sizes. */
const SAMPLES_HELD = 100

const samplesDrawn = new WeakMap<Typeface, (key: string, make: () => WordArt) => WordArt>()

/** Every page that has a key shows the same samples, and shows them again when a word is another. */
function drawSample(request: KeySampleRequest, sizeMm: number): WordArt {
  const { typeface, mark, letters, color, large, leastTextMm } = request
  const kept = samplesDrawn.get(typeface) ?? keptOfLate(SAMPLES_HELD)
  samplesDrawn.set(typeface, kept)
  const key = JSON.stringify([mark, letters, sizeMm, color, large, leastTextMm], withoutPlaces)
  return kept(key, () => sampleInSize(request, sizeMm))
}

function sampleInSize(request: KeySampleRequest, sizeMm: number): WordArt {
  const { typeface, mark, letters, color, large, leastTextMm } = request
  const { word, ranges } = sampleOf(letters, typeface)
  const struck = struckInSample(letters, word)
  return drawWord({
    typeface,
    word,
    spans: [{ mark, ranges, struck }],
    sizeMm,
    ...(color === undefined ? {} : { color }),
    ...(large === undefined ? {} : { large }),
    ...(leastTextMm === undefined ? {} : { leastTextMm }),
  })
}

/** What a slash crosses in a sample: the silent letter of a team, the e of a split pattern, else all of it. */
function struckInSample(letters: string, word: string): readonly LetterRange[] {
  if (letters.includes('_')) return [{ start: word.length - 1, end: word.length }]
  const silent = silentInTeam(letters)
  if (silent === undefined) return [{ start: 0, end: word.length }]
  const start = letters.indexOf(silent)
  return [{ start, end: start + silent.length }]
}

/** A split pattern is shown with a dash in its gap, where the face has one. */
function sampleOf(
  letters: string,
  typeface: Typeface,
): { readonly word: string; readonly ranges: MarkSpan['ranges'] } {
  const gap = letters.indexOf('_')
  if (gap <= 0) return { word: letters, ranges: [{ start: 0, end: letters.length }] }
  const word = letters.replace('_', typeface.missing('–').length === 0 ? '–' : '-')
  return {
    word,
    ranges: [
      { start: 0, end: gap },
      { start: gap + 1, end: word.length },
    ],
  }
}
