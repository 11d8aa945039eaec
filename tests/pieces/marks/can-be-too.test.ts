import { describe, expect, it } from 'vitest'
import { assignStyles } from '../../../src/pieces/marks/assign-styles.js'
import { canBeTooNote } from '../../../src/pieces/marks/can-be-too.js'
import { missedWords } from '../../../src/pieces/marks/missed-words.js'
import type { PlanMark, WordOverrides } from '../../../src/plan/plan.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import type { Word } from '../../../src/words/word.js'

const lexicon = openLexicon()

function studied(text: string, overrides: WordOverrides = {}): Word {
  const word = studyWord({ text, place: { file: 'plan.yaml' }, overrides }, lexicon)
  if (!word.ok) throw new Error(`${text} cannot be studied`)
  return word.value
}

const verbs: PlanMark = {
  place: { file: 'plan.yaml' },
  target: { kind: 'word', feature: 'part of speech', value: 'verb' },
}
const { marks } = assignStyles([verbs])

describe('words that can be another part of speech too', () => {
  it('are named beside a mark that passes them over, with what to write', () => {
    const words = [studied('swim'), studied('duck'), studied('perch'), studied('wren')]
    expect(canBeTooNote(words, marks)).toBe(
      'Not marked as verb, though each can be one: duck, perch. A word is marked as what it most often is; ' +
        'to mark it as both, write its parts of speech with the word, for example "part of speech: [noun, verb]".',
    )
  })

  it('are not named once the teacher has said what they are', () => {
    const hers = studied('duck', { partsOfSpeech: ['noun', 'verb'] })
    expect(canBeTooNote([hers, studied('wren')], marks)).toBeUndefined()
  })

  it('are named in the warning where the mark stands on no word', () => {
    const [warning] = missedWords([studied('duck'), studied('wren')], marks)
    expect(warning!.message).toBe('the mark on verb stands on no word, though some words can be one: duck')
    expect(warning!.advice).toContain('[noun, verb]')
  })
})
