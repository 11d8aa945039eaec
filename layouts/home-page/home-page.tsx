import type { Size } from '../../src/geometry.js'
import { flowPages, type Heading, type Row } from '../../src/pieces/faces/flow-page.js'
import { keyEntries } from '../../src/pieces/marks/key-entries.js'
import { type KeySetting, keyRows, keySettings } from '../../src/pieces/parts/key-rows.js'
import { textRow, whiteRow } from '../../src/pieces/parts/table-rows.js'
import { fewestPages } from '../../src/pieces/text/fewest-pages.js'
import { defineLayout, type LayoutRequest } from '../layout.js'
import { wordRows } from '../practice/word-bank.js'
import { homeIdeas, howToPractise } from './home-text.js'

/** One page to take home: the words, the key, and what a parent can do with them in ten minutes. */
export const homePage = defineLayout({
  kind: 'pages',
  name: 'home-page',
  summary: 'a page to take home: the words, the key, how to practise, three ideas for ten minutes',
  inWeek: { day: 'home', given: 'each child' },
  options: {},
  marks: 'all',
  pages: (request, room) =>
    fewestPages(homeSettings, setting => pagesIn(request, room, setting)).map(face => ({
      ...face,
      kind: 'list',
      title: `${request.plan.title}: ${request.itemTitle}`,
    })),
})

/** How close the page is set, the airiest first. */
interface HomeSetting {
  readonly key: KeySetting
  /** Of the em of a grown-up's text, the white between two parts. */
  readonly white: number
  /** Of that em, the size of the text. */
  readonly text: number
  /** The name of an idea stands on a line of its own. */
  readonly airy: boolean
}

const homeSettings: readonly HomeSetting[] = [
  { key: 'usual', white: 3, text: 1.4, airy: true },
  { key: 'usual', white: 2.2, text: 1.2, airy: true },
  { key: 'usual', white: 1.2, text: 1.1, airy: false },
  ...[...keySettings, 'names alone' as const].map(key => ({ key, white: 0.7, text: 1, airy: false })),
]

function pagesIn(request: LayoutRequest, room: Size, setting: HomeSetting) {
  const { words, marks, type, measure, marked, subtitle } = request
  const { widthMm } = room
  const sizeMm = type.adultTextMm * setting.text
  const paragraph = (text: string) => textRow(text, { style: { sizeMm }, widthMm, measure })
  const named = (name: string, times = 1): Row => {
    const style = { sizeMm: sizeMm * times, weight: 700 } as const
    return { ...textRow(name, { style, widthMm, measure }), keepsWithNext: true }
  }
  const white = whiteRow(type.adultTextMm * setting.white)
  const heading: Heading = { title: 'Our words this week', subtitle, textMm: sizeMm, measure }
  const rows: readonly Row[] = [
    ...wordRows(request, words, { widthMm, name: 'home' }),
    white,
    ...(marked ? keyRows(request, widthMm, setting.key) : []),
    white,
    named('How to practise', LARGER),
    ...howToPractise.map(paragraph),
    white,
    named('Three ideas for ten minutes, with a pencil and paper', LARGER),
    ...homeIdeas(words, keyEntries(words, marked ? marks : [])).flatMap(({ name, text }) =>
      setting.airy ? [named(name), paragraph(text)] : [paragraph(`${name}: ${text}`)],
    ),
  ]
  return flowPages({ heading, rows, room })
}

/** Than the text, the name of a part of the page. */
const LARGER = 1.15
