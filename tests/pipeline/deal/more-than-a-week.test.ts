import { describe, expect, it } from 'vitest'
import { putPlanOnSheets } from '../../../src/pipeline.js'
import { filesInMemory } from '../../plan/reading.js'

const told = async (text: string) => {
  const outcome = await putPlanOnSheets({
    planFile: 'week.yaml',
    files: filesInMemory({ 'week.yaml': text }),
  })
  return outcome.problems
    .filter(({ severity }) => severity === 'error')
    .map(({ place, message }) => [place.line, message])
}
const words =
  'words: [reed, marsh, pond, frog, mud, fog, wet, hut, log, bog, ant, bee, cat, dog, egg, fan, gum, hat, ink, jam, kit, lip, man, nut, owl]'

describe('a plan that asks for more than a week can use', () => {
  it('is told at the item that goes too far, before anything is dealt', async () => {
    expect(await told(`${words}\nprint:\n  - key\n  - {layout: bingo, boards: 400, copies: 500}\n`)).toEqual([
      [4, '"bingo" brings the plan to 5,000,025 words on pieces, each copy counted'],
    ])
  })

  it('is told of the items that come of its groups', async () => {
    const groups = Array.from({ length: 60 }, (_, index) => `  - {name: g${index}}\n`).join('')
    const items = Array.from(
      { length: 10 },
      (_, index) => `  - {layout: word-cards, name: c${index}}\n`,
    ).join('')
    expect(await told(`words: [reed]\nprint:\n${items}groups:\n${groups}`)).toEqual([
      [3, 'the plan asks for 610 things to print, those for each group counted'],
    ])
  })
})
