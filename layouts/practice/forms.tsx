/** Words and what becomes of them: one and more than one, a base with its ending. */
import { lazily } from '../../src/lazily.js'
import { mm } from '../../src/pieces/faces/face.js'
import type { Row } from '../../src/pieces/faces/flow-page.js'
import { rowsHeight } from '../../src/pieces/faces/flow-page.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { breakLines, linesHeight, type TextStyle } from '../../src/pieces/text/break-lines.js'
import { Lines } from '../../src/pieces/text/lines.js'
import type { Place } from '../../src/problems.js'
import { endingPractice } from '../../src/sets/practice/endings.js'
import {
  type AddWords,
  type PluralRule,
  pluralAsked,
  pluralPractice,
  ruleToMeet,
} from '../../src/sets/practice/plurals.js'
import type { PracticeItem } from '../../src/sets/practice/practice.js'
import { offeredTexts, openOfferedWords } from '../../src/words/find/offered-file.js'
import { installedLexicon } from '../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../src/words/study.js'
import type { Word } from '../../src/words/word.js'
import { childTextMm, type PracticeKind, type PromptsOnPage } from './practice-kind.js'
import type { PracticeRequest } from './practice-options.js'
import {
  columnHeads,
  lineAt,
  linePart,
  mostWordMm,
  type PromptColumns,
  promptRow,
  type RowPart,
  rowHeightFor,
  wordColumns,
  wordPart,
} from './prompt-row.js'

export const plurals: PracticeKind = {
  title: 'One and more than one',
  task: () => 'Read the word. Write it so that it means more than one.',
  practice: ({ words, options, item }) => {
    const practice = pluralPractice({
      words,
      add: options['add words'] satisfies AddWords,
      study: noun => studiedAlone(noun, item.place),
      nounOf: (rule, taken) => nounToAdd(rule, taken, item.place),
    })
    return options.sorted ? practice : { ...practice, items: inOrderOf(words, practice.items) }
  },
  nothing: {
    message: 'no word of the list is a noun with one plural in use, so there are no plurals to practise',
    advice: 'Add nouns to its words, or practise something else: endings, clues, sounds, copy.',
  },
  rows: (request, prompts) =>
    formRows(request, prompts, {
      heads: ['one', 'more than one'],
      columns: wordColumns(request, prompts),
      prompt: (item, place) => wordPart(request, item.word, place),
    }),
  heads: ['one', 'more than one'],
  about: (_, { items }) => {
    const added = items.flatMap(({ prompt, added }) => (added === true ? [prompt] : []))
    return added.length === 0
      ? []
      : [`Not from the list, but chosen from the words that find offers: ${added.join(', ')}.`]
  },
}

export const endings: PracticeKind = {
  title: 'Add the ending',
  task: () => 'Put the word and its ending together. Write the new word.',
  practice: ({ words, options, item }) => {
    const practice = endingPractice({
      words,
      study: base => studiedAlone(base, item.place),
      lexicon: installedLexicon(),
      isOffered: text => offeredTexts().has(text),
    })
    return options.sorted ? practice : { ...practice, items: inOrderOf(words, practice.items) }
  },
  nothing: {
    message:
      'no word of the list takes -s, -ed, -ing, -er or -est by a rule, so there are no endings to practise',
    advice: 'Add verbs, nouns or adjectives without an ending to its words, or practise something else.',
  },
  rows: (request, prompts) => {
    const style: TextStyle = { sizeMm: childTextMm(request) }
    const endingOf = ({ prompt }: PracticeItem) => prompt.slice(prompt.indexOf(' + ') + 1)
    const endingMm = Math.max(...prompts.items.map(item => request.measure(endingOf(item), style.sizeMm))) + 2
    const columns = wordColumns(request, prompts, endingMm)
    const wordMm = Math.min(columns.promptMm - endingMm, widestWordMm(request, prompts))
    return formRows(request, prompts, {
      heads: ['word and ending', 'new word'],
      columns,
      prompt: (item, place) => {
        const word = wordPart(request, item.word, { ...place, widthMm: wordMm })
        const name = `${place.name} ending`
        return {
          slots: {
            ...word.slots,
            [name]: { kind: 'text', levelWith: place.name, lines: [endingOf(item)], style },
          },
          tree: (
            <div style={{ display: 'flex', width: '100%', height: '100%' }}>
              {word.tree}
              <Slot name={name} style={{ width: mm(endingMm), height: '100%', flexShrink: 0 }} />
            </div>
          ),
        }
      },
    })
  },
  heads: ['word and ending', 'new word'],
  about: () => [
    'Asked are only forms that a rule makes and that have one spelling: ran, thought and travelled are not.',
  ],
}

/** What the words take at their largest, so that their endings stand close behind them. */
function widestWordMm(request: PracticeRequest, { items, leastWord }: PromptsOnPage): number {
  const widest = Math.max(...items.map(({ word }) => request.measure(word.text, mostWordMm(request))))
  return Math.max(widest + BESIDE_WORD_MM, leastWord.widthMm)
}

