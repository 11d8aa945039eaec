import type { Size } from '../../src/geometry.js'
import { fail, succeed } from '../../src/outcomes.js'
import { type CardFace, mm, type SlotContent } from '../../src/pieces/faces/face.js'
import { OverlaySlot, Slot } from '../../src/pieces/faces/slot.js'
import { cardFace } from '../../src/pieces/parts/card-face.js'
import { contentRoom } from '../../src/pieces/parts/card-frame.js'
import { errorAt, type Outcome } from '../../src/problems.js'
import type { Card, CardSet } from '../../src/sets/card-set.js'
import type { LayoutRequest } from '../layout.js'
import { wordSlot } from '../one-card-a-word.js'
import { plainWord } from '../plain-word.js'
import { drawNet, drawPlaceBars, netSquares, placeNet } from './cube-net.js'

/** Of a face's side: white beside the letters, and the bars at the foot. */
const BESIDE_SHARE = 0.08
const BARS = { above: 0.82, wide: 0.36, high: 0.075 } as const

/** How wide letters may be on a face of this side. */
export function roomOnFace(sideMm: number): number {
  return sideMm * (1 - 2 * BESIDE_SHARE)
}

/** A smaller cube is hard to fold: our own judgement, no source. */
const LEAST_SIDE_MM = 18

export function dieNets(request: LayoutRequest, set: CardSet, size: Size): Outcome<readonly CardFace[]> {
  const { item, type } = request
  const { sideMm } = placeNet(contentRoom(size, item.border, type))
  if (sideMm < LEAST_SIDE_MM)
    return fail(
      errorAt(
        item.place,
        `the dice would be ${sideMm.toFixed(0)} mm wide, too small to fold`,
        'Print fewer on a sheet, or choose larger paper.',
      ),
    )
  return succeed(set.cards.map(card => dieNet(request, card, set, size)))
}

/** A net to cut out and fold, a face in each of its squares. */
function dieNet(request: LayoutRequest, card: Card, set: CardSet, size: Size): CardFace {
  const { place, faces } = card.die!
  const room = contentRoom(size, request.item.border, request.type)
  const { sideMm, leftMm, topMm } = placeNet(room)
  const slots: Record<string, SlotContent> = { net: { kind: 'art', draw: drawNet } }
  faces.forEach((letters, index) => {
    slots[`bars ${index}`] = { kind: 'art', draw: box => drawPlaceBars(place, box) }
    // An empty face adds nothing to a word; it takes no letters, and its bars tell that it is a face.
    slots[`letters ${index}`] =
      letters === ''
        ? { kind: 'art', draw: box => ({ ...box, shapes: [], text: [] }) }
        : wordSlot({ ...request, marked: false }, plainWord(letters), {
            align: 'centre',
            paddingMm: sideMm * BESIDE_SHARE,
            paddingAboveMm: sideMm * 0.04,
          })
  })
  return cardFace({
    ...request,
    card,
    set,
    size,
    border: request.item.border,
    text: faces.filter(letters => letters !== ''),
    content: (
      <div style={{ display: 'flex', position: 'relative', flexGrow: 1, width: '100%' }}>
        <OverlaySlot name="net" />
        {netSquares.map(({ column, row }, index) => (
          <div
            style={{
              display: 'flex',
              position: 'absolute',
              left: mm(leftMm + column * sideMm),
              top: mm(topMm + row * sideMm),
              width: mm(sideMm),
              height: mm(sideMm),
            }}
          >
            <Slot name={`letters ${index}`} style={{ width: '100%', height: `${BARS.above * 100}%` }} />
            <Slot
              name={`bars ${index}`}
              style={{
                position: 'absolute',
                left: `${50 * (1 - BARS.wide)}%`,
                top: `${BARS.above * 100}%`,
                width: `${BARS.wide * 100}%`,
                height: `${BARS.high * 100}%`,
              }}
            />
          </div>
        ))}
      </div>
    ),
    slots,
  })
}
