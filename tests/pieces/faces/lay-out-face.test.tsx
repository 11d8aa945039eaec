import type { CSSProperties } from 'satori/jsx'
import { describe, expect, it } from 'vitest'
import { loadTypeface } from '../../../fonts/load-typeface.js'
import { type Face, mm } from '../../../src/pieces/faces/face.js'
import { faceLayouter } from '../../../src/pieces/faces/lay-out-face.js'
import { plainTree } from '../../../src/pieces/faces/plain-tree.js'
import { Slot } from '../../../src/pieces/faces/slot.js'
import type { TextRun } from '../../../src/pieces/piece.js'
import type { TextStyle } from '../../../src/pieces/text/break-lines.js'
import { Lines } from '../../../src/pieces/text/lines.js'

const loaded = loadTypeface({ name: 'andika', place: { file: 'plan.yaml' } })
if (!loaded.ok) throw new Error('andika does not load')
const andika = loaded.value

const Said = ({ text }: { readonly text: string; readonly from?: object }) => (
  <Lines lines={[text]} style={{ sizeMm: 4 }} />
)
const Whispered = ({ text }: { readonly text: string }) => <Said text={`(${text})`} />
const face = (tree: Face['tree']): Face => ({ widthMm: 40, heightMm: 20, tree, slots: {} })

describe('the layout of a face', () => {
  it('is made once for faces that draw alike, whatever they were made from', async () => {
    const { layOut } = faceLayouter()
    const [first, second] = [
      await layOut(face(<Said text="reed" from={{ card: 1 }} />), andika),
      await layOut(face(<Said text="reed" from={{ card: 2 }} />), andika),
    ]
    expect(second).toBe(first)
  })

  it('is never that of another component with the same properties', async () => {
    const { layOut } = faceLayouter()
    const texts = [
      await layOut(face(<Said text="reed" />), andika),
      await layOut(face(<Whispered text="reed" />), andika),
    ].map(({ text }) => text.map(run => run.text))
    expect(texts).toEqual([['reed'], ['(reed)']])
  })

  it('is refused where text stands bare in it, which satori would break and shape', async () => {
    const bare = face(<div style={{ display: 'flex' }}>reed</div>)
    await expect(faceLayouter().layOut(bare, andika)).rejects.toThrow('"reed" stands bare in a face')
  })
})

const border = { borderBottom: '3px solid #404040', alignItems: 'center', width: '100%' } as const

/** A page of rows under a heading that takes what room they leave; each row stands apart, or in the page's own tree. */
function rowsOf(texts: readonly string[], apart: boolean): Face {
  const heightMm = 7.35
  return {
    ...face(
      <div style={{ display: 'flex', flexDirection: 'column', width: '100%', height: '100%', gap: mm(0.4) }}>
        <div style={{ display: 'flex', flexGrow: 1, backgroundColor: '#dddddd' }} />
        {texts.map((text, index) => (
          <div
            {...(apart ? { 'data-apart': { widthMm: 40, heightMm } } : {})}
            style={{ display: 'flex', height: mm(heightMm), flexShrink: 0, width: '100%' }}
          >
            <div style={{ display: 'flex', justifyContent: 'space-between', ...border }}>
              <Said text={text} />
              <div data-slot={`word ${index}`} style={{ display: 'flex', width: '33%', height: mm(3.3) }} />
            </div>
          </div>
        ))}
      </div>,
    ),
    heightMm: 40.15,
  }
}

