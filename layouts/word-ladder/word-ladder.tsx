import type { Size } from '../../src/geometry.js'
import { textRow } from '../../src/pieces/parts/table-rows.js'
import { choice, option, text, wholeNumber } from '../../src/plan/values/options.js'
import type { CardSet } from '../../src/sets/card-set.js'
import { MOST_STEPS } from '../../src/sets/games/ladder-web.js'
import { wordLadders } from '../../src/sets/games/word-ladder.js'
import { grownUpPages } from '../grown-up-pages.js'
import { howToPlayPages } from '../how-to-play.js'
import { defineLayout, type PageFace, type RequestWith, type RoomierOptions } from '../layout.js'
import { knownWords } from './known-words.js'
import { ladderAnswers } from './ladder-answers.js'
import { ladderFaces } from './ladder-face.js'
import { type LadderLook, toldOf } from './ladder-rows.js'

const options = {
  ladders: option('how many ladders', wholeNumber(1, 40, undefined), {
    example: '6',
    usual: '4, as far as the words lead to as many; 1 with from or to',
  }),
  steps: option(
    'how many sounds are changed from the first word to the last',
    wholeNumber(2, MOST_STEPS, undefined),
    {
      example: '3',
      usual: '4, or as many as the words allow',
    },
  ),
  from: option('the word that each ladder begins with', text(undefined, 30), {
    example: 'reed',
    usual: 'words of the list',
  }),
  to: option('the word that each ladder ends with', text(undefined, 30), {
    example: 'seal',
    usual: 'words of the list, where one is in reach',
  }),
  level: option(
    'easier shows which sound changes, and to which letters',
    choice(['easier', 'harder'], 'easier'),
    {
      example: 'harder',
    },
  ),
  'clues are': option('how the children are told the clues', choice(['printed', 'read aloud'], undefined), {
    example: 'read aloud',
    usual: 'printed, unless large print leaves no room for them',
  }),
}

type LadderRequest = RequestWith<typeof options>

/** From a word to another by changing one sound at a time. */
export const wordLadder = defineLayout({
  kind: 'pieces',
  name: 'word-ladder',
  summary:
    'from one of your words to another by changing one sound at each step, with a clue or what changes; two levels, answers',
  inWeek: { day: 'practice', given: 'each child', yourList: 'clues to read aloud' },
  options,
  marks: 'none',
  perSheet: { columns: 1, rows: 2 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: ({ words, item, options, itemName, plan }) =>
    wordLadders({
      words,
      known: knownWords(plan.accent),
      ladders: options.ladders,
      steps: options.steps,
      from: options.from,
      to: options.to,
      copies: item.copies,
      seed: plan.seed,
      label: itemName,
      place: item.place,
    }),
  roomier: cluesReadAloud,
  faces: (request, set, size) => ladderFaces(request, set, size, lookOf(request)),
  pages: ladderPages,
})

function lookOf({ options }: LadderRequest): LadderLook {
  return { level: options.level, readAloud: options['clues are'] === 'read aloud' }
}

function cluesReadAloud({ options }: LadderRequest): readonly RoomierOptions<LadderRequest['options']>[] {
  const given = options['clues are']
  if (given === 'read aloud') return []
  return [
    { options: { 'clues are': 'read aloud' }, says: 'clues are: read aloud', open: given === undefined },
  ]
}

function ladderPages(request: LadderRequest, set: CardSet, room: Size): readonly PageFace[] {
  const { type, measure, options } = request
  const look = lookOf(request)
  const style = { sizeMm: type.adultTextMm }
  const clues = set.cards
    .filter(({ copy }) => copy === 1)
    .flatMap(({ number, ladder }) =>
      ladder!.map((rung, index) =>
        textRow(
          index === 0
            ? `Ladder ${number} begins with ${rung.word.text}.`
            : `Step ${index}: ${toldOf(rung, options.level)}`,
          { style, widthMm: room.widthMm, measure },
        ),
      ),
    )
  return [
    ...(look.readAloud
      ? grownUpPages(request, { kind: 'list', what: 'clues to read aloud', rows: clues, room })
      : []),
    ...howToPlayPages(
      request,
      {
        play: [
          'Say the word at the top slowly. Listen to each sound.',
          look.readAloud
            ? 'Listen to the clue for the next line.'
            : 'Go to the next line. Read the clue beside it.',
          options.level === 'easier'
            ? 'Change one sound: the thick box shows which. Say the new word and write it.'
            : 'Change one sound. Say the new word and write it.',
          'Go on down. Your last step makes the word at the bottom.',
        ],
        prepare: 'one sheet for each child or pair, cut apart, and a pencil; copies prints more.',
        help: 'a small box stands for each sound that stays, the thick one for the sound that changes. Two letters may spell one sound, so more than one letter may change. The answer page has all words; another way down is right too, if each step changes one sound and makes a word.',
        easier:
          'say the new word for the child to spell, or lay the word above with letter tiles and change it.',
        harder:
          options.level === 'easier'
            ? 'print it with level: harder, which shows what changes only where there is no clue.'
            : 'cover the clues, or let the children make a ladder of their own from another word.',
      },
      room,
    ),
    ...grownUpPages(request, {
      kind: 'answers',
      what: 'answers',
      rows: ladderAnswers(request, set, room.widthMm),
      room,
    }),
  ]
}
