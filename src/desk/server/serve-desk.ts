/** The desk's server: this machine's browser alone, one plan, nothing remembered but the plan and the work on it. */
import { randomBytes } from 'node:crypto'
import { existsSync, readdirSync, readFileSync, realpathSync } from 'node:fs'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { basename, dirname, join, resolve } from 'node:path'
import { keepWork, listedWords, make, pageFonts, pathFinder, sortsOfPlan, stemOf } from '../../oaktag.js'
import type { DeskSheets, SaveAnswer } from '../messages.js'
import { listFilesIn } from '../plan-values.js'
import { namesFor } from './desk-names.js'
import { watchFiles } from './file-watch.js'
import { folderFiles, isInside } from './folder-files.js'
import { admit, cookieName, safeHeaders } from './guards.js'
import { layoutPictures } from './layout-pictures.js'
import { pictureStore } from './picture-store.js'
import { openPlanFile } from './plan-file.js'
import { type LookedAt, tellProblem, viewPlan } from './plan-view.js'
import { fieldsOf, readItem, readStep, readTypedWords } from './read-message.js'
import { parsed, readBody, refuse, send, sendFound } from './responses.js'
import { sheetRuns } from './sheet-runs.js'
import { tellTyped } from './word-view.js'

/** Of a list's file into the plan: more than a year of words. */
const mostBroughtIn = 2000

export interface Desk {
  /** With the key in it. */
  readonly address: string
  /** Ends when the page, or the caller, closes the desk. */
  readonly closed: Promise<void>
  readonly close: () => void
}

export interface DeskRequest {
  /** Path of the plan, which is there. */
  readonly plan: string
  /** Where files are saved. */
  readonly out: string
  /** Holds the page as it was built. */
  readonly pageFolder: string
}