describe('rows that are laid out apart', () => {
  const words = ['reed', 'marsh', 'wren']

  it('stand and are drawn where they are in the tree of their page', async () => {
    const { layOut } = faceLayouter()
    const apart = await layOut(rowsOf(words, true), andika)
    const whole = await layOut(rowsOf(words, false), andika)
    expect(apart.text).toEqual(whole.text)
    expect(apart.slots).toEqual(whole.slots)
    const outlines = ({ drawArt }: typeof whole) =>
      drawArt().shapes.map(shape => (shape.kind === 'path' ? [shape.d, shape.fill] : []))
    expect(outlines(apart)).toEqual(outlines(whole))
  })

  it('are laid out once for all pages: where one is another, that one alone', async () => {
    const { layOut, treesLaidOut } = faceLayouter()
    await layOut(rowsOf(words, true), andika)
    expect(treesLaidOut()).toBe(4)
    await layOut(rowsOf(['reed', 'moth', 'wren'], true), andika)
    expect(treesLaidOut()).toBe(4 + 1)
  })

  /** Rows of a table, in columns of this width, and how often satori is asked for their page. */
  const askedFor = async (texts: readonly string[], widthMm: number) => {
    const { layOut, treesLaidOut } = faceLayouter()
    const box: CSSProperties = { width: mm(widthMm) }
    const cell = (text: string) => <Lines lines={[text]} style={{ sizeMm: 4 }} box={box} />
    const tree = texts.map((text, index) => (
      <div
        data-apart={{ widthMm: 40, heightMm: 5.8 }}
        style={{ display: 'flex', width: '100%', height: mm(5.8) }}
      >
        {cell(text)}
        <Slot name={`beside ${index}`} style={{ width: mm(2), height: '100%' }} />
      </div>
    ))
    const { text, slots } = await layOut(
      face(<div style={{ display: 'flex', flexDirection: 'column' }}>{tree}</div>),
      andika,
    )
    const besides = texts.map((_, index) => slots.get(`beside ${index}`)!.xMm)
    return { asked: treesLaidOut(), said: text.map(run => run.text), besides }
  }

  it('are one shape where they differ in the words of columns that have a width, and are laid out once', async () => {
    const { asked, said, besides } = await askedFor(words, 16)
    expect([asked, said, besides]).toEqual([2, words, [16, 16, 16]])
  })

  it('are one shape where their words fill columns from side to side, as wide as the column', async () => {
    const inColumn = async (widthMm: number) => {
      const { layOut, treesLaidOut } = faceLayouter()
      const rows = words.map(text => (
        <div
          data-apart={{ widthMm: 40, heightMm: 5.8 }}
          style={{ display: 'flex', width: '100%', height: mm(5.8) }}
        >
          <div style={{ display: 'flex', flexDirection: 'column', width: mm(widthMm), flexShrink: 0 }}>
            <Lines lines={[text]} style={{ sizeMm: 4, align: 'right' }} />
          </div>
        </div>
      ))
      const page = <div style={{ display: 'flex', flexDirection: 'column' }}>{rows}</div>
      const { text } = await layOut(face(page), andika)
      return { asked: treesLaidOut(), rights: text.map(run => run.xMm + run.widthMm) }
    }
    expect(await inColumn(16)).toEqual({ asked: 2, rights: words.map(() => expect.closeTo(16, 6)) })
    const narrow = await inColumn(6)
    expect(narrow.asked).toBe(4)
    expect(narrow.rights).toEqual(words.map(word => expect.closeTo(andika.widthEm(word) * 4, 1)))
  })

  it('are each laid out where their words are wider than that', async () => {
    const { asked, besides } = await askedFor(words, 6)
    expect(asked).toBe(4)
    expect(besides).toEqual(words.map(word => expect.closeTo(andika.widthEm(word) * 4, 1)))
  })

  it('are refused where their page gives them another size than they say', async () => {
    const { tree, ...page } = rowsOf(words, true)
    const narrow = { ...page, tree: <div style={{ display: 'flex', width: '50%' }}>{tree}</div> }
    await expect(faceLayouter().layOut(narrow, andika)).rejects.toThrow('a box of its size')
  })
})

/** The one run of a text that fills a face in this way. */
async function runIn(box: CSSProperties, style: TextStyle, widthOfParent: string): Promise<TextRun> {
  const tree = (
    <div style={{ display: 'flex', width: widthOfParent, height: '100%' }}>
      <Lines lines={['reed', 'marsh']} style={style} box={box} />
    </div>
  )
  const { text } = await faceLayouter().layOut(face(tree), andika)
  return text.at(-1)!
}

describe('lines of text in a face', () => {
  const sizeMm = 5
  const widthMm = andika.widthEm('marsh') * sizeMm

  it.each([
    ['left', 0],
    ['centre', (30 - widthMm) / 2],
    ['right', 30 - widthMm],
  ] as const)('stand in a box of a width of their own: %s', async (align, xMm) => {
    const run = await runIn({ width: mm(30) }, { sizeMm, align }, '100%')
    expect(run.xMm).toBeCloseTo(xMm, 6)
    expect(run.widthMm).toBeCloseTo(widthMm, 6)
  })

  it('take a box as wide as the longest of them where no place has a width for them', async () => {
    const run = await runIn({ marginLeft: 'auto' }, { sizeMm }, '100%')
    expect(run.xMm + widthMm).toBeCloseTo(40, 1)
  })

  it('stand from the top of their box, each in the middle of its line', async () => {
    const run = await runIn({ marginTop: mm(3), width: mm(30) }, { sizeMm }, '100%')
    expect(run.baselineMm).toBeCloseTo(3 + 1.5 * 1.45 * sizeMm + andika.metrics.middle * sizeMm, 6)
  })
})

describe('a plain tree', () => {
  it('holds boxes alone, components within components replaced', () => {
    const tree = plainTree(<div>{[<Whispered text="reed" />, 'marsh', null]}</div>)
    const plain = plainTree(<div>{[<Lines lines={['(reed)']} style={{ sizeMm: 4 }} />, 'marsh', null]}</div>)
    expect(tree).toEqual(plain)
  })
})
