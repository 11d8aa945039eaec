/** `marks:`, what is marked and how, in the order in which the key shows it. */
import { errorAt, type Outcome, type Problem } from '../problems.js'
import { readColor } from './colors.js'
import { type Entry, type MapEntry, misfit, type Reader } from './entry.js'
import { readKeys } from './keys.js'
import { choiceReader, nameReader } from './names.js'
import { andThen, fail, outcomeOf, present, succeed, together } from './outcomes.js'
import { whereArePatterns } from './pattern-override.js'
import type { MarkTarget, PlanMark } from './plan.js'
import { textReader } from './texts.js'
import type { Vocabulary } from './vocabulary.js'
import { longestWord, sameWord, wordText } from './word-text.js'

const form = 'Begin each mark with "- pattern:" and a name, or with "- letters:" and the letters.'

type MarkNames = Pick<Vocabulary, 'patterns' | 'lines' | 'outlines'>

/** The list may be empty, as when every mark is commented out. */
export function readMarks(entry: Entry, names: MarkNames): Outcome<readonly PlanMark[]> {
  if (entry.kind === 'empty') return succeed([])
  if (entry.kind !== 'list') return misfit(entry, 'a list of marks', form)
  const marks = together(entry.items.map(item => readMark(item, names)))
  return andThen(marks, list => outcomeOf(list, repeatedTargets(list)))
}

function readMark(entry: Entry, { patterns, lines, outlines }: MarkNames): Outcome<PlanMark> {
  if (entry.kind !== 'map') return misfit(entry, 'a mark', form)
  const keys = readKeys(entry, {
    what: 'a mark',
    readers: {
      pattern: nameReader({ what: 'a pattern', known: patterns, where: whereArePatterns }),
      letters: readLetters,
      place: choiceReader('a place', ['beginning', 'middle', 'end']),
      line: nameReader({ what: 'a line', known: lines, where: '`oaktag list lines` shows all of them.' }),
      outline: nameReader({
        what: 'an outline',
        known: outlines,
        where: '`oaktag list outlines` shows all of them.',
      }),
      color: readColor,
      label: textReader('a label', 60),
      tag: readTag,
      descenders: choiceReader('a way with descenders', ['clear', 'break']),
    },
    synonyms: { colour: 'color' },
  })
  return andThen(keys, ({ values: { pattern, letters, place, ...style } }) =>
    andThen(target(entry, pattern, letters), what =>
      succeed({ place: entry.place, target: { ...what, ...present({ place }) }, ...style }),
    ),
  )
}

function target(
  map: MapEntry,
  pattern: string | undefined,
  letters: string | undefined,
): Outcome<MarkTarget> {
  if (pattern !== undefined && letters === undefined) return succeed({ kind: 'pattern', pattern })
  if (letters !== undefined && pattern === undefined) return succeed({ kind: 'letters', letters })
  const message =
    pattern === undefined ? 'a mark without "pattern" or "letters"' : 'a mark with "pattern" and "letters"'
  return fail(
    errorAt(map.place, message, 'Give each mark one of the two, and make two marks of it for both.'),
  )
}

const readLetters: Reader<string> = entry => {
  const advice = 'Write letters such as ee, or a_e for letters with another between.'
  if (entry.kind !== 'text') return misfit(entry, 'letters', advice)
  const parts = entry.text.split('_')
  const fine = parts.length <= 2 && parts.every(part => wordText(part, entry.place).ok)
  if (fine && entry.text.length <= longestWord) return succeed(sameWord(entry.text))
  return fail(errorAt(entry.place, `"${entry.text}" is not letters of a word`, advice))
}

const readTag: Reader<string> = entry => {
  const advice = 'Write one to three letters or digits.'
  if (entry.kind !== 'text') return misfit(entry, 'a tag', advice)
  const fine = /^[^\s\p{C}]+$/u.test(entry.text) && [...entry.text].length <= 3
  return fine
    ? succeed(entry.text)
    : fail(errorAt(entry.place, `the tag "${entry.text}" is too long`, advice))
}

function repeatedTargets(marks: readonly PlanMark[]): readonly Problem[] {
  const first = new Map<string, PlanMark>()
  return marks.flatMap(mark => {
    const identity = JSON.stringify(mark.target)
    const earlier = first.get(identity)
    if (!earlier) {
      first.set(identity, mark)
      return []
    }
    const name = mark.target.kind === 'pattern' ? mark.target.pattern : mark.target.letters
    const message = `"${name}" is marked twice, on line ${earlier.place.line} and on line ${mark.place.line}`
    return [errorAt(mark.place, message, 'Join the two marks: one mark may have a line and an outline.')]
  })
}
