import { describe, expect, it } from 'vitest'
import { defineLayout, type LayoutRequest, type RequestWith } from '../../layouts/layout.js'
import { succeed } from '../../src/outcomes.js'
import type { CardFace } from '../../src/pieces/faces/face.js'
import { choice, gridSize, option, wholeNumber } from '../../src/plan/values/options.js'

/**
 * Most of this is proven by the compiler, in `npm run lint`: a line under `@ts-expect-error` that compiled would be an
 * error itself.
 */
const options = {
  boards: option('how many', wholeNumber(1, 9, 4)),
  grid: option('columns x rows', gridSize(2, 9, undefined)),
  write: option('what is written', choice(['sounds', 'word'], 'word')),
}
const about = {
  name: 'sample',
  summary: 'a sample',
  marks: 'none',
  inWeek: { day: 'centres', given: 'once' },
} as const
const perSheet = { columns: 1, rows: 1 }
const noFace = (): CardFace => {
  throw new Error('nothing is drawn here')
}

const boards = defineLayout({
  ...about,
  kind: 'pieces',
  options,
  perSheet,
  perSheetLarge: perSheet,
  shownWithWords: ({ write }) => (write === 'sounds' ? { soundMarks: 'bar' } : {}),
  set: request => {
    const count: number = request.options.boards
    // @ts-expect-error The option is called boards.
    request.options.bords
    // @ts-expect-error An option that the plan may leave out is not always there.
    request.options.grid.columns
    // @ts-expect-error A choice is one of its own words.
    const isLetters = request.options.write === 'letters'
    // @ts-expect-error The item holds what every item takes; the options have their own place.
    request.item.options
    return succeed({ cards: [], notes: [`${count} ${isLetters}`] })
  },
  roomier: request => [{ options: { boards: request.options.boards - 1 }, says: 'fewer', open: true }],
  face: ({ options: own }) => {
    // @ts-expect-error The option is called write.
    own.writes
    return noFace()
  },
  pages: ({ options: own }) => {
    // @ts-expect-error The option is called write.
    own.writes
    return []
  },
})

defineLayout({
  ...about,
  kind: 'pieces',
  options,
  perSheet,
  perSheetLarge: perSheet,
  // @ts-expect-error There is no such option to change.
  roomier: () => [{ options: { bords: 1 }, says: 'fewer', open: true }],
  set: () => succeed({ cards: [] }),
  faces: request => {
    // @ts-expect-error The option is called boards.
    request.options.bords
    return succeed([])
  },
  pages: () => [],
})

defineLayout({
  ...about,
  kind: 'pages',
  options,
  pages: request => {
    // @ts-expect-error The option is called write.
    request.options.writes
    return []
  },
})

defineLayout({
  ...about,
  kind: 'pages',
  options: {},
  pages: request => {
    // @ts-expect-error It declares none.
    request.options.boards
    return []
  },
})

defineLayout({
  ...about,
  kind: 'sheets',
  options,
  sheets: request => {
    // @ts-expect-error The option is called write.
    request.options.writes
    return succeed([])
  },
})

function helperOfOne(request: RequestWith<typeof options>): string {
  // @ts-expect-error The option is called write.
  request.options.writes
  return request.options.write
}

function helperOfAll(request: LayoutRequest): unknown {
  // @ts-expect-error What serves every layout knows the options of none.
  request.options.write
  // @ts-expect-error So it cannot call what needs them.
  return helperOfOne(request)
}

describe('the options of a layout', () => {
  it('reach its functions as its readers give them', () => {
    expect(boards.shownWithWords({ boards: 4, grid: undefined, write: 'sounds' })).toEqual({
      soundMarks: 'bar',
    })
  })

  it('are refused where they are not those that its readers give', () => {
    for (const other of [{ boards: 4, grid: undefined, write: 'letters' }, { write: 'sounds' }, undefined])
      expect(() => boards.shownWithWords(other)).toThrow('the options of an item of sample')
    expect(helperOfAll).toBeTypeOf('function')
  })
})
