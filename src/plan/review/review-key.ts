/** `review:`, the words of earlier weeks that come back. */
import { andThen, present, succeed } from '../../outcomes.js'
import type { Outcome, Place } from '../../problems.js'
import { key, reading, type ValueReader } from '../keys/key.js'
import type { KeysTaken, Takes } from '../keys/takes.js'
import { yesNo } from '../values/options.js'
import type { WordContext } from '../words/word-entry.js'
import { wordTaken } from '../words/word-entry.js'
import { type Entry, misfit } from '../yaml/entry.js'
import { readKeys } from '../yaml/keys.js'
import type { EarlierWeek } from './earlier-plan.js'
import { listForms, readEarlierWeeks } from './earlier-weeks.js'
import { readShare, type Share, usualShare } from './share.js'

export interface ReviewSetting {
  readonly place: Place
  /** `none`: no words come back. Left out: the weeks of the class file, or of the plan that a group stands in. */
  readonly from?: 'none' | readonly EarlierWeek[]
  readonly share?: Share
}

const form = `${listForms} Or yes for the weeks of the class file, or no.`

/** One week or a list of them. */
function weeksTaken(context: WordContext): Takes {
  const path: Takes = {
    kind: 'form',
    what: 'the path of an earlier plan or word list',
    samples: ['week-1.yaml', 'week-2.txt'],
    pattern: String.raw`\.(?:ya?ml|txt|csv)$`,
  }
  const inline: Takes = { kind: 'list', of: wordTaken(context), alone: false, empty: false }
  return { kind: 'list', of: { kind: 'any of', ways: [path, inline] }, alone: false, empty: false }
}

const yesOrNo = yesNo(true)
const share = (beside: string) =>
  key('how much of the whole list are old words', readShare, { usual: usualShare.text, beside })
const shareOfClass = share('')

function reviewKeys(context: WordContext) {
  return {
    from: key(
      'the earlier weeks, in the order in which they were taught, last week the last',
      reading(weeksTaken(context), entry => readWeeks(entry, context)),
      { example: '[week-1.yaml, week-2.yaml]', usual: 'the weeks of the class file' },
    ),
    share: share('from: [week-1.yaml, week-2.yaml]'),
  }
}

export function reviewReader(context: WordContext): ValueReader<ReviewSetting> {
  const keys: KeysTaken = { kind: 'keys', what: 'a review', keys: () => reviewKeys(context), needed: [] }
  const takes: Takes = { kind: 'any of', ways: [weeksTaken(context), yesOrNo.takes, keys] }
  return reading(takes, (entry): Outcome<ReviewSetting> => {
    const { place } = entry
    if (entry.kind === 'map') {
      const read = readKeys(entry, { what: 'a review', readers: reviewKeys(context) })
      return andThen(read, ({ values }) => succeed({ place, ...present(values) }))
    }
    const yes = yesOrNo.read(entry)
    if (yes.ok) return succeed(yes.value ? { place } : { place, from: 'none' })
    return andThen(readWeeks(entry, context), from => succeed({ place, from }))
  })
}

/** Of a class file, whose weeks are those that come back. */
export const readClassReview: ValueReader<ReviewSetting> = (() => {
  const keys: KeysTaken = {
    kind: 'keys',
    what: 'the review of a class',
    keys: () => ({ share: shareOfClass }),
    needed: ['share'],
  }
  return reading({ kind: 'any of', ways: [yesOrNo.takes, keys] }, (entry): Outcome<ReviewSetting> => {
    const { place } = entry
    if (entry.kind === 'map')
      return andThen(
        readKeys(entry, { what: 'the review of a class', readers: { share: shareOfClass } }),
        ({ values }) => succeed({ place, ...present(values) }),
      )
    return andThen(yesOrNo.read(entry), yes => succeed(yes ? { place } : { place, from: 'none' }))
  })
})()

function readWeeks(entry: Entry, context: WordContext): Outcome<readonly EarlierWeek[]> {
  if (entry.kind === 'text') return readEarlierWeeks([entry], context)
  if (entry.kind !== 'list' || entry.items.length === 0) return misfit(entry, 'earlier weeks', form)
  return readEarlierWeeks(entry.items, context)
}
