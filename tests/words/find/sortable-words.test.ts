import { describe, expect, it } from 'vitest'
import type { PlanWord } from '../../../src/plan/plan.js'
import { rankSorts } from '../../../src/sets/sorts/rank-sorts.js'
import { openOfferedWords } from '../../../src/words/find/offered-file.js'
import { sortableWords } from '../../../src/words/find/sortable-words.js'
import type { ClassWays } from '../../../src/words/study.js'
import { lexicon } from './offered.js'

const place = { file: 'list' }
const built = openOfferedWords()
/** Every fortieth of the words to offer, and contractions, which stand last. */
const list = [...built.filter((_, index) => index % 40 === 0), ...built.slice(-10)].map(
  ({ text }): PlanWord => ({ text, place, overrides: {} }),
)

function wordsOf(words: readonly PlanWord[], ways: ClassWays = {}, offered = () => built) {
  const found = sortableWords({ list: words, lexicon, ways, offered })
  if (!found.ok) throw new Error('no words')
  return found.value
}

const none = () => []

describe('the words of a long list', () => {
  it('come from what was studied at build, and sort as if they were studied now', () => {
    expect(list.length).toBeGreaterThan(500)
    expect(rankSorts(wordsOf(list))).toEqual(rankSorts(wordsOf(list, {}, none)))
  })

  it('each have places in the same columns either way: a week’s sorts of every fifty', () => {
    const [kept, studied] = [wordsOf(list), wordsOf(list, {}, none)]
    for (let from = 0; from < kept.length; from += 50)
      expect(rankSorts(kept.slice(from, from + 50))).toEqual(rankSorts(studied.slice(from, from + 50)))
  })

  it('are studied where she settled something of them', () => {
    const own: PlanWord = { text: 'marsh', place, overrides: { partsOfSpeech: ['verb'] } }
    const [word] = wordsOf([own, ...list])
    expect(word!.partsOfSpeech).toEqual(['verb'])
  })

  it('are studied where the class says them in another way, or counts otherwise', () => {
    const dropped = { accent: { rhotic: false, cotCaught: 'apart', wh: 'w' } } as const
    const marsh: PlanWord = { text: 'marsh', place, overrides: {} }
    expect(wordsOf([marsh, ...list], dropped)[0]!.graphemes[1]!.sounds).toEqual(['AA'])
    expect(wordsOf([marsh, ...list], { countSounds: 'every phoneme' })[0]!.soundCount).toBe(4)
    expect(wordsOf([marsh, ...list])[0]!.soundCount).toBe(3)
  })
})

describe('the words of a short list', () => {
  it('are studied, and nothing that was kept is read', () => {
    const read = () => {
      throw new Error('read')
    }
    expect(wordsOf(list.slice(0, 20), {}, read)).toHaveLength(20)
  })
})
