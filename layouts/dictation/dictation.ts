import { succeed } from '../../src/outcomes.js'
import { type Problem, warningAt } from '../../src/problems.js'
import { cardId } from '../../src/sets/card-id.js'
import type { Card } from '../../src/sets/card-set.js'
import { defineLayout } from '../layout.js'
import { dictationFaces } from './dictation-face.js'
import {
  type DictationRequest,
  dictationOptions,
  dictationsPerSheet,
  inMoreParts,
  partsOf,
  sentenceOf,
  sheetsFor,
} from './dictation-options.js'
import { dictationPages } from './dictation-pages.js'

/** Numbered lines for the words and sentences that a teacher reads out, with what she reads, counts and keeps. */
export const dictation = defineLayout({
  kind: 'pieces',
  name: 'dictation',
  summary:
    'numbered lines for the words that you read out, with your list, the points and a record of the class',
  inWeek: { day: 'check', given: 'each child', yourList: 'class record' },
  options: dictationOptions,
  marks: 'none',
  perSheet: dictationsPerSheet.usual,
  perSheetLarge: dictationsPerSheet.large,
  set: request => {
    const { words, item } = request
    const of = sheetsFor(request)
    const parts = partsOf(request)
    const piecesOf = (number: number, copy: number): readonly Card[] =>
      parts.map((part, index) => ({
        kind: 'board',
        number,
        copy,
        words: part.words,
        ...(parts.length === 1
          ? { id: cardId({ prefix: 'board', number, copy, of }) }
          : {
              id: cardId({ prefix: 'board', number, copy, of, part: index + 1 }),
              part: { number: index + 1, of: parts.length },
            }),
      }))
    const copiesOf = (number: number): readonly Card[] =>
      Array.from({ length: item.copies }, (_, index) => piecesOf(number, index + 1)).flat()
    const value = {
      cards: Array.from({ length: of }, (_, index) => copiesOf(index + 1)).flat(),
      answerData: words.map((word, index) => {
        const sentence = sentenceOf(request, word)
        return {
          prompt: String(index + 1),
          answer: word.text,
          ...(sentence === undefined ? {} : { sentence }),
        }
      }),
    }
    return succeed(value, withoutTheirWord(request))
  },
  faces: dictationFaces,
  roomier: inMoreParts,
  pages: dictationPages,
})

/** Sentences that do not hold the word which they are for, as it is written. */
function withoutTheirWord(request: DictationRequest): readonly Problem[] {
  const without = request.words.filter(word => {
    const sentence = sentenceOf(request, word)
    return sentence !== undefined && !wordsIn(sentence).includes(word.text.toLowerCase())
  })
  if (without.length === 0) return []
  const named = without.map(({ text }) => `"${text}"`).join(', ')
  return [
    warningAt(
      request.item.place,
      `the sentence of ${named} does not hold the word itself`,
      'Write a sentence in which the word stands as the children are to spell it.',
    ),
  ]
}

function wordsIn(sentence: string): readonly string[] {
  return sentence.toLowerCase().match(/\p{L}+(?:['’-]\p{L}+)*/gu) ?? []
}
