/** Which words of earlier weeks come back this week. The same lists give the same words: nothing is left to chance. */
import type { PlanWord } from '../plan.js'
import { sameWord } from '../words/word-text.js'
import { isDue } from './due.js'
import { type Share, wordsForShare } from './share.js'

/** What the children worked with in one week. */
export interface WeekOfWords {
  /** What a teacher calls the list: its file's name without folder and ending; empty for one that stands in the plan. */
  readonly name: string
  readonly words: readonly PlanWord[]
}

export interface ReviewChoice {
  /** Each with the week that it comes back from: the latest week first. */
  readonly words: readonly PlanWord[]
  /** How many the share comes to. */
  readonly wanted: number
}

export interface ReviewRequest {
  /** The last one is last week's. */
  readonly earlier: readonly WeekOfWords[]
  /** This week's own. */
  readonly own: readonly PlanWord[]
  readonly share: Share
}

/**
 * Every earlier week is gone through as if it had been given its share in the same way: so it is known which words of a list
 * have been back before, and others come next. Of the lists that are due each gives one word in turn, the latest first.
 */
export function chooseReview({ earlier, own, share }: ReviewRequest): ReviewChoice {
  const known = new WordsMet()
  for (const [week, { words }] of earlier.entries()) {
    known.comeBack(week, words, wordsForShare(words.length, share))
    known.teach(week, words)
  }
  const week = earlier.length
  const wanted = wordsForShare(own.length, share)
  const back = known.comeBack(week, own, wanted)
  const words = back
    .toSorted((a, b) => b.week - a.week || a.turn - b.turn)
    .map(
      ({ word, week: from }): PlanWord => ({
        ...word,
        cameBack: { from: earlier[from]!.name, weeksAgo: week - from },
      }),
    )
  return { words, wanted }
}

interface MetWord {
  readonly word: PlanWord
  /** In which it was last on the week's own list. */
  week: number
  /** When in its list it is its turn. */
  turn: number
  timesBack: number
}

/** What children have met up to a week; it grows week by week. */
class WordsMet {
  private readonly byText = new Map<string, MetWord>()
  private readonly byWeek: MetWord[][] = []

  teach(week: number, words: readonly PlanWord[]): void {
    const turns = spreadOut(words.length)
    this.byWeek[week] = words.map((word, index) => {
      const earlier = this.byText.get(sameWord(word.text))
      const met = {
        word,
        week,
        turn: turns[index]!,
        timesBack: earlier === undefined ? 0 : earlier.timesBack + 1,
      }
      // From now on it is a word of the later week.
      if (earlier !== undefined) earlier.week = -1
      this.byText.set(sameWord(word.text), met)
      return met
    })
  }

  /** Words that are due, so many of them at most, none of the week's own. */
  comeBack(week: number, own: readonly PlanWord[], most: number): readonly MetWord[] {
    const ownTexts = new Set(own.map(({ text }) => sameWord(text)))
    const queues = this.byWeek
      .filter((_, earlier) => isDue(week - earlier))
      .toReversed()
      .map(words =>
        words
          .filter(met => met.week >= 0 && !ownTexts.has(sameWord(met.word.text)))
          .toSorted((a, b) => a.timesBack - b.timesBack || a.turn - b.turn),
      )
    const longest = Math.max(0, ...queues.map(({ length }) => length))
    const inTurn = Array.from({ length: longest }, (_, round) =>
      queues.flatMap(queue => queue[round] ?? []),
    ).flat()
    const back = inTurn.slice(0, most)
    for (const met of back) met.timesBack += 1
    return back
  }
}

/**
 * A turn for each place of a list, so that whoever comes first stands well apart: a list that is in order of its patterns
 * gives words of all of them. The places in the order of their bits read backwards (van der Corput 1935).
 */
function spreadOut(length: number): readonly number[] {
  const bits = Math.ceil(Math.log2(Math.max(2, length)))
  const backwards = (place: number) =>
    Array.from({ length: bits }, (_, bit) => ((place >> bit) & 1) << (bits - 1 - bit)).reduce(
      (a, b) => a + b,
      0,
    )
  return Array.from({ length }, (_, place) => backwards(place))
}
