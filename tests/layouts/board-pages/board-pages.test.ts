import { afterAll, describe, expect, it } from 'vitest'
import type { PrintedItem } from '../../../src/files/printed-plan.js'
import { screenPixelsToMm } from '../../../src/geometry.js'
import type { PlacedArt } from '../../../src/pieces/piece.js'
import type { Sheet } from '../../../src/sheets/sheet.js'
import { bundledTypeface } from '../../pieces/bundled-typefaces.js'
import { marshWords, printItem, problemsOf } from '../print-item.js'

const planOf = (
  words: readonly string[],
  marks = 'consonant-digraph, inside blends: yes|vowel-team|silent-letters',
) =>
  `title: Along the marsh\nclass: Room 7, Heron Lane School\nwords: [${words.join(', ')}]\n${
    marks === ''
      ? ''
      : `marks:\n${marks
          .split('|')
          .map(mark => `  - {pattern: ${mark}}\n`)
          .join('')}`
  }print:\n`
const ten = ['reed', 'marsh', 'shrub', 'hop', 'stream', 'gnat', 'carry', 'leaf', 'big', 'snake']

const prints = new Map<string, Promise<PrintedItem>>()
afterAll(() => prints.clear())

/** Printed once, however many ask for the same pages. */
function made(keys = '', plan = planOf(ten)): Promise<PrintedItem> {
  const known = prints.get(keys + plan) ?? printItem(`{layout: board-pages${keys}}`, plan)
  prints.set(keys + plan, known)
  return known
}

const toldOn = ({ title }: Sheet) => title.replace('Along the marsh: Board pages: ', '')
const textsOn = ({ furniture }: Sheet) => furniture.flatMap(({ art }) => art.text.map(({ text }) => text))
const wordOn = (sheet: Sheet, word: string): PlacedArt =>
  sheet.furniture.find(({ art }) => art.text.length === 1 && art.text[0]!.text === word)!
const whereIs = (sheet: Sheet, word: string) => {
  const { art, yMm } = wordOn(sheet, word)
  return { baselineMm: (yMm + art.text[0]!.baselineMm).toFixed(2), sizeMm: art.text[0]!.sizeMm.toFixed(3) }
}

