import { type Problem, warningAt } from '../../src/problems.js'
import { NEAR_SHARE } from '../../src/sets/games/path-boards.js'
import { minutesOf, mostJumps } from '../../src/sets/games/track-length.js'
import type { TrackOfSet } from '../../src/sets/games/track-turns.js'
import { sheetsOf } from '../joined-sheets/joined-sheets.js'
import { LEAST_SPACES, MOST_ON_A_SHEET, MOST_SPACES, type PathRequest, spacesOf } from './path-options.js'

/** What was asked for and cannot be had: so many spaces that send a counter, so many minutes. */
export function lengthProblems(request: PathRequest, track: TrackOfSet): readonly Problem[] {
  const { options, item } = request
  const { minutes, players, faces, jumps } = options
  const spaces = spacesOf(request)
  const mostSending = mostJumps(spaces + 1)
  const tooMany =
    jumps !== undefined && track.jumps.length < jumps
      ? [
          warningAt(
            item.place,
            `${track.jumps.length} spaces send on or back, not ${jumps}`,
            `A track of ${spaces} spaces has room for ${mostSending}; give it more spaces.`,
          ),
        ]
      : []
  if (minutes === undefined || Math.abs(track.minutes - minutes) <= NEAR_SHARE * minutes) return tooMany
  const bare = (count: number) =>
    minutesOf({ finish: count + 1, jumps: [], faces, ending: track.ending }, players)
  const most = Math.min(MOST_SPACES, MOST_ON_A_SHEET * sheetsOf(options))
  const counts = Array.from({ length: most - LEAST_SPACES + 1 }, (_, index) => index + LEAST_SPACES)
  const better = counts.find(count => bare(count) >= minutes) ?? most
  return [
    ...tooMany,
    warningAt(
      item.place,
      `a game lasts about ${Math.round(track.minutes)} minutes, not ${minutes}`,
      `That is the nearest that spaces which send on or back can do; a track with spaces: ${better} lasts about ${Math.round(bare(better))} without any.`,
    ),
  ]
}
