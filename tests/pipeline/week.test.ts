import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import { putPlanOnSheets } from '../../src/pipeline.js'
import { weekParts } from '../../src/plan/week/week-parts.js'
import { formatProblem, type Outcome } from '../../src/problems.js'
import { kindsOf, linesOn, piecesOf } from '../layouts/print-item.js'
import { folderWith } from './plan-folder.js'
import { sharedWork } from './shared-work.js'

interface Made {
  readonly items: readonly PrintedItem[]
  readonly problems: readonly string[]
}

async function outcomeOf(plan: string): Promise<Outcome<Made>> {
  const folder = folderWith({ 'week.yaml': plan })
  const outcome = await putPlanOnSheets({ planFile: join(folder, 'week.yaml'), kept: sharedWork })
  if (!outcome.ok) return outcome
  const problems = outcome.problems.map(({ message }) => message)
  return { ...outcome, value: { items: outcome.value.items.map(({ printed }) => printed), problems } }
}

async function made(plan: string): Promise<Made> {
  const outcome = await outcomeOf(plan)
  if (!outcome.ok) throw new Error(outcome.problems.map(formatProblem).join('\n'))
  return outcome.value
}

const words = 'words: [reed, marsh, heron, spring, knot, stream, thrush, lake, wren, duck]\n'
/** The week with these of its parts alone. */
const weekOf = (...parts: readonly string[]) => {
  const without = weekParts.flatMap(({ name }) => (parts.includes(name) ? [] : [name]))
  return `week: {without: [${without.join(', ')}]}\n`
}
const lettersOn = (item: PrintedItem) =>
  piecesOf(item).flatMap(({ marks }) => marks.map(({ letters }) => letters))

describe('a week without marks of the teacher’s', () => {
  it('marks what most of its words show, and says so once', async () => {
    const { items, problems } = await made(`${words}${weekOf('word-cards', 'key')}`)
    expect(new Set(lettersOn(items[1]!))).toEqual(
      new Set(['sh', 'ck', 'ng', 'ee', 'ea', 'spr', 'str', 'kn', 'wr']),
    )
    const told = items
      .flatMap(({ notes }) => notes)
      .filter(note => note.startsWith('The plan names no marks'))
    expect(told).toEqual([
      'The plan names no marks: what its words show most often is marked, consonant-digraph, three-letter-blend, vowel-team and silent-letters. To choose yourself, write marks: in the plan.',
    ])
    expect(problems).toEqual([])
  })

  it('marks nothing where she writes that nothing is marked', async () => {
    const { items } = await made(`${words}marks: []\n${weekOf('word-cards')}`)
    expect(lettersOn(items[0]!)).toEqual([])
  })

  it('marks what a group’s own words show besides, and asks nothing about it', async () => {
    const groups = 'groups: [{name: Otters, words: [hop, hopping, mud, muddy]}]\n'
    const { items, problems } = await made(`${words}${groups}${weekOf('word-cards')}`)
    expect(items.map(({ name }) => name)).toEqual(['word-cards', 'word-cards-otters'])
    expect(lettersOn(items[1]!)).toContain('pp')
    expect(problems).toEqual([])
  })

  it('marks nothing more for a group that has the class’s words', async () => {
    const { items, problems } = await made(
      `${words}groups: [{name: Otters, size: 24 pt}]\n${weekOf('word-cards')}`,
    )
    expect(lettersOn(items[1]!).toSorted()).toEqual(lettersOn(items[0]!).toSorted())
    expect(problems).toEqual([])
  })
})

describe('a part for which the words are not enough', () => {
  const few = 'words: [they, said]\n'

  it('is left out with a warning that names it, and the rest is made', async () => {
    const { items, problems } = await made(`${few}${weekOf('word-cards', 'practice-plurals', 'closed-sort')}`)
    expect(items.map(({ name }) => name)).toEqual(['word-cards'])
    expect(problems).toEqual([
      expect.stringMatching(/^the week goes without practice-plurals: no word of the list is a noun/),
      expect.stringMatching(/^the week goes without closed-sort: the words support no sort/),
    ])
  })

  it('stays an error where the teacher names it under print:', async () => {
    const outcome = await outcomeOf(`${few}${weekOf('word-cards')}print: [closed-sort]\n`)
    expect(outcome.problems.map(({ severity }) => severity)).toEqual(['error'])
  })

  it('is no week where nothing else is left', async () => {
    const outcome = await outcomeOf(`${few}${weekOf('closed-sort')}`)
    expect(outcome.ok).toBe(false)
    expect(outcome.problems.map(({ message }) => message)).toContain('nothing of the week can be made')
  })
})

