/** The desk's server: this machine's browser alone, one plan, nothing remembered but the plan and the work on it. */
import { randomBytes } from 'node:crypto'
import { realpathSync } from 'node:fs'
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import { resolve } from 'node:path'
import { namesFor } from './desk-names.js'
import { deskRoutes } from './desk-routes.js'
import { admit, cookieName, safeHeaders } from './guards.js'
import { holdDesk } from './held-desk.js'
import { parsed, readBody, refuse } from './responses.js'
import { setFolder } from './set-folder.js'

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
  const desk = holdDesk(realpathSync(plan), await namesFor())
  const cookie = randomBytes(32).toString('base64url')
  const key = randomBytes(24).toString('base64url')
  let port = 0
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
    desk.close()
    server.close()
    server.closeAllConnections()
    finish()
  }
  const routes = deskRoutes({ desk, set: setFolder(desk, resolve(out)), pageFolder, close })

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
    if (method === 'GET') return routes.give(pathname, searchParams, response)
    const body = await readBody(request)
    if (body === undefined) return refuse(response, 413)
    const given = parsed(body)
    return given === undefined ? refuse(response, 400) : routes.act(pathname, given.value, response)
  }

  return { address: `http://127.0.0.1:${port}/?key=${key}`, closed, close }
}
