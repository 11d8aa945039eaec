/** What the words show that the class has not met: by what is taught, or by the words of the weeks before. */

import { ordinaryPatterns } from '../../src/sets/lesson/lesson-patterns.js'
import { unmetInStudied } from '../../src/words/find/unmet-in-words.js'
import { installedLexicon } from '../../src/words/lexicon/lexicon.js'
import { patternNamed } from '../../src/words/patterns/index.js'
import { plainName } from '../../src/words/patterns/plain-name.js'
import { studyWord } from '../../src/words/study.js'
import type { Word } from '../../src/words/word.js'
import type { LayoutRequest } from '../layout.js'
import { weeksAgoInWords } from '../weeks-ago.js'

interface News {
  readonly heading: string
  /** `silent letters: kn (knee, knot)`, one line a pattern. */
  readonly lines: readonly string[]
}

/** By what is taught, where the class file says it; else by the earlier words; undefined where nothing is known of either. */
export function newToClass(request: LayoutRequest): News {
  const { taught } = request.plan
  return taught === undefined ? newAgainstEarlier(request) : newAgainstTaught(request, taught)
}

function newAgainstTaught(
  { words }: LayoutRequest,
  taught: NonNullable<LayoutRequest['plan']['taught']>,
): News {
  const unmet = unmetInStudied({ taught, words, lexicon: installedLexicon() })
  // A mistake in what is taught is told by whoever reads the plan.
  const patterns = unmet.ok ? unmet.value : []
  return {
    heading: 'New to the class',
    lines: patterns.map(({ pattern, words: shown }) => told(pattern, shown)),
  }
}

function newAgainstEarlier({ words, earlierWords = [], plan, item: { place } }: LayoutRequest): News {
  const heading = 'In no word of the weeks before'
  if (earlierWords.length === 0) return { heading, lines: [] }
  const ways = plan.accent === undefined ? {} : { accent: plan.accent }
  const met = new Set(
    earlierWords.flatMap(text => {
      const studied = studyWord({ text, place, overrides: {} }, installedLexicon(), ways)
      return studied.ok ? shownBy(studied.value).map(key) : []
    }),
  )
  const own = words.filter(({ backAfterWeeks }) => backAfterWeeks === undefined)
  const unmet = own.flatMap(word => shownBy(word).filter(shown => !met.has(key(shown))))
  const patterns = [...new Set(unmet.map(({ pattern }) => pattern))]
  return {
    heading,
    lines: patterns.map(pattern =>
      told(
        pattern,
        unmet.filter(each => each.pattern === pattern),
      ),
    ),
  }
}

interface Shown {
  readonly pattern: string
  readonly letters: string
  readonly word: string
}

function shownBy({ text, patterns }: Word): readonly Shown[] {
  return (
    patterns
      // Of a kind of syllable the letters are the word's own, so all of them would be new.
      .filter(({ pattern }) => !ordinaryPatterns.has(pattern) && patternNamed(pattern)?.scope !== 'syllable')
      .map(({ pattern, letters }) => ({ pattern, letters: letters.toLowerCase(), word: text }))
  )
}

function key({ pattern, letters }: Shown): string {
  return `${pattern} ${letters}`
}

function told(pattern: string, shown: readonly Omit<Shown, 'pattern'>[]): string {
  const byLetters = [...new Set(shown.map(({ letters }) => letters))].map(letters => {
    const own = shown.filter(each => each.letters === letters).map(({ word }) => word)
    return `${letters} (${[...new Set(own)].join(', ')})`
  })
  return `${plainName(pattern)}: ${byLetters.join(', ')}`
}

/** `last week: mud, crab`, the latest week first. */
export function backFromEarlier({ words }: Pick<LayoutRequest, 'words'>): readonly string[] {
  const weeks = [...new Set(words.flatMap(({ backAfterWeeks }) => backAfterWeeks ?? []))].toSorted(
    (a, b) => a - b,
  )
  return weeks.map(week => {
    const own = words.filter(({ backAfterWeeks }) => backAfterWeeks === week)
    return `${weeksAgoInWords(week)}: ${own.map(({ text }) => text).join(', ')}`
  })
}