describe('a part that would ask what another one asks', () => {
  const practice = weekOf('practice-plurals', 'practice-endings')

  it('is left out, and told of with that one', async () => {
    const { items, problems } = await made(`words: [rabbit, tiger, kitten]\n${practice}`)
    expect(items.map(({ name }) => name)).toEqual(['practice-plurals'])
    expect(items[0]!.notes).toContain('The week has no practice-endings: it would ask for the same words.')
    expect(problems).toEqual([])
  })

  it('is made where it asks for one word more', async () => {
    const { items } = await made(`words: [rabbit, tiger, kitten, jump]\n${practice}`)
    expect(items.map(({ name }) => name)).toEqual(['practice-plurals', 'practice-endings'])
  })

  it('is made where its words are to be copied, though another part has them as its answers', async () => {
    const { items } = await made(
      `words: [hopped, baked, carries]\n${weekOf('practice-endings', 'practice-copy')}`,
    )
    expect(items.map(({ name }) => name)).toEqual(['practice-endings', 'practice-copy'])
  })

  it('is made where the teacher names it under print:', async () => {
    const print = 'print: [{layout: practice, practise: endings}]\n'
    const { items } = await made(`words: [rabbit, tiger, kitten]\n${practice}${print}`)
    expect(items.map(({ name }) => name)).toEqual(['practice-plurals', 'practice'])
  })
})

describe('what is printed of a week', () => {
  const sets = `${words}children: 9\n${weekOf('lesson-notes', 'practice-copy', 'bingo', 'closed-sort', 'dictation')}`
  const uses = async (plan: string) =>
    Object.fromEntries((await made(plan)).items.map(({ name, week }) => [name, week]))

  it('is told of each set with its day and its number', async () => {
    expect(await uses(sets)).toMatchObject({
      'lesson-notes': { day: 'lesson', print: 'one for you' },
      'practice-copy': {
        title: 'Practice: copy',
        day: 'practice',
        print: '9, one for each child; for you once: answers',
      },
      'closed-sort': {
        day: 'centres',
        print: '5, one for each pair of children; for you once: answers, cover',
      },
      bingo: { day: 'centres', print: 'once: 9 boards are in it' },
      dictation: { day: 'check', print: 'once: 9 are in it, one for each child' },
    })
  })

  it('names no number where the plan does not say how many children there are', async () => {
    const { 'practice-copy': copy, dictation } = await uses(`${words}${weekOf('practice-copy', 'dictation')}`)
    expect(copy?.print).toBe('one for each child; for you once: answers')
    expect(dictation?.print).toBe(
      'one for each child: 2 are in it; for you once: list to read aloud, answers, class record, cover',
    )
  })

  it('is once where the copies are among its sheets', async () => {
    const { 'closed-sort': sort } = await uses(
      `${words}${weekOf()}print: [{layout: closed-sort, copies: 4}]\n`,
    )
    expect(sort?.print).toBe('once: 4 sets are in it')
  })

  it('is told of no plan without the week', async () => {
    expect((await made(`${words}print: [word-cards]\n`)).items[0]?.week).toBeUndefined()
  })

  it('has a board for each child of the class and of a group', async () => {
    const groups = 'groups: [{name: Otters, children: 3}, {name: Terns}]\n'
    const { items } = await made(`${words}${groups}children: 9\n${weekOf('bingo')}`)
    expect(items.map(item => piecesOf(item).length)).toEqual([9, 3, 24])
  })
})

describe('pages for the board in a week', () => {
  it('are for the class alone, where it has words, and else for each group', async () => {
    const week = `${weekOf('board-pages')}print: [{layout: board-pages, each word: none}]\n`
    const groups = 'groups: [{name: Otters, words: [mud, pond]}]\n'
    const namesOf = async (plan: string) => (await made(plan)).items.map(({ name }) => name)
    expect(await namesOf(`${groups}${week}`)).toEqual(['board-pages-otters'])
    const alone = await made(`words: [mud, pond]\n${groups}${weekOf('board-pages')}`)
    expect(alone.items.map(({ name }) => name)).toEqual(['board-pages'])
    expect(kindsOf(alone.items[0]!)).toEqual(['screen'])
    expect(linesOn(alone.items[0]!, 'screen').join(' ')).toContain('mud')
  })
})
