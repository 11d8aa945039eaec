import { spawn } from 'node:child_process'
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { makeCommand } from '../../src/commands/make.js'
import { progressLine } from '../../src/commands/progress-line.js'
import { folderWith } from '../pipeline/plan-folder.js'
import { commandFile } from './run-oaktag.js'

const silent = { write: () => true }

const week = (words: string, more = '') => `words: [${words}]
marks: [{pattern: consonant-digraph}]
print:
  - layout: word-cards
  - layout: key
${more}`

async function made(folder: string, only?: readonly string[]) {
  const plan = [join(folder, 'week.yaml')]
  const options = { plan, out: join(folder, 'out'), format: 'svg', dpi: 72, only }
  return makeCommand(options, { stream: silent })
}

describe('what make says at the end', () => {
  it('counts sheets of card and paper, and names guessed words', async () => {
    const folder = folderWith({ 'week.yaml': week('marsh, thrush, blorf') })
    const { output, exitCode } = await made(folder)
    expect(exitCode).toBe(0)
    expect(output).toContain('In all: 1 sheet of card, 2 of paper')
    expect(output).toContain('Look at twice:\n  guessed, not in the dictionary: blorf (see oaktag study)')
  })

  it('has nothing to look at twice in a good week', async () => {
    const { output } = await made(folderWith({ 'week.yaml': week('marsh, thrush') }))
    expect(output).not.toContain('Look at twice')
  })

  it('names what --only leaves older than the plan, and how to make it again', async () => {
    const folder = folderWith({ 'week.yaml': week('marsh, thrush') })
    await made(folder)
    const same = await made(folder, ['word-cards'])
    expect(same.output).not.toContain('older')
    writeFileSync(
      join(folder, 'week.yaml'),
      `# Another note moves the lines alone.\n${week('marsh, thrush')}`,
    )
    expect((await made(folder, ['word-cards'])).output).not.toContain('older')
    writeFileSync(join(folder, 'week.yaml'), week('marsh, thrush, moth'))
    const { output } = await made(folder, ['word-cards'])
    const unfolded = output.replaceAll(/\n {4}/g, ' ')
    expect(unfolded).toContain(`older than the plan: key; to make again: oaktag make `)
    expect(unfolded).toMatch(/week\.yaml"? --only key\n/)
    expect((await made(folder, ['key'])).output).not.toContain('older')
  })

  it('names what went with the set of another plan of this name, title and class', async () => {
    const out = folderWith({})
    const plans = {
      reading: folderWith({ 'week.yaml': week('marsh, thrush') }),
      writing: folderWith({ 'week.yaml': week('marsh, moth').replace('key', 'bag-labels') }),
    }
    const from = (place: keyof typeof plans) =>
      makeCommand(
        { plan: [join(plans[place], 'week.yaml')], out, format: 'svg', dpi: 72 },
        { stream: silent },
      )
    expect((await from('reading')).output).not.toContain('replaced')
    const { output, problems } = await from('writing')
    expect(problems).toBe('')
    expect(output.replaceAll(/\n */g, ' ')).toContain(
      'The set that stood here was replaced; no longer in it: the item key; the word thrush.',
    )
    expect((await from('writing')).output).not.toContain('replaced')
  })

  it('warns of copies that a page does not take', async () => {
    const folder = folderWith({ 'week.yaml': week('marsh, thrush', '    copies: 3\n') })
    expect((await made(folder)).problems).toContain(
      'warning: "copies" does nothing for "key": pages are made once',
    )
  })
})

describe('progress', () => {
  const told = (terminal: object, times: readonly number[]) => {
    const written: string[] = []
    const clock = [0, ...times]
    const line = progressLine({ ...terminal, write: text => written.push(text) }, () => clock.shift() ?? 9999)
    line.tell({ step: 'laid out', item: 'word-cards', done: 1, of: 10 })
    line.tell({ step: 'written', item: 'bingo', done: 10, of: 10 })
    line.end()
    return written
  }

  it('is a line an item where there is no terminal', () => {
    expect(told({}, [1500, 2500])).toEqual([' 1 of 10 word-cards: laid out\n', '10 of 10 bingo: written\n'])
  })

  it('is a bar in one line on a terminal, gone at the end', () => {
    const written = told({ isTTY: true, columns: 80 }, [1500, 2500])
    expect(written[1]).toBe(`\r\u001B[K[${'#'.repeat(24)}] 10 of 10 bingo`)
    expect([written.length, written.at(-1)]).toEqual([3, '\r\u001B[K'])
  })

  it('says nothing in the first second', () => {
    expect(told({}, [400, 900])).toEqual([])
    expect(told({ isTTY: true }, [400, 900])).toEqual([])
  })
})

describe('Ctrl-C', () => {
  it('stops, leaves the last set as it was, and nothing behind', async () => {
    const words = 'reed, marsh, shrub, thrush, stream, spring, gnat, wren, leaf, moth, frog, perch'
    const folder = folderWith({ 'week.yaml': `words: [${words}]\nprint: [word-cards]\n` })
    await made(folder)
    const before = readFileSync(join(folder, 'out/week/manifest.json'), 'utf8')
    const bingo = '  - {layout: bingo, boards: 24, grid: 3x3}\n'
    writeFileSync(join(folder, 'week.yaml'), `words: [${words}]\nprint:\n${bingo}${bingo}`)
    const run = spawn(process.execPath, [commandFile, 'make', 'week.yaml'], { cwd: folder })
    let told = ''
    run.stderr.on('data', (text: Buffer) => {
      told += text.toString()
    })
    // The first files are on the disk, more are on their way.
    await untilSeen(() => pathsIn(join(folder, 'out')).some(path => /^[^/]+\/bingo\/.*\.png$/.test(path)))
    run.kill('SIGINT')
    const code = await new Promise(resolve => run.on('close', resolve))
    expect([code, told.trim().split('\n').at(-1)]).toEqual([
      130,
      'oaktag: stopped; the last set is as it was',
    ])
    expect(readdirSync(join(folder, 'out'))).toEqual(['week'])
    expect(readFileSync(join(folder, 'out/week/manifest.json'), 'utf8')).toBe(before)
  })
})

/** Looks again and again, since what another process does on the disk is told to nobody. */
async function untilSeen(isSo: () => boolean): Promise<void> {
  while (!isSo()) await new Promise(done => setTimeout(done, 5))
}

function pathsIn(folder: string): readonly string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
}
