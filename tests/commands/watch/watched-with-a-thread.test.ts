/** The command as it is installed, watching: its thread is found beside the bundle, does the disk's work, and ends with it. */
import { spawn } from 'node:child_process'
import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, it } from 'vitest'
import { makeCommand } from '../../../src/commands/make.js'
import { folderWith } from '../../pipeline/plan-folder.js'
import { commandFile } from '../run-oaktag.js'
import { whatIsTold } from './what-is-told.js'

const week = (words: string) =>
  `title: By the marsh\nwords: [${words}]\nmarks: [{pattern: consonant-digraph}]\nprint: [word-cards, key]\n`

/** Has Node tell what is said to a thread and what it says, as far as its first words go. */
const listening = `const threads = require('node:worker_threads')
threads.Worker = class extends threads.Worker {
  constructor(...given) {
    super(...given)
    this.on('message', said => process.stderr.write('said ' + (said === 'ready' ? said : 'done') + '\\n'))
    this.on('exit', () => process.stderr.write('thread ended\\n'))
  }
}
`

function setIn(folder: string): Readonly<Record<string, string>> {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true }).filter(each => each.isFile())
  const paths = entries.map(({ parentPath, name }) => join(parentPath, name)).sort()
  return Object.fromEntries(paths.map(path => [path.slice(folder.length), readFileSync(path, 'latin1')]))
}

it('a changed plan’s files come by it, as make writes them', async () => {
  const changed = week('reed, moth, leaf')
  const folder = folderWith({ 'listening.cjs': listening, 'week.yaml': week('reed, marsh, leaf') })
  const watching = spawn(
    process.execPath,
    ['-r', './listening.cjs', commandFile, 'make', 'week.yaml', '--watch', '--dpi', '72'],
    { cwd: folder, stdio: ['ignore', 'pipe', 'pipe'] },
  )
  const { text, until, forget } = whatIsTold([watching.stdout, watching.stderr])
  const ended = new Promise<number | null>(done => watching.on('close', done))
  await until('said ready')
  await until('Ctrl-C ends it')
  forget()
  writeFileSync(join(folder, 'week.yaml'), changed)
  await until('Look it over')
  expect(text()).toContain('said done')
  watching.kill('SIGINT')
  expect(await ended).toBe(0)
  expect(text()).toContain('thread ended')
  expect(readdirSync(join(folder, 'out'))).toEqual(['week'])
  const apart = folderWith({ 'week.yaml': changed })
  const options = { plan: [join(apart, 'week.yaml')], out: join(apart, 'out'), dpi: 72 }
  await makeCommand(options, { stream: { write: () => true } })
  expect(setIn(join(folder, 'out/week'))).toEqual(setIn(join(apart, 'out/week')))
})
