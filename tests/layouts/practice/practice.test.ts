import { describe, expect, it } from 'vitest'
import type { PrintedItem } from '../../../src/files/printed-plan.js'
import { formatProblem } from '../../../src/problems.js'
import type { AnswerData } from '../../../src/sets/answer-data.js'
import { kindsOf, linesOn, marshWithClues, printAll, printItem, problemsOf } from '../print-item.js'

const item = (practise: string, ...more: readonly string[]) =>
  `{${['layout: practice', `practise: ${practise}`, ...more].join(', ')}}`
const plan = marshWithClues.replace(
  '  - {word: gnat,',
  '  - {word: hop}\n  - {word: carry}\n  - {word: gnat,',
)
const kinds = ['plurals', 'endings', 'parts of speech', 'clues', 'sounds', 'marks', 'copy']

function promptsOf({ answerData = [] }: PrintedItem): readonly { prompt: string; answer: string }[] {
  const list: readonly AnswerData[] = Array.isArray(answerData) ? answerData : []
  return list.map(each => {
    if (typeof each !== 'object' || each === null || Array.isArray(each)) throw new Error('no prompt')
    const { prompt, answer } = { prompt: '', answer: '', ...each }
    return { prompt: String(prompt), answer: String(answer) }
  })
}

describe.each(kinds)('practice of %s', practise => {
  it('is a page for the child with a line for her name, and a page of answers', async () => {
    const printed = await printItem(item(practise), plan)
    expect(kindsOf(printed)).toEqual(['practice', 'answers'])
    expect(linesOn(printed, 'practice')).toContain('Name')
  })

  it('has the answer of every prompt on its page of answers, in the order of the prompts', async () => {
    const printed = await printItem(item(practise), plan)
    const lines = linesOn(printed, 'answers').filter(line => /^\d+ \| /.test(line))
    const prompts = promptsOf(printed)
    expect(lines).toHaveLength(prompts.length)
    for (const [index, { prompt, answer }] of prompts.entries())
      expect(lines[index]!.startsWith(`${index + 1} | ${prompt} | ${answer}`)).toBe(true)
  })

  it('numbers the child’s page as the answers are numbered', async () => {
    const printed = await printItem(item(practise, 'prompts: 20'), plan)
    if (practise === 'parts of speech') return
    const text = linesOn(printed, 'practice').join(' | ')
    for (const [index] of promptsOf(printed).entries()) expect(` ${text} `).toContain(` ${index + 1} `)
  })

  it('is made for the class and for a group with words of its own, in large print', async () => {
    const printed = await printAll([item(practise)], plan.replace('marks:', `${otters}marks:`))
    if (!printed.ok) throw new Error(printed.problems.map(formatProblem).join('\n'))
    expect(printed.value.map(({ group }) => group)).toEqual([null, 'Otters'])
    const own = promptsOf(printed.value[1]!).map(({ prompt }) => prompt)
    expect(own.join(' ')).not.toContain('reed')
    expect(kindsOf(printed.value[1]!)).toEqual(['practice', 'answers'])
  })
})

const otters = `groups:
  - name: Otters
    size: large
    words:
      - {word: moth, clue: it flies to the lamp}
      - {word: run, clue: faster than a walk}
      - {word: fish, clue: it swims}
      - {word: box, clue: to put things in}
`

