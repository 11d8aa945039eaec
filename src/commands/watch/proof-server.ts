/** Shows proof pages to this machine's browser, and tells it of new ones. */
import { readFile } from 'node:fs/promises'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { extname, join, sep } from 'node:path'
import { pageOfTrouble, type Renewing, renewingPage } from '../../door/watch.js'

export interface ProofServer {
  /** Where a plan's proof page is. */
  readonly addressOf: (stem: string) => string
  /** What is shown of a plan from now on: the set in its folder, and what is wrong with the plan, if anything is. */
  readonly show: (stem: string, folder: string, trouble?: string) => void
  readonly close: () => void
}

interface Shown {
  readonly folder: string
  readonly trouble: string | undefined
  /** How often it was shown anew. */
  readonly version: number
}

const kinds: Readonly<Record<string, string>> = {
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.pdf': 'application/pdf',
  '.json': 'application/json',
}

/** Nobody else can reach it: it listens to this machine alone, and gives nothing but what lies in the folders shown. */
export async function serveProofs(): Promise<ProofServer> {
  const shown = new Map<string, Shown>()
  const waiting = new Set<{ readonly stem: string; readonly response: ServerResponse }>()
  const server = createServer((request, response) => {
    void answer(request, response).catch(() => response.destroy())
  })
  await new Promise<void>((done, failed) => server.once('error', failed).listen(0, '127.0.0.1', done))
  const address = server.address()
  if (address === null || typeof address === 'string') throw new Error('the page has no port')
  const { port } = address
  const hosts = [`127.0.0.1:${port}`, `localhost:${port}`]

  async function answer(
    { method, url = '/', headers }: IncomingMessage,
    response: ServerResponse,
  ): Promise<void> {
    // A page from elsewhere may give its own name to this address: it gets nothing (DNS rebinding).
    if (method !== 'GET' || !hosts.includes(headers.host ?? '')) return refuse(response, 403)
    const { pathname, searchParams } = new URL(url, `http://${hosts[0]}`)
    const [, first = '', ...rest] = pathname.split('/').map(decodeURIComponent)
    const stem = first === '' ? [...shown.keys()][0] : first
    const plan = stem === undefined ? undefined : shown.get(stem)
    if (stem === undefined || plan === undefined) return refuse(response, 404)
    if (rest.length === 0) {
      response.writeHead(302, { location: `/${encodeURIComponent(stem)}/` }).end()
      return
    }
    const path = rest.join('/')
    if (path === 'changes') return tellChanges(stem, Number(searchParams.get('seen')), response)
    if (path === '' || path === 'index.html')
      return send(response, 'text/html; charset=utf-8', await page(plan))
    const file = join(plan.folder, path)
    if (!file.startsWith(plan.folder + sep)) return refuse(response, 404)
    try {
      send(response, kinds[extname(file)] ?? 'text/plain; charset=utf-8', await readFile(file))
    } catch {
      refuse(response, 404)
    }
  }

  function tellChanges(stem: string, seen: number, response: ServerResponse): void {
    response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' })
    response.write(': here\n\n')
    if (shown.get(stem)!.version !== seen) response.write('data: new\n\n')
    const waiter = { stem, response }
    waiting.add(waiter)
    response.on('close', () => waiting.delete(waiter))
  }

  return {
    addressOf: stem => `http://127.0.0.1:${port}/${encodeURIComponent(stem)}/`,
    show: (stem, folder, trouble) => {
      shown.set(stem, { folder, trouble, version: (shown.get(stem)?.version ?? 0) + 1 })
      for (const waiter of waiting) if (waiter.stem === stem) waiter.response.write('data: new\n\n')
    },
    close: () => {
      server.close()
      server.closeAllConnections()
    },
  }
}

async function page({ folder, trouble, version }: Shown): Promise<string> {
  const renewing: Renewing = { changes: `changes?seen=${version}`, trouble }
  try {
    return renewingPage(await readFile(join(folder, 'index.html'), 'utf8'), renewing)
  } catch {
    return pageOfTrouble(renewing)
  }
}

function send(response: ServerResponse, kind: string, body: string | Uint8Array): void {
  response.writeHead(200, { 'content-type': kind, 'cache-control': 'no-store' }).end(body)
}

function refuse(response: ServerResponse, status: number): void {
  response.writeHead(status).end()
}
