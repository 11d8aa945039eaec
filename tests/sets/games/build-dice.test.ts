import { describe, expect, it } from 'vitest'
import { buildDice, throwsOf } from '../../../src/sets/games/build-dice.js'
import { generatorFor } from '../../../src/sets/random.js'

const faces = [
  ['b', 'ch', 'd', 'f', 'm', 's', 't'],
  ['a', 'e', 'ea', 'ee', 'i', 'o', 'u'],
  ['d', 'g', 'n', 'p', 'sh', 't', 'th'],
] as const
/** Words by hand that these spell. */
const words = new Set(
  'bad bat bead beat bed bet bit bud bug but bath big chat cheat chin chip chop dad dash date deed den did dig dish dog fad fat feed feet fin fish fog fun mad map mat mash meat met moth mud sad sap seat seed sit sun tap teeth ten tin top tug'.split(
    ' ',
  ),
)
const worth = (text: string) => Number(words.has(text))

/** All ways to leave one of seven faces out on each die. */
function bestByTryingAll(): number {
  let best = 0
  for (const first of faces[0])
    for (const second of faces[1])
      for (const third of faces[2]) {
        let sum = 0
        for (const a of faces[0])
          for (const b of faces[1])
            for (const c of faces[2]) if (a !== first && b !== second && c !== third) sum += worth(a + b + c)
        best = Math.max(best, sum)
      }
  return best
}

describe('dice', () => {
  it('spell as many words as any choice of faces does', () => {
    const dice = buildDice({ faces, worth }, generatorFor(1, 'dice'))!
    expect(throwsOf(dice).filter(parts => worth(parts.join('')) > 0)).toHaveLength(bestByTryingAll())
  })

  it('have six faces each, none twice', () => {
    for (const die of buildDice({ faces, worth }, generatorFor(2, 'dice'))!) expect(new Set(die).size).toBe(6)
  })

  it('spell nothing that must not come about, or are none', () => {
    const never = (bad: readonly string[]) => (text: string) => (bad.includes(text) ? -1e6 : worth(text))
    const dice = buildDice({ faces, worth: never(['bud', 'fat']) }, generatorFor(3, 'dice'))!
    expect(throwsOf(dice).map(parts => parts.join(''))).not.toContain('bud')
    const all = faces[0].flatMap(a => faces[1].flatMap(b => faces[2].map(c => a + b + c)))
    expect(buildDice({ faces, worth: never(all) }, generatorFor(3, 'dice'))).toBeUndefined()
  })

  it('have a throw for each face of each die', () => {
    expect(throwsOf([['a', 'b'], ['c'], ['d', 'e']]).map(parts => parts.join(''))).toEqual([
      'acd',
      'ace',
      'bcd',
      'bce',
    ])
  })
})
