/** How long a game on a track lasts, and the spaces that send on or back by which it lasts as long as it should. */
import type { Generator } from '../random.js'
import { type Jump, landing, type TrackRules } from './track-turns.js'

/** One child's throw, move and reading aloud: our own judgement, no source. */
export const SECONDS_A_TURN = 30

/** Turns after which so few games go on that they change no average. */
const MOST_TURNS = 3000
const NEGLIGIBLE = 1e-9

/**
 * The chance that a counter is still on its way after 0, 1, 2, … turns. Computed from one turn to the next; it stops
 * where hardly any is left on its way, or where `enough` says so of the last chance.
 */
export function chancesOnTheWay(
  rules: TrackRules,
  enough: (onTheWay: number) => boolean = () => false,
): readonly number[] {
  const { finish, faces } = rules
  const landings = Int16Array.from({ length: finish * faces }, (_, index) =>
    landing(Math.floor(index / faces), (index % faces) + 1, rules),
  )
  let standing = new Float64Array(finish)
  let next = new Float64Array(finish)
  standing[0] = 1
  const chances = [1]
  while (chances.length < MOST_TURNS) {
    next.fill(0)
    for (let space = 0; space < finish; space++) {
      const share = standing[space]! / faces
      if (share === 0) continue
      for (let face = space * faces; face < (space + 1) * faces; face++) {
        const reached = landings[face]!
        if (reached < finish) next[reached]! += share
      }
    }
    ;[standing, next] = [next, standing]
    const onTheWay = standing.reduce((sum, chance) => sum + chance, 0)
    chances.push(onTheWay)
    if (onTheWay < NEGLIGIBLE || enough(onTheWay)) break
  }
  return chances
}

/**
 * Rounds until the first of some players is at the finish, on average: the sum of the chances that none is yet. A game of
 * more than `most` rounds is told as one of as many at least.
 */
export function roundsToFirst(
  rules: TrackRules,
  players: number,
  most: number = Number.POSITIVE_INFINITY,
): number {
  let rounds = 1
  chancesOnTheWay(rules, onTheWay => {
    rounds += onTheWay ** players
    return rounds > most
  })
  return rounds
}

/** As long as the first of them takes, each round a turn for every player. */
export function minutesOf(
  rules: TrackRules,
  players: number,
  mostMinutes: number = Number.POSITIVE_INFINITY,
): number {
  const minutesARound = (players * SECONDS_A_TURN) / 60
  return roundsToFirst(rules, players, mostMinutes / minutesARound) * minutesARound
}

export interface JumpsWanted extends Omit<TrackRules, 'jumps'> {
  readonly players: number
  /** How many; as many as fit the time where left out. */
  readonly count?: number | undefined
  /** How long a game should last; undefined where any length is right. */
  readonly minutes?: number | undefined
}

/** Shorter ones look like a slip of the pencil. */
const SHORTEST = 2
/** Of the track's spaces: of four, one sends on or back at most. */
const MOST_SHARE = 4
/** To be sent back from the last spaces makes children cry: our own judgement, no source. */
const CLEAR_BEFORE_FINISH = 3
const TRIES = 500

/**
 * Spaces that send a counter on or back, half of them this way and half that, moved about until the game lasts as long as
 * it should. No space is in two of them, so that a counter is sent once; none leads to the start or the finish, none
 * sends back from before the finish, and no throw finds back-sending spaces alone.
 */
export function chooseJumps(wanted: JumpsWanted, generator: Generator): readonly Jump[] {
  const { finish, faces, ending, count, minutes, players } = wanted
  const most = mostJumps(finish)
  const any = () => anyJump(finish, generator)
  let jumps: readonly Jump[] = []
  const first = Math.min(most, count ?? Math.round(finish / 7))
  for (let tries = 0; tries < TRIES && jumps.length < first; tries++) {
    const jump = any()
    const isForwardsTurn = jumps.length % 2 === 0
    if (isForwardsTurn === jump.to > jump.from && mayStand([...jumps, jump], wanted)) jumps = [...jumps, jump]
  }
  if (minutes === undefined || (count !== undefined && jumps.length === 0)) return inOrder(jumps)
  const missed = (given: readonly Jump[]) =>
    Math.abs(minutesOf({ finish, faces, ending, jumps: given }, players, 3 * minutes) - minutes)
  let misses = missed(jumps)
  for (let tries = 0; tries < TRIES && misses > minutes / 100; tries++) {
    const changes = count === undefined ? (['move', 'add', 'take away'] as const) : (['move'] as const)
    const change = changes[generator.below(changes.length)]
    const without = jumps.toSpliced(generator.below(Math.max(1, jumps.length)), 1)
    const changed =
      change === 'take away' ? without : change === 'add' ? [...jumps, any()] : [...without, any()]
    if (changed.length > most || !mayStand(changed, wanted)) continue
    const nowMisses = missed(changed)
    if (nowMisses < misses) [jumps, misses] = [changed, nowMisses]
  }
  return inOrder(jumps)
}

export function mostJumps(finish: number): number {
  return Math.floor((finish - 1) / MOST_SHARE)
}

function anyJump(finish: number, generator: Generator): Jump {
  const longest = Math.max(SHORTEST, Math.floor(finish / 3))
  const from = 1 + generator.below(finish - 1)
  const length = SHORTEST + generator.below(longest - SHORTEST + 1)
  return { from, to: generator.below(2) === 0 ? from + length : from - length }
}

function mayStand(jumps: readonly Jump[], { finish, faces }: Pick<TrackRules, 'finish' | 'faces'>): boolean {
  const used = jumps.flatMap(({ from, to }) => [from, to])
  if (new Set(used).size < used.length || used.some(space => space < 1 || space >= finish)) return false
  if (jumps.some(({ from, to }) => to < from && from > finish - CLEAR_BEFORE_FINISH)) return false
  const sendsBack = new Set(jumps.filter(({ from, to }) => to < from).map(({ from }) => from))
  return !jumps.some(({ from }) =>
    Array.from({ length: faces }, (_, index) => from + index).every(space => sendsBack.has(space)),
  )
}

function inOrder(jumps: readonly Jump[]): readonly Jump[] {
  return jumps.toSorted((a, b) => a.from - b.from)
}
