import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { lazily } from '../lazily.js'

/**
 * More than a week's plan has, or a class's boards in ten games: up to there the process stays under 300 MB by itself, and what is
 * said below would cost it a seventh of its time and more. Further on memory counts for more.
 */
const [MANY_WORDS, MANY_SHEETS] = [400, 600]

/** Up to there what is new does without more room (`compile-later.cts`); three hundred boards would take a tenth longer. */
const SOME_SHEETS = 60

/**
 * V8 lets garbage lie until it is as much again as what is in use, and with it what resvg drew. Where words are fitted and
 * sheets made by the hundred it is to collect when there is a quarter more, of many words when there is a seventh: the most memory that is
 * held falls by a fifth, for a tenth to a fifth more of the processor's time. A flag of the whole process, and no other value depends on it; a week's plan never comes here.
 */
export function collectSoonerFor({ words = 0, sheets = 0 }: { words?: number; sheets?: number }): void {
  const areManyWords = words > MANY_WORDS
  if (areManyWords || sheets > SOME_SHEETS) giveRoomToNew()
  if (!areManyWords && sheets <= MANY_SHEETS) return
  setFlagsFromString(`--heap-growing-percent=${areManyWords ? 15 : 25}`)
  growOnce(collectNow())
}

/**
 * Eight megabytes are given to what is new when it is next collected, and no more later: what is looked through seldom holds what
 * resvg drew, which is far larger. A file of 1,200 words takes 180 MB in place of 240, and a fifteenth less of the processor.
 */
function growOnce(collect: () => void): void {
  setFlagsFromString('--semi-space-growth-factor=8')
  collect()
  setFlagsFromString('--semi-space-growth-factor=1')
}

/** As V8 does by itself: twice as much each time that most of it is in use, which several threads look through. */
function giveRoomToNew(): void {
  setFlagsFromString('--semi-space-growth-factor=2')
  setFlagsFromString('--parallel-scavenge')
}

/** V8 decides how much may lie when it has collected: without this what it decided before holds until that much lies. */
const collectNow = lazily((): (() => void) => {
  setFlagsFromString('--expose-gc')
  const collect: unknown = runInNewContext('gc')
  setFlagsFromString('--no-expose-gc')
  return typeof collect === 'function' ? () => collect() : () => {}
})

/**
 * For a program that stays open beside others all day: what it holds of a week is 75 MB, and V8 would let four times as much lie.
 * Collecting when there is as much again, it takes 300 MB after a hundred changes in place of 425, for a tenth more of the processor.
 */
export function collectSoonerWhileOpen(): void {
  giveRoomToNew()
  setFlagsFromString('--heap-growing-percent=100')
}

/**
 * For the same program, while it waits for the next change: what the last one left lying is collected then, in a twentieth of a
 * second, and not while somebody waits for a set.
 */
export function collectWhileWaiting(): void {
  collectNow()()
}
