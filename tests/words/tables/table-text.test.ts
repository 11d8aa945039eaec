import { describe, expect, test } from 'vitest'
import { formatProblem } from '../../../src/problems.js'
import { readTable } from '../../../src/words/tables/table-text.js'

const head = [
  '# Birds of the marsh.',
  '# Source: our own',
  '# Columns: bird (word) | draft (text)',
  '# Order: alphabetical',
]

function problemsOf(lines: readonly string[]): readonly string[] {
  return readTable('birds.tsv', `${lines.join('\n')}\n`).problems.map(formatProblem)
}

const without = (name: string) => head.filter(line => !line.startsWith(`# ${name}`))

describe('the text of a table', () => {
  test('a row has its fields and knows its line; empty lines and remarks are passed over', () => {
    const table = readTable(
      'birds.tsv',
      [...head, 'coot\ta bird', '', '# a duck', 'teal\ta duck', ''].join('\n'),
    )
    expect(table.ok && table.value.rows).toEqual([
      { line: 5, fields: ['coot', 'a bird'] },
      { line: 8, fields: ['teal', 'a duck'] },
    ])
  })

  test('line ends of another system make no difference', () => {
    const table = readTable('birds.tsv', [...head, 'coot\ta bird', ''].join('\r\n'))
    expect(table.ok && table.value.rows).toEqual([{ line: 5, fields: ['coot', 'a bird'] }])
  })

  test('a head that says it all is enough', () => {
    expect(problemsOf(head)).toEqual([])
  })
})

describe('the head of a table', () => {
  test.each([
    ['Source', 'Write where its lines come from, or "# Source: common practice, no source".'],
    ['Columns', 'Write each column with its kind, as in "# Columns: word (word) | draft (text)".'],
    ['Order', 'Write one of: alphabetical; alphabetical, a word may have several lines; as it stands.'],
  ])('needs a line for %s', (name, advice) => {
    const problem = `birds.tsv: error: The head has no line "# ${name}: …"\n  ${advice}`
    expect(problemsOf(without(name))).toEqual([problem])
    expect(problemsOf(head.map(line => (line.startsWith(`# ${name}`) ? `# ${name}:` : line)))).toEqual([
      problem,
    ])
  })

  test('needs to say what the table holds', () => {
    expect(problemsOf(head.slice(1))).toEqual([
      'birds.tsv:1: error: The head does not say what the table holds\n  Begin the file with a line "# …" that tells a reader what its rows say.',
    ])
  })

  test('needs columns of kinds that are known', () => {
    const [problem, ...others] = problemsOf([
      ...without('Columns'),
      '# Columns: bird (word) | wings (feathers)',
    ])
    expect(problem).toMatch(
      /^birds\.tsv:4: error: The column "wings \(feathers\)" has no kind that is known\n {2}Write a name and in brackets one of: word, words, /,
    )
    expect(others).toEqual([])
  })

  test('needs an order that is known', () => {
    expect(problemsOf([...without('Order'), '# Order: by size'])).toEqual([
      'birds.tsv:4: error: This order is not known\n  Write one of: alphabetical; alphabetical, a word may have several lines; as it stands.',
    ])
  })
})
