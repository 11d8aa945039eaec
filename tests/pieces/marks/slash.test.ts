import { describe, expect, it } from 'vitest'
import { assignStyles } from '../../../src/pieces/marks/assign-styles.js'
import { targetsOf } from '../../../src/pieces/marks/find-targets.js'
import { keyEntries } from '../../../src/pieces/marks/key-entries.js'
import { missedWords } from '../../../src/pieces/marks/missed-words.js'
import type { MarkTarget } from '../../../src/plan/plan.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import type { Word } from '../../../src/words/word.js'

const lexicon = openLexicon()

function studied(text: string): Word {
  const word = studyWord({ text, place: { file: 'plan.yaml' }, overrides: {} }, lexicon)
  if (!word.ok) throw new Error(`${text} cannot be studied`)
  return word.value
}

const slashed = (target: MarkTarget, outline?: string) =>
  assignStyles([
    { place: { file: 'plan.yaml' }, target, line: 'slash', ...(outline === undefined ? {} : { outline }) },
  ]).marks
const silentLetters = { kind: 'pattern', pattern: 'silent-letters' } as const

/** The word with the letters that the slash crosses in brackets. */
function crossed(text: string, target: MarkTarget): string {
  const struck = targetsOf(studied(text), slashed(target)).flatMap(span => span.struck ?? [])
  return [...text]
    .map((letter, index) =>
      struck.some(({ start, end }) => start <= index && index < end) ? `[${letter}]` : letter,
    )
    .join('')
}

describe('a slash', () => {
  it.each([
    '[k]not',
    '[w]ren',
    '[g]nat',
    'lam[b]',
    'r[h]yme',
    'g[h]ost',
    's[c]ent',
    'lis[t]en',
    'ta[l]k',
    '[h]our',
  ])('crosses only the letter that says nothing: %s', written => {
    expect(crossed(written.replaceAll(/[[\]]/g, ''), silentLetters)).toBe(written)
  })

  it('crosses the silent e of a split pattern, never its vowel', () => {
    expect(crossed('cake', { kind: 'pattern', pattern: 'silent-e' })).toBe('cak[e]')
  })

  it('crosses no letter that is heard, whatever it is put on', () => {
    expect(crossed('ship', { kind: 'letters', letters: 'sh' })).toBe('ship')
    expect(crossed('night', { kind: 'pattern', pattern: 'vowel-team' })).toBe('night')
    expect(crossed('knot', { kind: 'letters', letters: 'kno' })).toBe('[k]not')
  })

  it('stands on the letter that it crosses; with an outline, the mark stands on the whole team', () => {
    const [alone] = targetsOf(studied('lamb'), slashed(silentLetters))
    expect(alone!.ranges).toEqual([{ start: 3, end: 4 }])
    const [outlined] = targetsOf(studied('lamb'), slashed(silentLetters, 'box'))
    expect(outlined!.ranges).toEqual([{ start: 2, end: 4 }])
    expect(outlined!.struck).toEqual([{ start: 3, end: 4 }])
  })

  it('is shown in the key on the team', () => {
    expect(keyEntries([studied('knot')], slashed(silentLetters))[0]!.letters).toBe('kn')
  })

  it('on letters that are all heard is warned of, with what to do', () => {
    const [problem] = missedWords([studied('ship')], slashed({ kind: 'letters', letters: 'sh' }))
    expect(problem!.message).toBe(
      'the slash of "sh" crosses no letter: in these words all of its letters are heard',
    )
    expect(problem!.advice).toContain('another line')
  })
})
