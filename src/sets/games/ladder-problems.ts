/** What is said of a ladder that does not exist: why, and the nearest that does. */
import { errorAt, type Place, type Problem } from '../../problems.js'
import { stepsFrom } from './change-paths.js'
import { type LadderWeb, MOST_STEPS } from './ladder-web.js'
import { type LadderWord, soundsOf } from './ladder-words.js'
import { type LaddersWanted, wordCalled } from './ladders-wanted.js'

export function unusableEnd(text: string, { words, place }: LaddersWanted): Problem {
  const listed = words.find(word => word.text.toLowerCase() === text.toLowerCase())
  const isGuess = listed?.source === 'guess'
  const why =
    listed === undefined
      ? 'it is neither on the list nor a word that ladders step on'
      : isGuess
        ? 'its sounds are a guess'
        : 'it has one sound alone'
  const advice = isGuess
    ? 'Name a word that the dictionary has, or give this one its sounds in the words.'
    : 'Name a word of the list with two sounds or more.'
  return errorAt(place, `no ladder begins or ends with "${text}": ${why}`, advice)
}

export function noLadderAtAll({ steps, place }: LaddersWanted): Problem {
  const length = steps === undefined ? '' : ` of ${steps === 1 ? '1 step' : `${steps} steps`}`
  return errorAt(
    place,
    `no word of the list begins a ladder${length}: changing one sound of it makes no other word that children know`,
    steps === undefined
      ? 'Add short words, such as those of three sounds.'
      : 'Choose other steps, or add short words, such as those of three sounds.',
  )
}

/** A ladder with a named end that cannot be. */
export function noLadder(wanted: LaddersWanted, web: LadderWeb): Problem {
  const { from, to, steps, place } = wanted
  if (from !== undefined && to !== undefined && saidAlike(from, to, wanted)) return sameSound(from, to, place)
  const start = indexOf(web, from ?? to!)
  const { text } = web.words[start]!.word
  const reached = stepsFrom(web.graph, start, MOST_STEPS)
  if (reached.size === 1)
    return errorAt(
      place,
      `no ladder begins or ends with "${text}": changing one sound of it makes no other word that children know`,
      'Name a shorter word, such as one of three sounds.',
    )
  if (from === undefined || to === undefined) return wrongLength(text, steps!, longestFrom(reached), wanted)
  const end = indexOf(web, to)
  const fewest = reached.get(end)
  if (fewest === undefined) return notConnected(web, { start, end, reached }, wanted)
  const { text: endText } = web.words[end]!.word
  return errorAt(
    place,
    `no ladder of ${inSteps(steps!)} begins with "${text}" and ends with "${endText}"`,
    `The nearest takes ${inSteps(fewest)}: write steps: ${fewest}, or leave steps out.`,
  )
}

function saidAlike(from: string, to: string, wanted: LaddersWanted): boolean {
  const [before, after] = [wordCalled(from, wanted), wordCalled(to, wanted)]
  return before !== undefined && after !== undefined && soundsOf(before) === soundsOf(after)
}

function sameSound(from: string, to: string, place: Place): Problem {
  const message =
    from.toLowerCase() === to.toLowerCase()
      ? `a ladder with "${from}" at both ends changes nothing`
      : `"${from}" and "${to}" sound the same: no sound changes`
  return errorAt(place, message, 'Name another word for one of the two.')
}

function indexOf({ words }: LadderWeb, text: string): number {
  return words.findIndex(({ word }) => word.text.toLowerCase() === text.toLowerCase())
}

function inSteps(steps: number): string {
  return steps === 1 ? '1 step' : `${steps} steps`
}

function longestFrom(reached: ReadonlyMap<number, number>): number {
  return Math.max(...reached.values())
}

function wrongLength(text: string, steps: number, most: number, { place }: LaddersWanted): Problem {
  return errorAt(
    place,
    `no ladder of ${inSteps(steps)} begins or ends with "${text}"`,
    `The nearest has ${inSteps(Math.min(most, steps))}: write steps: ${Math.min(most, steps)}, or leave steps out.`,
  )
}

interface Apart {
  readonly start: number
  readonly end: number
  readonly reached: ReadonlyMap<number, number>
}

function notConnected(
  { words }: LadderWeb,
  { start, end, reached }: Apart,
  { place }: LaddersWanted,
): Problem {
  const [from, to] = [words[start]!, words[end]!]
  const sounds = [from, to].map(({ pieces }) => pieces.length)
  const why =
    sounds[0] === sounds[1]
      ? `none of ${MOST_STEPS} steps or fewer does`
      : `they have ${sounds[0]} and ${sounds[1]} sounds, and a changed sound leaves as many`
  const nearest = [...reached]
    .filter(([, steps]) => steps > 1)
    .map(([index, steps]) => ({ word: words[index]!, steps, apart: soundsApart(words[index]!, to) }))
    .sort(
      (a, b) =>
        a.apart - b.apart ||
        Number(b.word.isOnList) - Number(a.word.isOnList) ||
        b.word.familiarity - a.word.familiarity,
    )[0]
  const advice =
    nearest === undefined
      ? 'Name another word.'
      : `The nearest that can be had leads to "${nearest.word.word.text}" in ${inSteps(nearest.steps)}: write to: ${nearest.word.word.text}.`
  return errorAt(
    place,
    `no ladder begins with "${from.word.text}" and ends with "${to.word.text}": ${why}`,
    advice,
  )
}

/** How many sounds have to be changed, added or taken away (Levenshtein's distance). */
function soundsApart({ pieces: from }: LadderWord, { pieces: to }: LadderWord): number {
  let row = Array.from({ length: to.length + 1 }, (_, index) => index)
  for (const [index, { sounds }] of from.entries()) {
    const next = [index + 1]
    for (const [place, other] of to.entries())
      next.push(
        Math.min(row[place]! + Number(sounds !== other.sounds), row[place + 1]! + 1, next[place]! + 1),
      )
    row = next
  }
  return row.at(-1)!
}
