import type { Size } from '../../src/geometry.js'
import type { CardSet } from '../../src/sets/card-set.js'
import { SECONDS_A_TURN } from '../../src/sets/games/track-length.js'
import { grownUpPages } from '../grown-up-pages.js'
import { howToPlayPages } from '../how-to-play.js'
import { joiningTold, sheetsOf } from '../joined-sheets/joined-sheets.js'
import type { PageFace } from '../layout.js'
import { numberMakers } from './number-makers.js'
import type { PathRequest } from './path-options.js'

/** How the game is played, and what serves instead of a die. */
export function pathPages(request: PathRequest, set: CardSet, room: Size): readonly PageFace[] {
  const { players, faces } = request.options
  const { jumps, turns, minutes, numbers, ending } = set.track!
  const [each, whole] = [Math.round(turns), Math.max(1, Math.round(minutes))]
  const rounds = Math.max(1, Math.round((minutes * 60) / (SECONDS_A_TURN * players)))
  const isOn = jumps.some(({ from, to }) => to > from)
  const isBack = jumps.some(({ from, to }) => to < from)
  const sent = isOn && isBack ? 'on or back' : isOn ? 'on' : 'back'
  const read = 'Read the word on your space aloud.'
  const exactly =
    ending === 'over' ? 'You need not throw the exact number.' : 'Your last throw must be exact.'
  const makers = {
    kind: 'rules',
    what: 'instead of a die',
    rows: numberMakers(request, numbers, room),
    room,
  } as const
  return [
    ...howToPlayPages(
      request,
      {
        play: [
          'Put your counters on start. Take turns.',
          'Throw. Move as many spaces, the way the arrows point.',
          jumps.length === 0 ? read : `${read} Does it send you ${sent}? Go there. Your turn is over.`,
          `First at the finish wins. ${exactly}`,
        ],
        prepare: `${joiningTold(sheetsOf(request.options))}one board and a counter for each of two to four children, ${faces === 6 ? 'and a die, or' : 'and'} the disc or the grid of the next page. Counters and dice are small parts: not for children under three.`,
        help: `a word read wrongly is read together. ${players === 1 ? 'One child is home' : `The first of ${players} children is home`} after about ${rounds} turns${players === 1 ? '' : ' each'}, and with ${SECONDS_A_TURN} seconds a turn, which is our own estimate, a game lasts about ${whole === 1 ? 'a minute' : `${whole} minutes`}. Any one counter takes about ${each} turns.`,
        easier: 'read a word together with whoever gets stuck.',
        harder: 'say a sentence with the word, or spell it with the eyes shut, before the counter may stay.',
      },
      room,
    ),
    ...grownUpPages(request, makers),
  ]
}
