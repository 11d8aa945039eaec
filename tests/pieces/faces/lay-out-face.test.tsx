import { describe, expect, it } from 'vitest'
import { loadTypeface } from '../../../fonts/load-typeface.js'
import type { Face } from '../../../src/pieces/faces/face.js'
import { faceLayouter } from '../../../src/pieces/faces/lay-out-face.js'
import { plainTree } from '../../../src/pieces/faces/plain-tree.js'

const loaded = loadTypeface({ name: 'andika', place: { file: 'plan.yaml' } })
if (!loaded.ok) throw new Error('andika does not load')
const andika = loaded.value

const Said = ({ text }: { readonly text: string; readonly from?: object }) => (
  <div style={{ display: 'flex' }}>{text}</div>
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
    ].map(({ art }) => art.text.map(run => run.text))
    expect(texts).toEqual([['reed'], ['(reed)']])
  })
})

describe('a plain tree', () => {
  it('holds boxes alone, components within components replaced', () => {
    const tree = plainTree(<div>{[<Whispered text="reed" />, 'marsh', null]}</div>)
    const plain = plainTree(<div>{[<div style={{ display: 'flex' }}>{'(reed)'}</div>, 'marsh', null]}</div>)
    expect(tree).toEqual(plain)
  })
})
