/** `marks:`, what is marked and how, in the order in which the key shows it. */

import { andThen, fail, failWith, outcomeOf, present, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome, type Problem } from '../../problems.js'
import { key, reading, type ValueReader } from '../keys/key.js'
import type { KeysTaken, Takes } from '../keys/takes.js'
import { tooMany } from '../most-entries.js'
import type { MarkPlace, MarkTarget, PlanMark, WordFeature } from '../plan.js'
import { readColor } from '../values/colors.js'
import { foldName } from '../values/fold-name.js'
import { choiceReader, nameReader } from '../values/names.js'
import { yesNo } from '../values/options.js'
import { otherNames } from '../values/other-names.js'
import { repetitions } from '../values/repetitions.js'
import { textReader } from '../values/texts.js'
import type { Vocabulary } from '../vocabulary.js'
import { whereArePatterns } from '../words/pattern-override.js'
import { longestWord, sameWord, wordText } from '../words/word-text.js'
import { type Entry, misfit } from '../yaml/entry.js'
import { readKeys } from '../yaml/keys.js'
import { markForm, markRules } from './mark-rules.js'
import { wordFeatureKeys, wordFeatures } from './word-target.js'

/** The list may be empty, as when every mark is commented out. */
export function marksReader(names: Vocabulary): ValueReader<readonly PlanMark[]> {
  const takes: Takes = { kind: 'list', of: markTaken(names), alone: false, empty: true }
  return reading(takes, entry => readMarks(entry, names))
}

function readMarks(entry: Entry, names: Vocabulary): Outcome<readonly PlanMark[]> {
  if (entry.kind === 'empty') return succeed([])
  if (entry.kind !== 'list') return misfit(entry, 'a list of marks', markForm)
  const tooLong = tooMany('marks', entry.items, entry.place)
  if (tooLong.length > 0) return failWith(tooLong)
  const outcomes = entry.items.map(item => readMark(item, names))
  const good = outcomes.flatMap(outcome => (outcome.ok ? [outcome.value] : []))
  const marks = together(outcomes)
  const problems = [...marks.problems, ...repeatedTargets(good)]
  return marks.ok ? outcomeOf(marks.value, problems) : failWith(problems)
}

function readMark(entry: Entry, names: Vocabulary): Outcome<PlanMark> {
  if (entry.kind !== 'map') return misfit(entry, 'a mark', markForm)
  const keys = readKeys(entry, {
    what: 'a mark',
    readers: markKeys(names),
    synonyms: markSynonyms,
    others: otherNames('key', names),
    rules: markRules(entry),
  })
  return andThen(keys, ({ values }) => {
    const { line, outline, color, label, tag, descenders, link } = values
    const style = present({ line, outline, color, label, tag, descenders, link })
    return succeed({ place: entry.place, target: targetOf(values), ...style })
  })
}

const markSynonyms = { colour: 'color' } as const

function markKeys(names: Vocabulary) {
  const { lines, outlines, plurals } = names
  return {
    pattern: key('the pattern to mark', patternReader(names), {
      example: 'vowel-team',
      beside: '',
    }),
    letters: key('exact letters to mark, wherever they stand', readLetters, {
      example: 'ea',
      beside: '',
    }),
    ...wordFeatureKeys(plurals),
    place: key(
      'where in the word the letters or the pattern must stand',
      choiceReader('a place', ['beginning', 'middle', 'end'], {}, otherNames('place', names)),
      { usual: 'anywhere' },
    ),
    line: key(
      'a line under the letters, or through them',
      nameReader({
        what: 'a line',
        known: lines,
        where: '`oaktag list lines` shows all of them.',
        list: 'lines',
        others: otherNames('line', names),
      }),
      { example: 'wavy', usual: 'the next black style that no other mark has' },
    ),
    outline: key(
      'an outline round the letters',
      nameReader({
        what: 'an outline',
        known: outlines,
        where: '`oaktag list outlines` shows all of them.',
        list: 'outlines',
        others: otherNames('outline', names),
      }),
      { example: 'rounded', usual: 'none, where there is a line' },
    ),
    color: key('the colour of the mark', readColor, { usual: 'black' }),
    label: key('your words for it in the key', textReader('a label', 60), {
      example: 'ea, one team',
      usual: 'its name',
    }),
    tag: key('small letters beside the mark', readTag),
    descenders: key(
      'whether a line stays clear below g, p and y or breaks for them',
      choiceReader('a value of "descenders"', ['clear', 'break']),
      { example: 'break', usual: 'clear' },
    ),
    link: key(
      'what joins the two letters of a split team such as a_e',
      choiceReader('a link', ['bracket', 'arc']),
      { example: 'arc', usual: 'bracket', beside: 'letters: a_e' },
    ),
    'inside blends': key(
      'whether a digraph inside a blend is marked too (the sh of shrub); with the pattern consonant-digraph alone',
      reading({ kind: 'yes or no' }, yesNo(undefined).read),
      { example: 'yes', usual: 'no', beside: 'pattern: consonant-digraph' },
    ),
  }
}