const BESIDE_WORD_MM = 4

/** A word that no plan holds. */
function studiedAlone(text: string, place: Place): Word | undefined {
  const studied = studyWord({ text, place, overrides: {} }, installedLexicon())
  return studied.ok ? studied.value : undefined
}

/** Of the words that `find` offers, those with a meaning that a child knows, and short. */
const MOST_SOUNDS = 5
const MOST_SYLLABLES = 2

/** They are read once a run: a page asks for a dozen nouns, one after the other. */
const nounsToAdd = lazily(() =>
  openOfferedWords().flatMap(({ text, soundCount, syllableCount, sortable }) => {
    if (soundCount > MOST_SOUNDS || syllableCount > MOST_SYLLABLES) return []
    const { partsOfSpeech, plural } = sortable
    return partsOfSpeech[0] === 'noun' && plural !== null ? [{ text, rule: ruleToMeet(plural.rule) }] : []
  }),
)

/** The most familiar noun whose plural is of the rule. */
function nounToAdd(rule: PluralRule, taken: ReadonlySet<string>, place: Place): Word | undefined {
  for (const noun of nounsToAdd()) {
    if (noun.rule !== rule || taken.has(noun.text)) continue
    const studied = studiedAlone(noun.text, place)
    if (studied?.clueDraft === undefined) continue
    const found = pluralAsked(studied)
    if ('asked' in found && found.asked.rule === rule) return studied
  }
  return undefined
}

function inOrderOf(words: readonly Word[], items: readonly PracticeItem[]): readonly PracticeItem[] {
  const places = new Map(words.map((word, place) => [word, place]))
  const placeOf = ({ word, from = word }: PracticeItem) => places.get(from) ?? words.length
  return items.toSorted((a, b) => placeOf(a) - placeOf(b))
}

interface FormPage {
  readonly heads: readonly [prompt: string, answer: string]
  readonly columns: PromptColumns
  readonly prompt: (
    item: PracticeItem,
    place: { readonly name: string; readonly heightMm: number; readonly widthMm: number },
  ) => RowPart
}

/** Prompts with a line each, under the names of their rules where the page is sorted by rule. */
function formRows(
  request: PracticeRequest,
  { items, from, room, fillMm, leastWord }: PromptsOnPage,
  { heads, columns, prompt }: FormPage,
): readonly Row[] {
  const { numberMm, promptMm, gapMm, answerMm, stacked } = columns
  const head = stacked
    ? []
    : [
        columnHeads(request, [
          { text: '', widthMm: numberMm },
          { text: heads[0], widthMm: promptMm + gapMm },
          { text: heads[1], widthMm: answerMm },
        ]),
      ]
  const rules = request.options.sorted ? [...new Set(items.map(({ rule }) => rule))] : [undefined]
  const headings = rules.map(rule => (rule === undefined ? [] : [ruleRow(request, rule, room.widthMm)]))
  const fixedMm = rowsHeight([...head, ...headings.flat()])
  const heightMm = rowHeightFor(request, {
    count: items.length * (stacked ? 2 : 1),
    roomMm: fillMm - fixedMm,
    leastMm: leastWord.heightMm,
  })
  return [
    ...head,
    ...rules.flatMap((rule, index) => [
      ...headings[index]!,
      ...items.flatMap((item, place) => {
        if (rule !== undefined && item.rule !== rule) return []
        const number = from + place
        const name = `word ${number}`
        return promptRow(request, {
          number,
          columns,
          promptHeightMm: heightMm,
          answerHeightMm: heightMm,
          prompt: prompt(item, { name, heightMm, widthMm: promptMm }),
          answer: stacked ? lineAt(heightMm) : linePart(`line ${number}`, name),
          levelWith: name,
        })
      }),
    ]),
  ]
}

const ABOVE_RULE = 0.5

/** The name of a rule over its words. */
function ruleRow(request: PracticeRequest, rule: string, widthMm: number): Row {
  const style: TextStyle = { sizeMm: childTextMm(request), weight: 700, color: '#404040' }
  const lines = breakLines(ruleForChildren(rule), widthMm, style, request.measure)
  return {
    heightMm: linesHeight(lines.length, style.sizeMm) + style.sizeMm * ABOVE_RULE,
    keepsWithNext: true,
    tree: (
      <div style={{ display: 'flex', width: '100%', height: '100%', alignItems: 'flex-end' }}>
        <Lines lines={lines} style={style} />
      </div>
    ),
  }
}

function ruleForChildren(rule: string): string {
  switch (rule) {
    case 'y to i':
      return 'y to i, then the ending'
    case 'ie to y':
      return 'ie to y, then the ending'
    case 'add k':
      return 'a k before the ending'
    case 'double the last letter':
    case 'drop the e':
      return `${rule}, then the ending`
    case 'irregular ending':
      return 'an ending of its own'
    case 'as the teacher writes it':
      return 'other words'
    default:
      return rule
  }
}
