import { fail, succeed } from '../../src/outcomes.js'
import { errorAt, type Outcome, type Problem } from '../../src/problems.js'
import type { CardSet } from '../../src/sets/card-set.js'
import { type Practice, practiceAnswers } from '../../src/sets/practice/practice.js'
import { defineLayout, type PageFace } from '../layout.js'
import { clues } from './clue-prompts.js'
import { copy } from './copy-prompts.js'
import { endings, plurals } from './forms.js'
import { partsOfSpeech } from './kinds-of-words.js'
import { marks } from './mark-prompts.js'
import type { PracticeKind } from './practice-kind.js'
import { type PracticeRequest, practiceOptions } from './practice-options.js'
import { practicePages } from './practice-pages.js'
import { sounds } from './sound-prompts.js'

/** A page for ten minutes, with the page of its answers. */
export const practice = defineLayout({
  kind: 'pages',
  name: 'practice',
  summary:
    'a page for ten minutes of plurals, endings, parts of speech, clues, sounds, marks or copying, with its answers',
  inWeek: { day: 'practice', given: 'each child' },
  options: practiceOptions,
  marks: 'none',
  marksSome: ({ practise }) => practise === 'marks',
  set: request => ofItsKind(request, { with: askedIn }),
  pages: (request, room) =>
    ofItsKind(request, {
      with: (kind, own): readonly PageFace[] => {
        const practice = kind.practice(own)
        return practice.items.length === 0 ? [] : practicePages(own, { kind, practice, room })
      },
    }),
})

/** What is done with a kind of practice, whatever it needs to know of its words. */
interface WithKind<T> {
  readonly with: <P extends Practice>(kind: PracticeKind<P>, request: PracticeRequest) => T
}

function ofItsKind<T>(request: PracticeRequest, { with: take }: WithKind<T>): T {
  switch (request.options.practise) {
    case 'plurals':
      return take(plurals, request)
    case 'endings':
      return take(endings, request)
    case 'parts of speech':
      return take(partsOfSpeech, request)
    case 'clues':
      return take(clues, request)
    case 'sounds':
      return take(sounds, request)
    case 'marks':
      return take(marks, request)
    case 'copy':
      return take(copy, request)
  }
}

/** Twenty pages of ten minutes are more than a week has: our own judgement, no source. */
const MOST_ITEMS = 300

function farTooMany({ item }: PracticeRequest, count: number): Problem {
  return errorAt(
    item.place,
    `practice would ask ${count} things, far more than a week has room for`,
    `Name the words to practise with words: up to ${MOST_ITEMS} are asked at once.`,
  )
}

function askedIn<P extends Practice>(kind: PracticeKind<P>, request: PracticeRequest): Outcome<CardSet> {
  const practice = kind.practice(request)
  const { message, advice } = kind.nothing
  if (practice.items.length === 0) return fail(errorAt(request.item.place, message, advice))
  if (practice.items.length > MOST_ITEMS) return fail(farTooMany(request, practice.items.length))
  return succeed({ cards: [], answerData: practiceAnswers(practice) })
}
