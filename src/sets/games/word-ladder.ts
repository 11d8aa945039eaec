/** Word ladders: from word to word by changing one sound, on words that children know. */
import { failWith, succeed } from '../../outcomes.js'
import { type Outcome, type Place, type Problem, warningAt } from '../../problems.js'
import { cardId } from '../card-id.js'
import type { Card, CardSet } from '../card-set.js'
import { generatorFor, shuffle } from '../random.js'
import { cheapestPath, stepsFrom } from './change-paths.js'
import { noLadder, noLadderAtAll, unusableEnd } from './ladder-problems.js'
import { rungsOf } from './ladder-steps.js'
import { FAMILIAR, type LadderWeb, LEAST_PIECES, ladderCost, ladderWeb, MOST_STEPS } from './ladder-web.js'
import type { LadderWord } from './ladder-words.js'
import { type LaddersWanted, listedWords, wordCalled } from './ladders-wanted.js'
import { namedWords } from './named-words.js'

type Path = readonly LadderWord[]

/** A board for each ladder, its words from the first to the last. */
export function wordLadders(wanted: LaddersWanted): Outcome<CardSet> {
  const { place, ladders } = wanted
  const ends = [wanted.from, wanted.to].filter(text => text !== undefined)
  const listed = listedWords(wanted)
  const named = ends.flatMap(text => namedFirst(text, wanted))
  const problems = ends
    .filter(text => !named.some(word => isText(word, text)))
    .map(text => unusableEnd(text, wanted))
  if (problems.length > 0) return failWith(problems)
  const begun = named.length > 0 ? named : listed
  const sounds = new Set(begun.map(({ pieces }) => countOfPieces(pieces)))
  const web = (least: number) => ladderWeb([...named, ...listed, ...wanted.known.wordsOf(sounds, least)])
  const found = findPaths(wanted, web(FAMILIAR))
  const all = found.length > 0 ? undefined : web(0)
  const paths = all === undefined ? found : findPaths(wanted, all)
  if (paths.length === 0) {
    return failWith([ends.length === 0 ? noLadderAtAll(wanted) : noLadder(wanted, all!)])
  }
  const few: Problem[] =
    ladders !== undefined && paths.length < ladders ? [fewLadders(paths.length, ladders, place)] : []
  return succeed(setOf(paths, wanted), few)
}

function isText(word: LadderWord | undefined, text: string): boolean {
  return word?.word.text.toLowerCase() === text.toLowerCase()
}

/** The word as the list has it, or as it is known; none where it is neither. */
function namedFirst(text: string, wanted: LaddersWanted): Path {
  const word = wordCalled(text, wanted)
  return word === undefined || word.pieces.length < LEAST_PIECES ? [] : [word]
}

function countOfPieces(pieces: LadderWord['pieces']): number {
  return pieces.reduce((sum, { counts }) => sum + counts, 0)
}

/** Where the plan says nothing of the steps: so many are the best, these the next best. */
const USUAL_STEPS = [4, 3, 5, 2] as const
/** Ladders where the plan says nothing: two sheets of two. */
const USUAL_LADDERS = 4
/** Words tried as the beginning of a ladder, of which the best is taken. */
const BEGINNINGS = 8
/** A word that stands in another ladder already is dearer, and so is any word by a little chance. */
const USED_COST = 3
const CHANCE_COST = 1.5

function findPaths(wanted: LaddersWanted, web: LadderWeb): readonly Path[] {
  const { ladders, seed, label, from, to } = wanted
  const most = ladders ?? (from === undefined && to === undefined ? USUAL_LADDERS : 1)
  const listed = [...web.words.keys()].filter(index => web.words[index]!.isOnList)
  const used = new Set<number>()
  const paths: (readonly number[])[] = []
  while (paths.length < most) {
    const generator = generatorFor(seed, `${label}: ladder ${paths.length + 1}`)
    const chance = web.words.map(() => (generator.below(1000) / 1000) * CHANCE_COST)
    const search: PathSearch = {
      web,
      used,
      listed: shuffle(listed, generator),
      cost: index => ladderCost(web.words[index]!) + chance[index]! + (used.has(index) ? USED_COST : 0),
    }
    const path = onePath(wanted, search)
    if (path === undefined || paths.some(other => other.join() === path.join())) break
    paths.push(path)
    for (const index of path) used.add(index)
  }
  return paths.map(path => path.map(index => web.words[index]!))
}

