import type { Size } from '../../src/geometry.js'
import { tableRows, textRow } from '../../src/pieces/parts/table-rows.js'
import { option, wholeNumber } from '../../src/plan/values/options.js'
import type { CardSet } from '../../src/sets/card-set.js'
import { throwsOf } from '../../src/sets/games/build-dice.js'
import { rollAndBuild as diceOfWords } from '../../src/sets/games/roll-and-build.js'
import { offeredTexts } from '../../src/words/find/offered-file.js'
import { boardRoom } from '../board-room.js'
import { grownUpPages } from '../grown-up-pages.js'
import { howToPlayPages } from '../how-to-play.js'
import { defineLayout, type LayoutRequest, type PageFace, type RequestWith } from '../layout.js'
import { placeNet } from './cube-net.js'
import { dieNets, roomOnFace } from './die-net.js'
import { isUnfit, knownParts } from './known-parts.js'
import { recordSheet } from './record-sheet.js'

const options = {
  sets: option(
    'how many times three dice; further ones build words that those before leave out',
    wholeNumber(1, 6, 1),
    {
      example: '2',
    },
  ),
}

type RollRequest = RequestWith<typeof options>

/** Three dice to fold, whose throws build words: what stands before the vowel, the vowel, what follows. */
export const rollAndBuild = defineLayout({
  kind: 'pieces',
  name: 'roll-and-build',
  summary:
    'three dice to cut out and fold that build your words and as many others as can be; a sheet for real words and not-yet words',
  inWeek: { day: 'centres', given: 'each pair' },
  options,
  marks: 'none',
  perSheet: { columns: 1, rows: 2 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: request => {
    const { words, item, options, itemName, plan, measure, type } = request
    const widestMm = roomOnFace(placeNet(boardRoom(request)).sideMm)
    return diceOfWords({
      words,
      known: knownParts(),
      isKnown: text => offeredTexts().has(text),
      isUnfit,
      fits: letters => measure(letters, type.mainMinimumMm) <= widestMm,
      sets: options.sets,
      copies: item.copies,
      seed: plan.seed,
      label: itemName,
      place: item.place,
    })
  },
  faces: dieNets,
  pages: rollPages,
})

/** As the paper is divided for the nets. */
function sideOf({ item, type }: LayoutRequest, room: Size): number {
  const { division } = item
  if (division.kind === 'card') return placeNet(division.size).sideMm
  const rows = (division.kind === 'count' ? division.down : undefined) ?? (type.large ? 1 : 2)
  return placeNet({ ...room, heightMm: room.heightMm / rows - 8 }).sideMm
}

function rollPages(request: RollRequest, set: CardSet, room: Size): readonly PageFace[] {
  const hasEmpty = set.cards.some(({ die }) => die?.faces.includes(''))
  const record = recordSheet(request, { dieMm: sideOf(request, room), room })
  return [
    ...grownUpPages(request, { kind: 'list', what: 'words that I built', rows: record, room }),
    ...howToPlayPages(
      request,
      {
        play: [
          'Throw the three dice. The black bar shows which goes first, in the middle and last.',
          `Run a finger under the letters and read what they make.${hasEmpty ? ' An empty side adds nothing.' : ''}`,
          'Is it a word? Say it in a sentence and write it under “Real words”.',
          'If not, write it under “Not words yet”. Who has most real words after ten throws?',
        ],
        prepare:
          'one set of three dice for two or three children, one record sheet for each. Print on card, cut along the whole lines, crease the dashed lines, glue the tabs inside. Scissors and glue are for older hands; dice are not for children under three.',
        help: 'the bars stand at the foot of a face and tell which way is up (b, d, p, q and n, u turn into one another). The answer page has the words that the dice can build and that many children know; look a rarer one up in a dictionary. A word that sounds right but is spelled otherwise, such as bote, is not a word yet.',
        easier:
          'lay the last die fixed and throw the other two, or build one of the week’s words and change one die.',
        harder: 'throw once and turn one die of your choice, or say what a not-yet word could mean.',
      },
      room,
    ),
    ...grownUpPages(request, {
      kind: 'answers',
      what: 'answers',
      rows: answerRows(request, set, room),
      room,
    }),
  ]
}

function answerRows(request: RollRequest, set: CardSet, { widthMm }: Size) {
  const { type, measure, words } = request
  const listed = new Set(words.map(({ text }) => text.toLowerCase()))
  const first = set.cards.filter(({ copy }) => copy === 1).map(({ die }) => die!.faces)
  const style = { sizeMm: type.adultTextMm }
  return (set.answers ?? []).flatMap(({ text, numbers }, index) => {
    const built = text.split(', ')
    const [before = [], vowels = [], after = []] = numbers.map(number => first[number - 1]!)
    const spelled = throwsOf([before, vowels, after])
    const own = built.filter(word => listed.has(word))
    const others = (opening: string) =>
      built.filter(
        word => !listed.has(word) && spelled.some(parts => parts[0] === opening && parts.join('') === word),
      )
    const which = (set.answers?.length ?? 0) > 1 ? `Set ${index + 1}: ` : ''
    const shown = (letters: string) => (letters === '' ? 'nothing' : letters)
    return [
      textRow(
        `${which}${built.length} words among ${spelled.length} throws, ${own.length} of them on your list`,
        { style: { ...style, weight: 700 }, widthMm, measure },
      ),
      ...tableRows({
        columns: [
          { heading: 'first die', share: 0.18 },
          { heading: 'words', share: 0.82 },
        ],
        cells: [
          ['your words', own.join(', ')],
          ...before
            .filter(opening => others(opening).length > 0)
            .map(opening => [shown(opening), others(opening).join(', ')]),
        ],
        widthMm,
        textMm: type.adultTextMm,
        measure,
      }),
    ]
  })
}