export function markTaken(names: Vocabulary): KeysTaken {
  return {
    kind: 'keys',
    what: 'a mark',
    keys: () => markKeys(names),
    needed: [],
    beside: 'letters: ea',
    synonyms: markSynonyms,
  }
}

type TargetKeys = Partial<Readonly<Record<'pattern' | 'letters' | WordFeature, string>>> & {
  readonly place?: MarkPlace
  readonly 'inside blends'?: boolean | undefined
}

/** The rules have seen to it that there is one of them. */
function targetOf(keys: TargetKeys): MarkTarget {
  const { pattern, letters, place, 'inside blends': insideBlends } = keys
  const where = present({ place })
  if (pattern !== undefined) return { kind: 'pattern', pattern, ...where, ...present({ insideBlends }) }
  const feature = wordFeatures.find(key => keys[key] !== undefined)
  if (feature !== undefined) return { kind: 'word', feature, value: keys[feature]! }
  return { kind: 'letters', letters: letters!, ...where }
}

/** A name; for letters, which are no pattern by themselves, the key that takes them. */
function patternReader(names: Vocabulary): ValueReader<string> {
  const { patterns } = names
  const read = nameReader({
    what: 'a pattern',
    known: patterns,
    where: whereArePatterns,
    list: 'patterns',
    others: otherNames('pattern', names),
  })
  return reading(read.takes, entry => {
    const typed = entry.kind === 'text' ? sameWord(entry.text) : ''
    const outcome = read(entry)
    if (outcome.ok || !/^[a-z]{1,4}$|^[a-z]_[a-z]$/.test(typed)) return outcome
    if (otherNames('pattern', names)().has(foldName(typed))) return outcome
    const message = `"${typed}" is no pattern but letters`
    return fail(errorAt(entry.place, message, `Write letters: ${typed} instead of pattern: ${typed}.`))
  })
}

const lettersTaken: Takes = {
  kind: 'form',
  what: 'letters, or letters with a low line for those between',
  samples: ['ea', 'a_e'],
  pattern: String.raw`^[^\s\d_]+(?:_[^\s\d_]+)?$`,
}

const readLetters = reading<string>(lettersTaken, entry => {
  const advice = 'Write letters such as ee, or a_e for letters with another between.'
  if (entry.kind !== 'text') return misfit(entry, 'letters', advice)
  const parts = entry.text.split('_')
  const fine = parts.length <= 2 && parts.every(part => wordText(part, entry.place).ok)
  if (fine && entry.text.length <= longestWord) return succeed(sameWord(entry.text))
  return fail(errorAt(entry.place, `"${entry.text}" is not letters of a word`, advice))
})

const tagTaken: Takes = {
  kind: 'form',
  what: 'one to three letters or signs',
  samples: ['e', 'n'],
  pattern: String.raw`^\S{1,3}$`,
  plain: ['number'],
}

const readTag = reading<string>(tagTaken, entry => {
  const advice = 'Write one to three letters or digits.'
  if (entry.kind !== 'text') return misfit(entry, 'a tag', advice)
  const fine = /^[^\s\p{C}]+$/u.test(entry.text) && [...entry.text].length <= 3
  return fine
    ? succeed(entry.text)
    : fail(errorAt(entry.place, `the tag "${entry.text}" is too long`, advice))
})

function targetName(target: MarkTarget): string {
  switch (target.kind) {
    case 'pattern':
      return target.pattern
    case 'letters':
      return target.letters
    case 'word':
      return `${target.feature}: ${target.value}`
  }
}

function repeatedTargets(marks: readonly PlanMark[]): readonly Problem[] {
  const standing = ({ target }: PlanMark) =>
    target.kind === 'pattern' ? { ...target, insideBlends: undefined } : target
  return repetitions(marks, mark => JSON.stringify(standing(mark))).map(
    ({ item: { place, target }, lines }) => {
      const name = targetName(target)
      const advice = 'Join the two marks: one mark may have a line and an outline.'
      return errorAt(place, `"${name}" is marked twice${lines}`, advice)
    },
  )
}