describe('the child’s page', () => {
  it.each(kinds.filter(kind => kind !== 'parts of speech' && kind !== 'clues'))(
    'of %s tells no answer',
    async practise => {
      const printed = await printItem(item(practise), plan)
      const told = linesOn(printed, 'practice').flatMap(line => line.split(' | '))
      const secret = promptsOf(printed).filter(({ prompt, answer }) => prompt !== answer)
      expect(secret.filter(({ answer }) => told.includes(answer))).toEqual([])
    },
  )

  it('has the rules over the words unless the teacher wants them in the order of the list', async () => {
    const sorted = linesOn(await printItem(item('plurals'), plan), 'practice')
    expect(sorted).toContain('f to v, es at the end')
    const listed = linesOn(await printItem(item('plurals', 'sorted: no'), plan), 'practice')
    expect(listed).not.toContain('f to v, es at the end')
    expect(listed.filter(line => /^\d+ /.test(line)).slice(0, 3)).toEqual([
      '1 | reed',
      '2 | marsh',
      '3 | shrub',
    ])
  })

  it('takes as many pages as its prompts need, none a remnant', async () => {
    const printed = await printItem(item('copy', 'prompts: 5'), plan)
    const counts = printed.sheets
      .filter(({ kind }) => kind === 'practice')
      .map(
        sheet => linesOn({ ...printed, sheets: [sheet] }, 'practice').filter(line => /^\d/.test(line)).length,
      )
    expect(counts).toEqual([5, 4, 5])
  })

  it('has room for the heads of its columns in very large print', async () => {
    const { sheets } = await printItem(item('copy', 'size: x-height 9 mm'), plan)
    expect(sheets.filter(({ kind }) => kind === 'practice').length).toBeGreaterThan(1)
  })

  it('has the words to choose from over the clues by the alphabet, unless they are not wanted', async () => {
    const bank = linesOn(await printItem(item('clues'), plan), 'practice')
    expect(bank).toContain('frog | gnat | leaf | marsh | moth | perch')
    expect(linesOn(await printItem(item('clues', 'bank: no'), plan), 'practice').join(' ')).not.toContain(
      'gnat',
    )
  })

  it('shows the words of a practice of marks bare under the key, and the answers marked', async () => {
    const printed = await printItem(item('marks'), plan)
    expect(linesOn(printed, 'practice').join(' ')).toContain('consonant digraph')
    const [child, answers] = printed.sheets
    const shapesOf = (sheet: typeof child) =>
      sheet!.furniture.find(({ art }) => art.text[0]?.text === 'marsh')!.art.shapes.length
    expect(shapesOf(answers)).toBeGreaterThan(shapesOf(child))
  })
})

describe('the page of answers', () => {
  it('tells which words were added, which were left out and why', async () => {
    const few = plan.replace(/words:[\s\S]*marks:/, 'words: [reed, leaf, carry, zorpish]\nmarks:')
    const told = linesOn(await printItem(item('plurals'), few), 'answers').join(' ')
    expect(told).toMatch(/Not from the list, but chosen from the words that find offers: \w+/)
    expect(told).toContain('Left out: carry (no noun); zorpish (what we know of it is a guess).')
  })

  it('says which clues are drafts', async () => {
    const drafts = plan.replace('words:', 'clues: drafts\nwords:')
    const told = linesOn(await printItem(item('clues'), drafts), 'answers').join(' ')
    expect(told).toContain('Our drafts, not your clues, for hop, carry:')
  })

  it('says of look, cover, write, check that it is common practice', async () => {
    const told = linesOn(await printItem(item('copy'), plan), 'answers').join(' ')
    expect(told).toContain('is common practice; we know of no source for it')
  })
})

describe('a wish that cannot be met', () => {
  const bare = plan.replace(/words:[\s\S]*marks:/, 'words: [zorpish, blorf]\nmarks:')

  it.each([
    ['plurals', 'no word of the list is a noun with one plural in use', 'Add nouns'],
    ['endings', 'no word of the list takes -s, -ed, -ing, -er or -est by a rule', 'Add verbs'],
    ['parts of speech', 'fewer than two parts of speech', 'Add words of another part of speech'],
    ['clues', 'no word of the list has a clue', 'clues: drafts'],
    ['sounds', 'the sounds of every word of the list are a guess', 'Write the sounds'],
    ['marks', 'no word of the list shows anything that the plan marks', 'Give the plan marks'],
  ])('%s: is told with what to do', async (practise, message, advice) => {
    const problems = await problemsOf(item(practise), bare)
    expect(problems).toContain(message)
    expect(problems).toContain(advice)
  })

  it('is told of a list that no week has', async () => {
    const letters = 'abcdefghijklmnopqrst'
    const words = [...letters].flatMap(a => [...letters].map(b => `${a}${b}o`))
    const long = plan.replace(/words:[\s\S]*marks:/, `words: [${words.join(', ')}]\nmarks:`)
    expect(await problemsOf(item('copy'), long)).toContain('practice would ask 400 things')
  })
})
