/** Who may ask: a page of this server in a browser that was given its key, and nobody else. */
import { timingSafeEqual } from 'node:crypto'
import type { IncomingHttpHeaders } from 'node:http'

export interface Asked {
  readonly method: string
  /** Path with its query. */
  readonly url: string
  readonly headers: IncomingHttpHeaders
}

export interface Doorkeeper {
  readonly port: number
  /** Stands in the address that is printed. */
  readonly key: string
  /** Stands in the cookie that the address is exchanged for. */
  readonly cookie: string
}

export type Admission = 'welcome' | 'gives its key' | { readonly refused: number }

/** The headers of every answer: nothing is run, shown, framed or asked for but what this server gives itself. */
export const safeHeaders: Readonly<Record<string, string>> = {
  'content-security-policy':
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; font-src 'self'; form-action 'none'; frame-ancestors 'none'; base-uri 'none'",
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  'cross-origin-resource-policy': 'same-origin',
  'cross-origin-opener-policy': 'same-origin',
  'cache-control': 'no-store',
}

export function cookieName(port: number): string {
  return `oaktag-desk-${port}`
}

/**
 * Cookies know no port, and SameSite takes all of this machine's servers for one site: so it is the host, the origin and
 * what the browser says of the request's source that keep other pages out, and the cookie keeps out other programs.
 */
export function admit({ method, url, headers }: Asked, { port, key, cookie }: Doorkeeper): Admission {
  const host = `127.0.0.1:${port}`
  // A page from elsewhere may give its own name to this address: it gets nothing (DNS rebinding).
  if (headers.host !== host) return { refused: 421 }
  if (method !== 'GET' && method !== 'POST') return { refused: 405 }
  const { origin } = headers
  if (origin !== undefined ? origin !== `http://${host}` : method === 'POST') return { refused: 403 }
  const site = headers['sec-fetch-site']
  if (site !== undefined && site !== 'same-origin' && !(site === 'none' && method === 'GET'))
    return { refused: 403 }
  if (method === 'POST' && headers['content-type'] !== 'application/json') return { refused: 415 }
  if (isEqual(cookieIn(headers.cookie, cookieName(port)), cookie)) return 'welcome'
  const { pathname, searchParams } = new URL(url, `http://${host}`)
  const given = searchParams.get('key') ?? ''
  if (method === 'GET' && pathname === '/' && isEqual(given, key)) return 'gives its key'
  return { refused: 403 }
}

function cookieIn(header: string | undefined, name: string): string {
  const own = header?.split(/;\s*/).find(each => each.startsWith(`${name}=`))
  return own?.slice(name.length + 1) ?? ''
}

function isEqual(given: string, wanted: string): boolean {
  const [one, other] = [Buffer.from(given), Buffer.from(wanted)]
  return one.length === other.length && timingSafeEqual(one, other)
}
