/** The rules over the aligner, the division and the lexicon as a teacher meets them. */
import { describe, expect, it } from 'vitest'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { findPattern } from '../../../src/words/patterns/find-patterns.js'
import { patterns } from '../../../src/words/patterns/index.js'
import { lexiconEvidence } from '../../../src/words/patterns/lexicon-evidence.js'
import type { StudiedLetters } from '../../../src/words/patterns/pattern.js'
import { studyWord } from '../../../src/words/study.js'
import type { Word } from '../../../src/words/word.js'
import { handAligned, readTable } from './hand-aligned.js'

const lexicon = openLexicon()

function study(text: string): Word {
  const outcome = studyWord({ text, place: { file: 'words.txt' }, overrides: {} }, lexicon)
  if (!outcome.ok) throw new Error(`${text} cannot be studied`)
  return outcome.value
}

function lettersOf(text: string): StudiedLetters {
  const word = study(text)
  return { ...word, pronunciation: word.pronunciations[0] ?? '', evidence: lexiconEvidence(lexicon) }
}

describe('each pattern, over the lexicon', () => {
  it.each(patterns.map(pattern => [pattern.name, pattern] as const))(
    '%s finds its own example',
    (name, pattern) => {
      const { word, letters } = pattern.example
      expect(findPattern(name, lettersOf(word)).map(finding => finding.letters)).toContain(letters)
    },
  )

  it.each(patterns.map(pattern => [pattern.name, pattern] as const))(
    '%s finds nothing to the point in its counter-example',
    (name, pattern) => {
      const { word, letters } = pattern.counterExample
      const found = findPattern(name, lettersOf(word)).map(finding => finding.letters)
      expect(letters === undefined ? found : found.filter(other => other === letters)).toEqual([])
    },
  )
})

describe('words aligned by hand', () => {
  const byHand = new Map<string, string[]>()
  for (const [word, ...finding] of readTable('findings.tsv')) {
    byHand.set(word!, [...(byHand.get(word!) ?? []), finding.join(' ')])
  }

  it.each([...handAligned.keys()])('%s shows the same when the aligner reads it', text => {
    const found = study(text).patterns.map(({ pattern, letters, start, end, place }) =>
      [pattern, letters, start, end, place].join(' '),
    )
    expect(found).toEqual(byHand.get(text) ?? [])
  })
})
