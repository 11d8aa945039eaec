import { expect, it } from 'vitest'
import { textSpool } from '../../../src/files/proof/text-spool.js'

const texts = Array.from(
  { length: 400 },
  (_, index) => `${index} ${'a reed · “in” the <marsh>\n'.repeat(400)}`,
)

it('gives every text back as it was, in any order, packed or not', () => {
  const spool = textSpool()
  const put = texts.map(spool)
  expect(put.map(text => text.read())).toEqual(texts)
  expect([399, 0, 200, 0].map(index => put[index]!.read())).toEqual(
    [399, 0, 200, 0].map(index => texts[index]),
  )
})

it('gives a text back while others are still put aside', () => {
  const spool = textSpool()
  const [first, ...rest] = texts
  const put = spool(first!)
  for (const text of rest) spool(text)
  expect(put.read()).toBe(first)
})
