import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { commandLine } from '../../src/commands/command-line.js'
import { commandNames, whatNext } from '../../src/commands/first-help.js'
import { helpCommand } from '../../src/commands/help.js'
import { listCommand } from '../../src/commands/list.js'
import { listKinds } from '../../src/commands/list-kinds.js'
import { schemaText } from '../../src/commands/schema.js'
import { planReference } from '../../src/demo/plan-reference.js'
import { installationFolder } from '../../src/installation.js'
import { planKeys } from '../../src/oaktag.js'

const refuse = (message: string | null): never => {
  throw new Error(message ?? 'no message')
}
const help = (...what: readonly string[]) => helpCommand({ what })
const helpOf = (command: string) => commandLine([command], { run: async () => {}, refuse }).getHelp()

/** Lines that would run on in a terminal of 80 columns. */
const tooLong = (text: string) => text.split('\n').filter(line => line.length > 80)

describe('oaktag alone', () => {
  it('shows five things that one would do next, in a terminal of 80 × 24', () => {
    const { output, exitCode } = whatNext()
    expect([output.match(/^ {2}oaktag /gm)?.length, exitCode, tooLong(output)]).toEqual([5, 0, []])
    expect(output.split('\n').length).toBeLessThan(24)
  })
})

describe('the help of a command', () => {
  it.each(commandNames.filter(name => name !== 'help'))(
    '%s fits into 80 × 24 and has an example',
    async command => {
      const text = await helpOf(command)
      expect(tooLong(text)).toEqual([])
      expect(text.split('\n').length).toBeLessThanOrEqual(24)
      expect(text).toContain(`oaktag ${command}`)
      expect(text).toContain('Examples:')
    },
  )

  it('is there for every command', async () => {
    const all = await commandLine([], { run: async () => {}, refuse }).getHelp()
    const named = [...all.matchAll(/^ {2}oaktag ([a-z]+)/gm)].map(([, name]) => name)
    expect(named).toEqual(commandNames)
    expect(tooLong(all)).toEqual([])
  })
})

describe('help KEY', () => {
  it('tells what a key does, what it takes and shows an example', async () => {
    const { output } = await help('copies')
    expect(output).toBe(
      [
        'copies, of an item under "print:":',
        '  how many sets are printed.',
        '  takes     a whole number from 1 to 500',
        '  left out  1',
        '  for example',
        '    print:',
        '      - layout: word-cards',
        '        copies: 3',
      ].join('\n'),
    )
  })

  it.each(['part of speech', 'part-of-speech:', 'Part_of_Speech'])('takes %s', async name => {
    const { output } = await help(...name.split(' '))
    expect(output).toContain('part of speech, of a word under "words:"')
  })

  it('tells of a key at each place where it stands', async () => {
    const { output } = await help('size')
    expect(output.match(/^size, of .*$/gm)).toEqual([
      'size, of an item under "print:":',
      'size, of a group under "groups:", a group of a class file under "groups:":',
    ])
  })

  it('tells of keys inside keys', async () => {
    const { output } = await help('acuity')
    expect(output).toContain('acuity: 20/200')
    expect(output).toContain('for:')
  })

  it('tells of names too: a layout with its own keys, a pattern', async () => {
    expect((await help('bingo')).output).toMatch(/^ {2}win at +the call at which one board/m)
    expect((await help('silent-e')).output).toMatch(/^silent-e, a pattern: /)
  })

  it.each([
    ['sise', 'Did you mean "size"? "oaktag list keys" shows all keys.'],
    ['magic e', 'Write silent-e.'],
    ['dominoes', 'Write chain-cards.'],
    ['zebra', '"oaktag list keys" shows all keys.'],
  ])('advises on %s', async (name, advice) => {
    const { problems, exitCode } = await help(...name.split(' '))
    expect([problems.split('\n  ')[1], exitCode]).toEqual([advice, 2])
  })

  it('fits 80 columns for every key', async () => {
    for (const name of new Set(planKeys().map(key => key.name)))
      expect(tooLong((await help(name)).output)).toEqual([])
  })
})

describe('list', () => {
  it.each(listKinds)('%s fits 80 columns, and is JSON where asked', async kind => {
    const { output } = await listCommand({ kind, json: false })
    expect(tooLong(output)).toEqual([])
    const entries: readonly { readonly name: string }[] = JSON.parse(
      (await listCommand({ kind, json: true })).output,
    )
    expect(entries.length).toBeGreaterThan(3)
    for (const { name } of entries) expect(output).toContain(name)
  })

  it('gives all kinds of names as one JSON value', async () => {
    const names = JSON.parse((await listCommand({ json: true })).output)
    expect(Object.keys(names)).toEqual(listKinds.filter(kind => kind !== 'keys'))
  })
})

describe('schema and reference', () => {
  it('print the JSON Schema of draft 2020-12', () => {
    expect(JSON.parse(schemaText('plan'))).toMatchObject({
      $schema: 'https://json-schema.org/draft/2020-12/schema',
      title: 'A plan of oaktag',
    })
    expect(JSON.parse(schemaText('class')).title).toBe('A class file of oaktag')
  })

  it('hold the plan reference up to date ("npm run reference" writes it anew)', () => {
    const written = readFileSync(join(installationFolder, '.docs/plan-keys.md'), 'utf8')
    expect(written).toBe(planReference())
    for (const { name } of planKeys()) expect(written).toContain(`| \`${name}\` |`)
  })
})
