/** What comes in and goes out, byte by byte. */
import type { IncomingMessage, ServerResponse } from 'node:http'

/** A plan holds up to a million bytes, and an answer may hold all of it. */
const mostBytes = 2_000_000

const kinds: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8',
  json: 'application/json',
  svg: 'image/svg+xml',
  pdf: 'application/pdf',
  woff2: 'font/woff2',
}

export function parsed(body: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(body) }
  } catch {
    return undefined
  }
}

/** Undefined where there is too much of it. */
export async function readBody(request: IncomingMessage): Promise<string | undefined> {
  const parts: Uint8Array[] = []
  let length = 0
  for await (const part of request) {
    const bytes = Buffer.from(part)
    length += bytes.length
    if (length > mostBytes) return undefined
    parts.push(bytes)
  }
  return Buffer.concat(parts).toString('utf8')
}

export function send(response: ServerResponse, kind: string, body: string | Uint8Array): void {
  response.writeHead(200, { 'content-type': kinds[kind] }).end(body)
}

export function sendFound(
  response: ServerResponse,
  kind: string,
  body: string | Uint8Array | undefined,
): void {
  if (body === undefined) refuse(response, 404)
  else send(response, kind, body)
}

export function refuse(response: ServerResponse, status: number): void {
  response.writeHead(status).end()
}
