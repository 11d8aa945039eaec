/** Chromium without a window, driven over its debugging pipe, for what can only be measured in a browser. */
import { type ChildProcess, spawn } from 'node:child_process'
import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Readable, Writable } from 'node:stream'
import { pathToFileURL } from 'node:url'
import { quiet } from './chromium.js'

export interface Browser {
  /** Opens a file in a viewport this wide, in CSS pixels. */
  open(file: string, widthPx: number, fragment?: string): Promise<void>
  /** The value of an expression in the page. */
  evaluate<T>(expression: string): Promise<T>
  press(key: 'Tab' | 'Escape' | 'Enter'): Promise<void>
  screenshot(heightPx: number): Promise<Buffer>
  /** What the browser would print now, on pages of the size that the page asks for. */
  print(): Promise<Buffer>
  /** What the page asked for beside its own file since it was opened. */
  requests(): readonly string[]
  /** What the browser told of the page since it was opened, as a refused script. */
  complaints(): readonly string[]
  close(): Promise<void>
}

interface Answer {
  readonly id?: number
  readonly method?: string
  readonly params?: Readonly<Record<string, unknown>>
  readonly result?: unknown
  readonly error?: { readonly message: string }
}

export async function openBrowser(): Promise<Browser> {
  const profile = await mkdtemp(join(tmpdir(), 'oaktag-browser-'))
  const process = spawn(
    'chromium',
    [...quiet, '--remote-debugging-pipe', `--user-data-dir=${profile}`, 'about:blank'],
    {
      stdio: ['ignore', 'ignore', 'ignore', 'pipe', 'pipe'],
    },
  )
  const { send, on } = connection(process)
  const { targetInfos } = await send<{ targetInfos: { type: string; targetId: string }[] }>(
    'Target.getTargets',
  )
  const { targetId } = targetInfos.find(target => target.type === 'page')!
  const { sessionId } = await send<{ sessionId: string }>('Target.attachToTarget', {
    targetId,
    flatten: true,
  })
  const ask = <T>(method: string, params: object = {}) => send<T>(method, params, sessionId)
  let asked: string[] = []
  let told: string[] = []
  on('Network.requestWillBeSent', ({ request }) => asked.push((request as { url: string }).url))
  on('Log.entryAdded', ({ entry }) => told.push((entry as { text: string }).text))
  on('Runtime.exceptionThrown', details => told.push(JSON.stringify(details)))
  on('Page.javascriptDialogOpening', ({ message }) => told.push(`dialogue: ${String(message)}`))
  for (const domain of ['Page', 'Network', 'Log', 'Runtime']) await ask(`${domain}.enable`)
  const evaluate = async <T>(expression: string): Promise<T> => {
    const { result, exceptionDetails } = await ask<{ result: { value: T }; exceptionDetails?: object }>(
      'Runtime.evaluate',
      { expression, awaitPromise: true, returnByValue: true },
    )
    if (exceptionDetails !== undefined) throw new Error(JSON.stringify(exceptionDetails))
    return result.value
  }
  return {
    open: async (file, widthPx, fragment = '') => {
      ;[asked, told] = [[], []]
      await ask('Emulation.setDeviceMetricsOverride', {
        width: widthPx,
        height: 800,
        deviceScaleFactor: 1,
        mobile: false,
      })
      // A new document even where only the fragment differs.
      await ask('Page.navigate', { url: 'about:blank' })
      const url = `${pathToFileURL(file).href}${fragment}`
      await ask('Page.navigate', { url })
      await evaluate(
        'new Promise(done => document.readyState === "complete" ? done() : addEventListener("load", () => done()))',
      )
      await evaluate('document.fonts.ready.then(() => undefined)')
      asked = asked.filter(each => each !== url && each !== 'about:blank' && !each.startsWith('data:'))
    },
    evaluate,
    press: async key => {
      const codes = { Tab: 9, Escape: 27, Enter: 13 }
      const event = {
        key,
        code: key,
        windowsVirtualKeyCode: codes[key],
        ...(key === 'Enter' ? { text: '\r' } : {}),
      }
      await ask('Input.dispatchKeyEvent', { type: 'keyDown', ...event })
      await ask('Input.dispatchKeyEvent', { type: 'keyUp', ...event })
    },
    screenshot: async heightPx => {
      const width = await evaluate<number>('innerWidth')
      const clip = { x: 0, y: 0, width, height: heightPx, scale: 1 }
      const shot = { format: 'png', clip, captureBeyondViewport: true }
      const { data } = await ask<{ data: string }>('Page.captureScreenshot', shot)
      return Buffer.from(data, 'base64')
    },
    print: async () => {
      const options = { preferCSSPageSize: true, displayHeaderFooter: false, printBackground: false }
      const { data } = await ask<{ data: string }>('Page.printToPDF', options)
      return Buffer.from(data, 'base64')
    },
    requests: () => asked.filter(each => !each.startsWith('data:')),
    complaints: () => told,
    close: async () => {
      const gone = new Promise(done => process.once('exit', done))
      await send('Browser.close')
      await gone
      await rm(profile, { recursive: true, force: true, maxRetries: 5 })
    },
  }
}

/** Messages are JSON, each ended by a zero byte (Chrome DevTools Protocol, pipe transport). */
function connection(process: ChildProcess) {
  const [, , , write, read] = process.stdio as unknown as [null, null, null, Writable, Readable]
  const waiting = new Map<number, (answer: Answer) => void>()
  const listeners = new Map<string, (params: Readonly<Record<string, unknown>>) => void>()
  let sent = 0
  let text = ''
  read.setEncoding('utf8')
  read.on('data', (chunk: string) => {
    const messages = (text + chunk).split('\0')
    text = messages.pop()!
    for (const message of messages) {
      const answer = JSON.parse(message) as Answer
      if (answer.id !== undefined) waiting.get(answer.id)?.(answer)
      else if (answer.method !== undefined) listeners.get(answer.method)?.(answer.params ?? {})
    }
  })
  return {
    on: (method: string, listener: (params: Readonly<Record<string, unknown>>) => void) =>
      listeners.set(method, listener),
    send: <T>(method: string, params: object = {}, sessionId?: string): Promise<T> =>
      new Promise((resolve, reject) => {
        const id = ++sent
        waiting.set(id, ({ result, error }) =>
          error === undefined ? resolve(result as T) : reject(new Error(`${method}: ${error.message}`)),
        )
        write.write(
          `${JSON.stringify({ id, method, params, ...(sessionId === undefined ? {} : { sessionId }) })}\0`,
        )
      }),
  }
}