describe('board pages', () => {
  it('go from the list bare through its patterns and words to the list with all marks', async () => {
    const told = (await made()).sheets.map(toldOn)
    expect(told.slice(0, 7)).toEqual([
      `the words: ${ten.join(', ')}`,
      'consonant digraph: marsh, shrub, bare',
      'consonant digraph: marsh, shrub',
      'vowel team: reed, stream, leaf, bare',
      'vowel team: reed, stream, leaf',
      'silent letters: gnat, bare',
      'silent letters: gnat',
    ])
    expect(told.slice(7, 12)).toEqual([
      'reed, bare',
      'reed, r',
      'reed, r·ee',
      'reed, 3 sounds: r·ee·d',
      'reed, marked',
    ])
    expect(told.at(-1)).toBe(`all marks: ${ten.join(', ')}`)
  })

  it('have the tag of a whole word beside it, where it stands alone too', async () => {
    const plan = planOf(['reed', 'marsh'], '').replace(
      'print:',
      'marks: [{part of speech: noun, tag: n}]\nprint:',
    )
    const marked = (await made('', plan)).sheets.find(sheet => toldOn(sheet) === 'reed, marked')!
    const word = wordOn(marked, 'reed')
    const rightMm = word.xMm + word.art.widthMm
    // The key has a tag to show too.
    const tags = marked.furniture.filter(({ art }) => art.text[0]?.text === 'n')
    const gaps = tags.map(({ xMm }) => xMm - rightMm).filter(gapMm => gapMm > 0)
    expect(gaps).toHaveLength(1)
    expect(gaps[0]).toBeGreaterThan(1)
    expect(gaps[0]).toBeLessThan(word.art.text[0]!.sizeMm / 2)
  })

  it('are a lesson, not a hundred: 65 for ten words and three marks', async () => {
    expect((await made()).sheets).toHaveLength(65)
    expect((await made(', each word: sounds then marks')).sheets).toHaveLength(40)
    expect((await made(', each word: in one step')).sheets.length).toBeLessThan(36)
    expect((await made(', each word: none')).sheets.length).toBe(14)
  })

  it('show no marks of a word that has none, and a guess without its sounds', async () => {
    const { sheets } = await made(', each word: sounds then marks', planOf(['hop', 'zorp']))
    const told = sheets.map(toldOn).filter(title => /^(?:hop|zorp)\b/.test(title))
    expect(told).toEqual(['hop, bare', 'hop, 3 sounds: h·o·p', 'zorp, bare'])
  })

  describe.each(['boxes', 'bars', 'dots'])('with %s under one sound after another', shape => {
    /** Closed or open, each begins with a move of the pen: the letters' and the signs'. */
    const pathsOf = (sheet: Sheet, word: string) =>
      wordOn(sheet, word).art.shapes.flatMap(shape =>
        shape.kind === 'path' ? (shape.d.match(/M/g) ?? []) : [],
      ).length
    const pagesOf = async (word: string) =>
      (
        await made(`, sounds: ${shape}, patterns: no, parts of speech: no, plurals: no`, planOf([word]))
      ).sheets.filter(sheet => toldOn(sheet).startsWith(`${word}, `))

    it('draw one more on each page, both of a letter that counts two at once, none under a silent one', async () => {
      for (const [word, signs] of [
        ['stream', [0, 1, 2, 3, 4, 5]],
        ['box', [0, 1, 2, 4]],
        ['snake', [0, 1, 2, 3, 4]],
      ] as const) {
        const pages = (await pagesOf(word)).filter(sheet => !toldOn(sheet).endsWith(', marked'))
        const drawn = pages.map(sheet => pathsOf(sheet, word) - pathsOf(pages[0]!, word))
        expect(drawn, word).toEqual(signs)
      }
    })

    it('move nothing', async () => {
      const pages = await pagesOf('stream')
      const places = pages.slice(1, 6).map(sheet => {
        const { xMm, yMm, art } = wordOn(sheet, 'stream')
        return { xMm, yMm, widthMm: art.widthMm, baselineMm: art.text[0]!.baselineMm }
      })
      expect(places).toHaveLength(5)
      for (const place of places) expect(place).toEqual(places[0])
      expect(whereIs(pages[0]!, 'stream')).toEqual(whereIs(pages[1]!, 'stream'))
    })
  })

  it('show words one by one in one step where there are more than twelve', async () => {
    const { sheets } = await made('', planOf([...ten, 'moth', 'frog', 'wren']))
    expect(sheets.map(toldOn).filter(title => title.startsWith('reed'))).toEqual([
      'reed, bare',
      'reed, marked',
    ])
  })

  it('move nothing from the bare words to the marked ones', async () => {
    const { sheets } = await made()
    const [bare, marked] = [sheets[3]!, sheets[4]!]
    for (const word of ['reed', 'stream', 'leaf']) expect(whereIs(marked, word)).toEqual(whereIs(bare, word))
    expect(wordOn(marked, 'reed').art.shapes.length).toBeGreaterThan(wordOn(bare, 'reed').art.shapes.length)
  })

  it('keep more white between two columns than is within a word', async () => {
    const twelve = 'reed marsh shrub hop stream gnat leaf box snake moth frog wren'.split(' ')
    const list = (await made(', each word: none', planOf(twelve))).sheets[0]!
    const gaps = twelve.flatMap(left => {
      const from = wordOn(list, left)
      return twelve.flatMap(right => {
        const to = wordOn(list, right)
        const isBeside = Math.abs(to.yMm - from.yMm) < from.art.text[0]!.sizeMm / 2
        return isBeside && to.xMm > from.xMm
          ? [(to.xMm - from.xMm - from.art.widthMm) / from.art.text[0]!.sizeMm]
          : []
      })
    })
    expect(gaps.length).toBeGreaterThan(0)
    expect(Math.min(...gaps)).toBeGreaterThan(0.4)
  })

  it('mark one pattern at a time, while the key grows', async () => {
    const { sheets } = await made()
    const keyOn = (sheet: Sheet) =>
      ['consonant digraph', 'vowel team', 'silent letters'].filter(name =>
        textsOn(sheet).join(' ').includes(name),
      ).length
    expect([1, 2, 3, 4, 5, 6].map(page => keyOn(sheets[page]!))).toEqual([0, 1, 1, 2, 2, 3])
  })

  it('sort the words by what they most often are, and tell plurals with their rule', async () => {
    const { sheets } = await made(', each word: none, patterns: no')
    const sorted = sheets.find(sheet => toldOn(sheet) === 'What each word most often is')!
    expect(textsOn(sorted)).toEqual(expect.arrayContaining(['noun', 'verb', 'adjective', 'carry', 'big']))
    const plurals = sheets.filter(sheet => toldOn(sheet) === 'One and more than one').flatMap(textsOn)
    expect(plurals).toEqual(expect.arrayContaining(['leaf', 'leaves', 'f to v, add es', 'marshes']))
  })

  it('leave out what the teacher does not want', async () => {
    const { sheets } = await made(', patterns: no, each word: none, parts of speech: no, plurals: no')
    expect(sheets).toHaveLength(2)
    expect(
      (await made(', patterns: no, each word: none, parts of speech: no, plurals: no, marks: none')).sheets,
    ).toHaveLength(1)
  })

  it('are of the screen’s size, with nothing to cut', async () => {
    for (const [paper, pixels] of [
      ['', 1920],
      [', paper: "screen 4:3"', 1440],
    ] as const) {
      for (const { kind, widthMm, heightMm, cuts, pieces } of (await made(paper)).sheets) {
        expect({ kind, cuts, pieces }).toEqual({ kind: 'screen', cuts: [], pieces: [] })
        expect(widthMm).toBeCloseTo(screenPixelsToMm(pixels), 6)
        expect(heightMm).toBeCloseTo(screenPixelsToMm(1080), 6)
      }
    }
  })
})