interface PathSearch {
  readonly web: LadderWeb
  readonly used: ReadonlySet<number>
  /** Those of the list, in an order of chance. */
  readonly listed: readonly number[]
  readonly cost: (index: number) => number
}

function onePath(wanted: LaddersWanted, search: PathSearch): readonly number[] | undefined {
  const { from, to } = wanted
  const { web } = search
  const indexOf = (text: string) => web.words.findIndex(word => isText(word, text))
  if (from !== undefined && to !== undefined) return pathBetween(indexOf(from), indexOf(to), wanted, search)
  if (from !== undefined) return bestFrom([indexOf(from)], wanted, search)
  if (to !== undefined) return bestFrom([indexOf(to)], wanted, search)?.toReversed()
  const fresh = search.listed.filter(index => !search.used.has(index))
  return bestFrom(fresh, wanted, search) ?? bestFrom(search.listed, wanted, search)
}

function pathBetween(
  from: number,
  to: number,
  { steps }: LaddersWanted,
  { web, cost }: PathSearch,
): readonly number[] | undefined {
  const isEnd = (index: number) => index === to
  const fewest = stepsFrom(web.graph, from, MOST_STEPS).get(to)
  if (fewest === undefined || fewest === 0 || (steps !== undefined && steps < fewest)) return undefined
  const request = { from, isEnd, steps: steps ?? fewest, cost }
  return (
    cheapestPath(web.graph, { ...request, shortcuts: false }) ??
    cheapestPath(web.graph, { ...request, shortcuts: true })
  )
}

/** From the best of these beginnings: to another word of the list where one is in reach, else to any. */
function bestFrom(
  beginnings: readonly number[],
  { steps }: LaddersWanted,
  { web, used, cost }: PathSearch,
): readonly number[] | undefined {
  const lengths = steps === undefined ? USUAL_STEPS : [steps]
  const isOther = (index: number) => web.words[index]!.isOnList && !used.has(index)
  const isTold = (index: number) => web.words[index]!.clue !== undefined
  const any = () => true
  for (const isEnd of [isOther, isTold, any])
    for (const length of lengths) {
      let best: { readonly path: readonly number[]; readonly cost: number } | undefined
      let tried = 0
      for (const from of beginnings) {
        if (best !== undefined && ++tried >= BEGINNINGS) break
        const path = cheapestPath(web.graph, { from, isEnd, steps: length, cost, shortcuts: false })
        const sum = path?.reduce((total, index) => total + cost(index), 0) ?? Number.POSITIVE_INFINITY
        if (path !== undefined && sum < (best?.cost ?? Number.POSITIVE_INFINITY)) best = { path, cost: sum }
      }
      if (best !== undefined) return best.path
    }
  return undefined
}

function setOf(paths: readonly Path[], { copies }: LaddersWanted): CardSet {
  const ladders = paths.map(path => path.map(({ word }) => word))
  const cards = Array.from({ length: copies }, (_, copy) =>
    paths.map(
      (path, index): Card => ({
        id: cardId({ prefix: 'board', number: index + 1, copy: copy + 1, of: paths.length }),
        kind: 'board',
        number: index + 1,
        copy: copy + 1,
        words: ladders[index]!,
        ladder: rungsOf(path),
      }),
    ),
  ).flat()
  return {
    cards,
    answerData: ladders.map(words => words.map(({ text }) => text)),
    notes: notesOn(paths),
  }
}

function notesOn(paths: readonly Path[]): readonly string[] {
  const others = [...new Map(paths.flat().map(each => [each.word.text, each])).values()].filter(
    each => !each.isOnList,
  )
  const drafted = others.filter(({ clue }) => clue !== undefined).map(({ word }) => word)
  const rare = others.filter(({ familiarity }) => familiarity < FAMILIAR).map(({ word }) => word)
  return [
    ...(drafted.length === 0
      ? []
      : [`Clues of words that are not on your list are drafts; read them over: ${namedWords(drafted)}.`]),
    ...(rare.length === 0 ? [] : [`Less familiar words on the way: ${namedWords(rare)}.`]),
  ]
}

function fewLadders(found: number, ladders: number, place: Place): Problem {
  return warningAt(
    place,
    `${found} of ${ladders} ladders are made: the words lead to no further ones`,
    'Ask for fewer ladders or for other steps, or give more words of three or four sounds.',
  )
}
