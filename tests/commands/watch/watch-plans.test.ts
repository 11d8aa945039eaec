import { readdirSync, readFileSync, renameSync, statSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { constants, PerformanceObserver } from 'node:perf_hooks'
import { describe, expect, it } from 'vitest'
import { makeCommand } from '../../../src/commands/make.js'
import { STANDARD_INPUT } from '../../../src/commands/standard-input.js'
import { type Browser, openBrowser } from '../../files/browser.js'
import { hasProgram } from '../../files/system-program.js'
import { folderWith } from '../../pipeline/plan-folder.js'
import { outOf, watchPlan } from './watched-plan.js'

/** The cards alone, but where it is asked what stands in every file of a set. */
const week = ({
  words = 'reed, marsh, wren, leaf',
  line = 'wavy',
  color = '#005a9c',
  print = 'word-cards',
} = {}) => `title: By the marsh
words: [${words}]
marks: [{pattern: consonant-digraph, line: ${line}, color: "${color}"}]
print: [${print}]
`

/** Every file of the set in this folder, by its path. */
function setIn(folder: string): ReadonlyMap<string, string> {
  const paths = readdirSync(folder, { recursive: true, encoding: 'utf8' }).toSorted()
  const files = paths.filter(path => statSync(join(folder, path)).isFile())
  return new Map(files.map(path => [path, readFileSync(join(folder, path), 'latin1')]))
}

/** The set that a command makes of the plan which has never made one. */
async function setMadeAlone(text: string): Promise<ReadonlyMap<string, string>> {
  const folder = folderWith({ 'week.yaml': text })
  const plan = [join(folder, 'week.yaml')]
  const options = { plan, out: outOf(folder), format: 'svg,png', dpi: 72 }
  await makeCommand(options, { stream: { write: () => true } })
  return setIn(join(outOf(folder), 'week'))
}

/** Resolved when garbage is collected for once because somebody asks for it. */
function garbageCollected(): Promise<void> {
  return new Promise(done => {
    const observer = new PerformanceObserver(list => {
      if (!list.getEntries().some(isAskedFor)) return
      observer.disconnect()
      done()
    })
    observer.observe({ entryTypes: ['gc'] })
  })
}

const isAskedFor = (collected: object): boolean =>
  'detail' in collected &&
  typeof collected.detail === 'object' &&
  collected.detail !== null &&
  'flags' in collected.detail &&
  collected.detail.flags === constants.NODE_PERFORMANCE_GC_FLAGS_FORCED

const address = (output: string): string => /http:\S+/.exec(output)![0]

describe('a plan that is watched', () => {
  it('gives the set that make gives of it, after each change', async () => {
    const print = 'word-cards, key, {layout: bingo, boards: 3, grid: 2x2, cover: no}'
    const folder = folderWith({ 'week.yaml': week({ print }) })
    const file = join(folder, 'week.yaml')
    const watched = watchPlan(file, outOf(folder))
    expect((await watched.next()).output).toContain('By the marsh: made in')
    await watched.next()
    for (const change of [
      { words: 'reed, marsh, moth, leaf' },
      { color: '#b3261e' },
      { line: 'double' },
      {},
    ]) {
      const text = week({ ...change, print })
      writeFileSync(file, text)
      expect((await watched.next()).exitCode).toBe(0)
      expect(setIn(join(outOf(folder), 'week'))).toEqual(await setMadeAlone(text))
    }
    expect(await watched.stop()).toEqual({ output: 'Watching has ended.', problems: '', exitCode: 0 })
  })

  it('is waited for while garbage is collected, and not before its set is there', async () => {
    const folder = folderWith({ 'week.yaml': week() })
    const collected = garbageCollected()
    const watched = watchPlan(join(folder, 'week.yaml'), outOf(folder))
    expect(await Promise.race([collected.then(() => 'garbage'), watched.next().then(() => 'a set')])).toBe(
      'a set',
    )
    await collected
  }, 20_000)

  it('that is broken leaves the last good set, says why, and goes on when it is mended', async () => {
    const folder = folderWith({ 'week.yaml': week() })
    const file = join(folder, 'week.yaml')
    const watched = watchPlan(file, outOf(folder))
    await watched.next()
    const page = address((await watched.next()).output)
    const good = setIn(join(outOf(folder), 'week'))
    writeFileSync(file, week({ line: 'wavey' }))
    const broken = await watched.next()
    expect(broken.exitCode).toBe(1)
    expect(broken.problems).toContain('week.yaml:3:')
    expect(setIn(join(outOf(folder), 'week'))).toEqual(good)
    expect(await (await fetch(page)).text()).toContain('these are still the sheets from before')
    writeFileSync(file, week({ line: 'dotted' }))
    expect((await watched.next()).exitCode).toBe(0)
    expect(await (await fetch(page)).text()).not.toContain('these are still the sheets from before')
    expect(setIn(join(outOf(folder), 'week'))).toEqual(await setMadeAlone(week({ line: 'dotted' })))
  })

  it('may be broken from the beginning', async () => {
    const folder = folderWith({ 'week.yaml': 'words: [' })
    const watched = watchPlan(join(folder, 'week.yaml'), outOf(folder))
    expect((await watched.next()).exitCode).toBe(1)
    const page = address((await watched.next()).output)
    expect(await (await fetch(page)).text()).toContain('a bracket opened here is never closed')
    writeFileSync(join(folder, 'week.yaml'), week())
    expect((await watched.next()).exitCode).toBe(0)
  })

  it('is made again when a file that it names is saved, or comes to be, under another name first', async () => {
    const folder = folderWith({
      'words.txt': 'reed\nmarsh\n',
      'week.yaml': 'words: words.txt\nprint: [word-cards]\n',
    })
    const watched = watchPlan(join(folder, 'week.yaml'), outOf(folder))
    await watched.next()
    await watched.next()
    writeFileSync(join(folder, 'words.new'), 'reed\nmoth\n')
    renameSync(join(folder, 'words.new'), join(folder, 'words.txt'))
    expect((await watched.next()).output).toContain('no longer in it: the word marsh')
  })

  it('cannot be standard input', async () => {
    const options = { plan: [STANDARD_INPUT], out: 'out', dpi: 72, watch: true }
    const { exitCode, problems } = await makeCommand(options, { input: { text: async () => week() } })
    expect({ exitCode, problems }).toMatchObject({ exitCode: 2 })
    expect(problems).toContain('standard input cannot be watched')
  })
})

describe('what is shown to the browser', () => {
  it('is given to this machine’s own addresses alone, and nothing that lies outside the set', async () => {
    const folder = folderWith({ 'week.yaml': week(), 'secret.txt': 'not to be seen' })
    const watched = watchPlan(join(folder, 'week.yaml'), outOf(folder))
    await watched.next()
    const page = address((await watched.next()).output)
    expect((await fetch(`${page}manifest.json`)).status).toBe(200)
    expect((await fetch(`${page}..%2F..%2Fsecret.txt`)).status).toBe(404)
    expect((await fetch(`${page}%2E%2E/%2E%2E/secret.txt`)).status).toBe(404)
    expect((await fetch(`${page}nothing.svg`)).status).toBe(404)
    expect((await fetch(page, { method: 'POST' })).status).toBe(403)
    expect(await statusFor(page, 'marsh.example:80')).toBe(403)
  })
})

/** What a request gets that names another host, as it does where a page elsewhere was led to this address. */
async function statusFor(page: string, host: string): Promise<number | undefined> {
  const { get } = await import('node:http')
  return new Promise((done, failed) =>
    get(page, { headers: { host } }, response => {
      response.resume()
      done(response.statusCode)
    }).on('error', failed),
  )
}

describe.runIf(hasProgram('chromium'))('the page in Chromium', () => {
  it('loads itself again with each save, and obeys its own policy', async () => {
    const folder = folderWith({ 'week.yaml': week() })
    const file = join(folder, 'week.yaml')
    const watched = watchPlan(file, outOf(folder))
    await watched.next()
    const page = address((await watched.next()).output)
    const browser = await openBrowser()
    try {
      await browser.openAddress(page, 1280)
      expect(await browser.evaluate('document.title')).toBe('By the marsh')
      writeFileSync(file, week().replace('By the marsh', 'By the mill'))
      await until(browser, 'document.title === "By the mill"')
      writeFileSync(file, 'words: [')
      await until(browser, 'document.querySelector(".trouble")?.textContent.includes("never closed")')
      expect(await browser.evaluate('document.title')).toBe('By the mill')
      expect(await browser.evaluate('getComputedStyle(document.querySelector(".trouble")).whiteSpace')).toBe(
        'pre-wrap',
      )
      expect(await browser.accessibilityFaults()).toEqual([])
      writeFileSync(file, week())
      await until(browser, 'document.title === "By the marsh" && document.querySelector(".trouble") === null')
      expect(browser.complaints()).toEqual([])
    } finally {
      await browser.close()
    }
  })
})

/** Waits for the page to be so; while it loads itself again, there is none to be asked. */
async function until(browser: Browser, expression: string): Promise<void> {
  for (;;) {
    const is = await browser.evaluate<boolean>(expression).catch(() => false)
    if (is) return
    await new Promise(done => setTimeout(done, 50))
  }
}