const thirty = [
  ...new Set([
    ...ten,
    ...marshWords,
    ...'fox city wolf goose box queen branch sheep happy bake cry slow run knee'.split(' '),
  ]),
].slice(0, 30)
const eight =
  'consonant-digraph, inside blends: yes|vowel-team|silent-letters|beginning-blend|ending-blend|silent-e|r-controlled|short-vowel'

describe('every letter on a board page', () => {
  /** Ems below which text has an x-height of less than 21 pixels. */
  const small = ({ sheets }: PrintedItem, font: Parameters<typeof bundledTypeface>[0]) => {
    const { xHeight } = bundledTypeface(font).metrics
    return sheets.flatMap(({ furniture }) =>
      furniture.flatMap(({ art }) =>
        art.text
          .filter(({ sizeMm }) => sizeMm * xHeight < screenPixelsToMm(21) - 0.001)
          .map(({ text }) => text),
      ),
    )
  }

  it.each(['andika', 'opendyslexic'] as const)(
    'is at least 21 pixels high in %s, for few words and many',
    async font => {
      for (const words of [['at'], ten, thirty, ['neighborhood', 'merry-go-round', 'grasshopper']]) {
        const plan = planOf(words, words === thirty ? eight : undefined)
        for (const paper of ['screen 16:9', 'screen 4:3'])
          expect(small(await made(`, font: ${font}, paper: "${paper}"`, plan), font)).toEqual([])
      }
    },
  )

  it('takes further pages where a list is long, and keeps the whole key', async () => {
    const { sheets } = await made(', font: andika, paper: "screen 16:9"', planOf(thirty, eight))
    expect(sheets.length).toBeLessThan(100)
    const last = sheets.slice(sheets.findIndex(sheet => toldOn(sheet) === 'Our key'))
    expect(last.length).toBeGreaterThan(1)
    const text = textsOn(last[0]!).join(' ')
    for (const name of ['consonant digraph', 'vowel team', 'silent letters', 'short vowel', 'silent e'])
      expect(text).toContain(name)
  })
})

describe('a screen', () => {
  it('is no paper for cards', async () => {
    const told = await problemsOf('{layout: word-cards, paper: "screen 16:9"}')
    expect(told).toContain('screen 16:9 is no paper for word-cards')
    expect(told).toContain('Choose a paper, such as letter or a4')
  })

  it('cannot be stood upright', async () => {
    expect(await problemsOf('{layout: board-pages, orientation: portrait}')).toContain('it cannot be turned')
  })

  it('shows no more words one by one than a lesson has', async () => {
    const words = [...'abcdefgh'].flatMap(a => [...'abcdefgh'].map(b => `${a}${b}o`))
    const plan = planOf(words, '')
    expect(await problemsOf('{layout: board-pages}', plan)).toContain('would show 64 words')
    expect(await problemsOf('{layout: board-pages, each word: none}', plan)).not.toContain('64 words')
  })
})
