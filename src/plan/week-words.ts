/** The words of the week, the class's and each group's: earlier decisions carried over, old words come back. */
import { type WithProblems, withProblems } from '../outcomes.js'
import { errorAt, type Place, type Problem, warningAt } from '../problems.js'
import type { PlanGroup, PlanWord } from './plan.js'
import { chooseReview, type WeekOfWords } from './review/choose-review.js'
import { dueInWords } from './review/due.js'
import type { EarlierWeek } from './review/earlier-plan.js'
import type { ReviewSetting } from './review/review-key.js'
import { type Share, usualShare } from './review/share.js'
import { type ClassFile, withEarlier } from './settings/class-file.js'
import type { ReadGroup } from './settings/groups.js'
import { foldName } from './values/fold-name.js'
import { eachWordOnce, sameWord } from './words/word-text.js'

export interface WeekWordsRead {
  readonly words: readonly PlanWord[]
  readonly groups: readonly ReadGroup[]
  readonly review?: ReviewSetting | undefined
  readonly classFile?: ClassFile | undefined
  /** Of the class file; undefined where it has none, or none is asked for. */
  readonly weeksBefore?: readonly EarlierWeek[] | undefined
}

export interface WeekWords {
  readonly words: readonly PlanWord[]
  readonly groups: readonly PlanGroup[]
  readonly earlierWords?: readonly string[]
}

/**
 * Old words join the class's list, and so come to the groups that share it. A group with words of its own gets back what
 * the group of its name worked with in earlier plans. A group's own `review:` stands in place of the plan's.
 */
export function weekWords({
  words: typed,
  groups,
  review: ofPlan,
  classFile,
  weeksBefore,
}: WeekWordsRead): WithProblems<WeekWords> {
  const fromClass = classFile?.words ?? new Map<string, PlanWord>()
  const decided = (list: readonly PlanWord[], earlier = fromClass) =>
    list.map(word => withEarlier(word, earlier))
  const own = decided(typed)
  const problems: Problem[] = []
  const review = ofPlan ?? classFile?.review
  const comingBack = (setting: ReviewSetting | undefined, { list, whose, of }: ForWhom): ComingBack => {
    if (setting === undefined || setting.from === 'none' || list.length === 0) return { words: [] }
    const from = setting.from ?? weeksBefore
    if (from === undefined) {
      problems.push(noWeeks(setting.place))
      return { words: [] }
    }
    const share = setting.share ?? classFile?.review?.share ?? usualShare
    const { words, wanted } = chooseReview({ earlier: from.map(of), own: list, share })
    // Before the first week there is nothing to come back.
    if (words.length < wanted && from.length > 0)
      problems.push(tooFew({ words, wanted, share, whose, place: setting.place }))
    const before = from.flatMap(week => of(week).words.map(word => sameWord(word.text)))
    return { words: decided(words), earlierWords: [...new Set(before)] }
  }
  const ofClass: ForWhom = { list: own, whose: '', of: week => week }
  const { words: old, ...before } = comingBack(review, ofClass)
  const words = [...own, ...old]
  const fromPlan = new Map([...fromClass, ...words.map(word => [sameWord(word.text), plain(word)] as const)])
  const withOld = ({ moreWords, review: ownReview, ...group }: ReadGroup): PlanGroup => {
    const ownWords = decided([...group.words, ...(moreWords ?? [])], fromPlan)
    const hasOwn = moreWords === undefined && group.words.length > 0
    if (!hasOwn && ownReview === undefined)
      return { ...group, words: moreWords === undefined ? [] : eachWordOnce([...words, ...ownWords]) }
    const list = hasOwn ? ownWords : eachWordOnce([...own, ...ownWords])
    const setting = ownReview === undefined ? review : { ...withoutNone(review), ...ownReview }
    const of = (week: EarlierWeek) => weekOfGroup(week, group.name, ownReview?.from !== undefined)
    const { words: back, ...beforeGroup } = comingBack(setting, {
      list,
      whose: ` of the group ${group.name}`,
      of,
    })
    return { ...group, words: [...list, ...back], ...beforeGroup }
  }
  return withProblems({ words, groups: groups.map(withOld), ...before }, problems)
}

/** Old words that come back, and all words of the weeks from which they do. */
interface ComingBack {
  readonly words: readonly PlanWord[]
  readonly earlierWords?: readonly string[]
}

interface ForWhom {
  /** This week's own words. */
  readonly list: readonly PlanWord[]
  /** ` of the group Otters`; empty for the class. */
  readonly whose: string
  readonly of: (week: EarlierWeek) => WeekOfWords
}

/** In lists that the group itself names, the class's words are its own where nothing else is said. */
function weekOfGroup(week: EarlierWeek, name: string, isNamedByGroup: boolean): WeekOfWords {
  const words = week.groups.get(foldName(name))
  return { name: week.name, words: words ?? (isNamedByGroup ? week.words : []) }
}

/** What a group that wants words back takes over from a plan that wants none: nothing. */
function withoutNone(review: ReviewSetting | undefined): Partial<ReviewSetting> {
  return review === undefined || review.from === 'none' ? {} : review
}

/** A word of a group that is the class's old one is the group's own. */
function plain({ cameBack: _, ...word }: PlanWord): PlanWord {
  return word
}

function noWeeks(place: Place): Problem {
  return errorAt(
    place,
    'it does not say from which weeks words come back',
    'Name them, such as review: [week-1.yaml, week-2.yaml]; or give the class file its weeks:.',
  )
}

function tooFew({
  words,
  wanted,
  share,
  whose,
  place,
}: {
  readonly words: readonly PlanWord[]
  readonly wanted: number
  readonly share: Share
  readonly whose: string
  readonly place: Place
}): Problem {
  const due = ['no word', '1 word'][words.length] ?? `${words.length} words`
  return warningAt(
    place,
    `${due}${whose} can come back this week, of the ${wanted} that a share of ${share.text} comes to`,
    `Name more earlier weeks, or ask for a smaller share: ${dueInWords}.`,
  )
}