export async function serveDesk({ plan, out, pageFolder }: DeskRequest): Promise<Desk> {
  const path = realpathSync(plan)
  const folder = dirname(path)
  const outFolder = resolve(out)
  const file = openPlanFile(path)
  const files = folderFiles(path, file.text)
  const kept = keepWork()
  const pictures = pictureStore()
  const listening = new Set<ServerResponse>()
  const names = await namesFor()
  const viewing = {
    path,
    shownName: basename(path),
    file,
    files,
    kept,
    pictures,
    definitions: names.patterns,
  }
  let looked: LookedAt = viewPlan(viewing)
  const layouts = layoutPictures({ path, files, text: file.text, pictures })

  const sheets = (): DeskSheets => {
    const { busy, older, items, problems } = runs.state()
    const find = pathFinder(file.text())
    const { waits } = looked
    const isTold = waits === undefined && !(busy && problems.length === 0)
    const all = isTold ? problems : looked.problems
    const refused = [...files.refused()].map(name => ({
      severity: 'warning' as const,
      message: `The desk does not open ${basename(name)}: it lies outside the plan’s folder.`,
      advice: 'Put it beside the plan, or make the plan with oaktag make.',
    }))
    return {
      version: file.version(),
      busy,
      older,
      ...(waits === undefined ? {} : { waits }),
      items,
      problems: [...all.slice(0, 200).map(problem => tellProblem(problem, path, find)), ...refused],
    }
  }
  const tell = (event: string, value: unknown, to: Iterable<ServerResponse> = listening): void => {
    const text = `event: ${event}\ndata: ${JSON.stringify(value)}\n\n`
    for (const response of to) response.write(text)
  }
  const runs = sheetRuns({ path, files, kept, ended: () => tell('sheets', sheets()) })
  const beginSheets = (): void => {
    if (looked.waits === undefined) runs.begin()
    else runs.rest()
  }
  const renew = (): void => {
    files.forget()
    looked = viewPlan(viewing)
    tell('plan', looked.plan)
    beginSheets()
    tell('sheets', sheets())
  }
  const watching = watchFiles(
    folder,
    () => [path, ...files.asked()],
    others => {
      // Its own writing is seen here too, and is nothing new.
      if (file.takeIn() || others.some(other => other !== path)) renew()
    },
  )

  const cookie = randomBytes(32).toString('base64url')
  const key = randomBytes(24).toString('base64url')
  let port = 0
  let isBegun = false
  let finish = (): void => undefined
  const closed = new Promise<void>(done => {
    finish = done
  })
  const server = createServer((request, response) => {
    void answer(request, response).catch(() => response.destroy())
  })
  server.headersTimeout = 20_000
  server.maxHeadersCount = 100
  await new Promise<void>((done, failed) => server.once('error', failed).listen(0, '127.0.0.1', done))
  const bound = server.address()
  if (bound === null || typeof bound === 'string') throw new Error('the desk has no port')
  port = bound.port

  const close = (): void => {
    watching.close()
    runs.stop()
    server.close()
    server.closeAllConnections()
    finish()
  }

  async function answer(request: IncomingMessage, response: ServerResponse): Promise<void> {
    for (const [name, value] of Object.entries(safeHeaders)) response.setHeader(name, value)
    const { method = '', url = '/', headers } = request
    const admission = admit({ method, url, headers }, { port, key, cookie })
    if (admission === 'gives its key') {
      const own = `${cookieName(port)}=${cookie}; HttpOnly; SameSite=Strict; Path=/`
      response.writeHead(303, { location: '/', 'set-cookie': own }).end()
      return
    }
    if (admission !== 'welcome') return refuse(response, admission.refused)
    const { pathname, searchParams } = new URL(url, 'http://desk')
    if (method === 'GET') return give(pathname, searchParams, response)
    const body = await readBody(request)
    if (body === undefined) return refuse(response, 413)
    const given = parsed(body)
    return given === undefined ? refuse(response, 400) : act(pathname, given.value, response)
  }

  async function give(pathname: string, query: URLSearchParams, response: ServerResponse): Promise<void> {
    const [, room = '', name = '', ...more] = pathname.split('/')
    if (more.length > 0) return refuse(response, 404)
    const own = name.replace(/\.svg$/, '')
    switch (room) {
      case '':
        return send(response, 'html', readFileSync(join(pageFolder, 'page.html')))
      case 'page.js':
      case 'page.css':
        return send(response, room.slice(5), readFileSync(join(pageFolder, room)))
      case 'names':
        return send(response, 'json', JSON.stringify(names))
      case 'changes':
        return listen(response)
      case 'fonts': {
        const face = pageFonts().faces.find(({ weight }) => `${weight}.woff2` === name)
        return face === undefined ? refuse(response, 404) : send(response, 'woff2', face.woff2)
      }
      case 'pictures':
        return sendFound(response, 'svg', pictures.get(own))
      case 'sheets':
        return sendFound(response, 'svg', runs.svg(own))
      case 'layouts':
        return givePicture(name, query, response)
      case 'sorts': {
        const sorts = await sortsOfPlan(path, files)
        return send(response, 'json', JSON.stringify(sorts.ok ? sorts.value.map(sort => sort.name) : []))
      }
      case 'list':
        return giveList(query.get('file') ?? '', response)
      case 'styles':
        return sendFound(response, 'svg', style(own))
      case 'files':
        return sendFound(response, 'pdf', pdf(decodeURIComponent(name)))
      default:
        return refuse(response, 404)
    }
  }

  async function givePicture(
    layout: string,
    query: URLSearchParams,
    response: ServerResponse,
  ): Promise<void> {
    const more = readItem(query.get('item') ?? '{}')
    if (more === undefined) return refuse(response, 400)
    const of = query.get('of')
    const picture = await layouts.picture({ ...more, layout }, of === 'front' || of === 'back' ? of : 'sheet')
    send(response, 'json', JSON.stringify(picture))
  }

  /** Of a list that the plan names, and of no other file. */
  function giveList(list: string, response: ServerResponse): void {
    const isNamed = listFilesIn(looked.plan.data).includes(list)
    const words = isNamed ? listedWords({ plan: path, list, files }) : undefined
    if (words === undefined || words.length > mostBroughtIn) refuse(response, 404)
    else send(response, 'json', JSON.stringify(words))
  }

  async function act(pathname: string, given: unknown, response: ServerResponse): Promise<void> {
    switch (pathname) {
      case '/step': {
        const step = readStep(given)
        if (step === undefined) return refuse(response, 400)
        return changed(response, file.step(step))
      }
      case '/undo':
        return changed(response, file.undo())
      case '/redo':
        return changed(response, file.redo())
      case '/study': {
        const words = readTypedWords(given)
        if (words === undefined) return refuse(response, 400)
        return send(response, 'json', JSON.stringify(tellTyped(words, looked.looked, pictures)))
      }
      case '/save':
        return send(response, 'json', JSON.stringify(await save(fieldsOf(given).what === 'pdf')))
      case '/close':
        response.on('close', close)
        send(response, 'json', '{}')
        return
      default:
        return refuse(response, 404)
    }
  }

  function changed(response: ServerResponse, answer: { readonly ok: boolean }): void {
    // Whatever came of it, the page is to see what the plan is now.
    if (looked.plan.version !== file.version()) renew()
    send(response, 'json', JSON.stringify(answer))
  }

  function listen(response: ServerResponse): void {
    response.writeHead(200, { 'content-type': 'text/event-stream' })
    listening.add(response)
    response.on('close', () => listening.delete(response))
    tell('plan', looked.plan, [response])
    // The first page comes before the first sheets.
    if (!isBegun) beginSheets()
    isBegun = true
    tell('sheets', sheets(), [response])
  }

  async function save(pdfAlone: boolean): Promise<SaveAnswer> {
    file.takeIn()
    const made = await make({
      plan: path,
      out: outFolder,
      formats: pdfAlone ? ['svg', 'pdf'] : ['svg', 'png', 'pdf'],
      files,
    })
    if (!made.ok) {
      const [first] = made.problems.filter(({ severity }) => severity === 'error')
      if (first === undefined) return { ok: false, why: 'The plan has a problem.' }
      const { message, advice } = tellProblem(first, path, pathFinder(file.text()))
      return { ok: false, why: `${message} ${advice}` }
    }
    const own = join(outFolder, stemOf(path))
    const pdfs = readdirSync(own)
      .filter(name => name.endsWith('.pdf'))
      .map(name => ({ name, address: `/files/${encodeURIComponent(name)}` }))
    return { ok: true, folder: own, pdfs }
  }

  function pdf(name: string): Uint8Array | undefined {
    const own = join(outFolder, stemOf(path))
    const wanted = join(own, name)
    return /^[^/\\]+\.pdf$/.test(name) && existsSync(wanted) && isInside(own, wanted)
      ? readFileSync(wanted)
      : undefined
  }

  /** The looks of a line or an outline by itself: `line-wavy`, `outline-oval`. */
  function style(name: string): string | undefined {
    const [kind = '', ...rest] = name.split('-')
    const own = rest.join('-')
    if (kind === 'line' && names.lines.some(each => each.name === own))
      return looked.looked?.pictureOfLooks({ line: own })
    const isOutline = kind === 'outline' && names.outlines.some(each => each.name === own)
    return isOutline ? looked.looked?.pictureOfLooks({ outline: own }) : undefined
  }

  return { address: `http://127.0.0.1:${port}/?key=${key}`, closed, close }
}
