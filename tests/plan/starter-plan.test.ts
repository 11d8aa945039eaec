import { describe, expect, it } from 'vitest'
import { planVocabulary } from '../../src/pipeline/vocabulary.js'
import { disk } from '../../src/plan/disk/disk.js'
import { readPlan } from '../../src/plan/read-plan.js'
import { emptyPlan, SCHEMA_FILE, starterPlan } from '../../src/plan/starter-plan.js'
import { weekParts } from '../../src/plan/week/week-parts.js'
import { formatProblem } from '../../src/problems.js'

function read(text: string) {
  const plan = readPlan({ file: 'plan.yaml', text, vocabulary: planVocabulary(), files: disk })
  if (!plan.ok) throw new Error(plan.problems.map(formatProblem).join('\n'))
  return plan.value
}

describe('the starter plan', () => {
  it('is accepted as it stands, a week of 16 words', () => {
    const plan = read(starterPlan)
    expect(plan.words).toHaveLength(16)
  })

  it('makes the week’s whole set, two parts of it otherwise', () => {
    const { print } = read(starterPlan)
    expect(print.map(item => item.layout)).toEqual(
      expect.arrayContaining(weekParts.map(({ layout }) => layout)),
    )
    expect(print.filter(item => !item.ofWeek).map(item => item.name)).toEqual(['word-cards', 'bingo'])
  })

  it('is accepted with everything switched on that needs no other file', () => {
    const switchedOn = starterPlan.replaceAll(
      /^( *)# (?=(?:- )?(?!class file|picture)[a-z ]+:(?: {1,2}\S| {2,}#)| +(?:- name|words|size|tag):)/gm,
      '$1',
    )
    const plan = read(switchedOn)
    expect(plan.words[1]?.overrides.sounds).toEqual(['m', 'ar', 'sh'])
    expect(plan.marks.at(-1)).toMatchObject({ tag: 'n', target: { feature: 'part of speech' } })
    expect(plan.children).toBe(22)
    expect(plan.print.find(({ name }) => name === 'word-cards')).toMatchObject({
      copies: 2,
      back: 'name',
      border: 'dashed-round',
    })
    expect(plan.groups.map(group => group.words.length)).toEqual([10])
  })

  it('points editors at the schema beside it, in its first line', () => {
    expect(starterPlan.split('\n', 1)).toEqual([`# yaml-language-server: $schema=${SCHEMA_FILE}`])
  })

  it('explains each key once, on the first line that has it', () => {
    const notes = [...starterPlan.matchAll(/^ *(?:# )?(?:- )?([a-z ]+):.*? # (?!yaml)/gm)].map(
      ([, key]) => key,
    )
    expect(notes.filter((key, index) => notes.indexOf(key) !== index)).toEqual([])
  })

  it('keeps its notes within 120 columns', () => {
    expect(starterPlan.split('\n').filter(line => line.length > 120)).toEqual([])
  })
})

describe('the empty plan', () => {
  it('wants nothing but words, says so, and is a week with them', () => {
    expect(() => read(emptyPlan)).toThrow(
      /^plan\.yaml:7:1: error: "words" has no value\n {2}Write a dash and a word on each line/,
    )
    const { words, print } = read(emptyPlan.replace('words:\n', 'words:\n  - reed\n'))
    expect(words.map(({ text }) => text)).toEqual(['reed'])
    expect(print.length).toBeGreaterThan(5)
  })
})
