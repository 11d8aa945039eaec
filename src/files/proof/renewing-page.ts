/**
 * The proof page as it is shown while its plan is watched: it asks the program that serves it whether there is a newer one,
 * and then loads itself again. The page on the disk has none of this, and asks for nothing.
 */
import { createHash } from 'node:crypto'
import { escapeXml } from '../page/xml.js'

export interface Renewing {
  /** Where changes are told, as a link of the page. */
  readonly changes: string
  /** Why the sheets are those from before the last change of the plan. */
  readonly trouble?: string | undefined
}

export function renewingPage(html: string, { changes, trouble }: Renewing): string {
  const script = `new EventSource(${JSON.stringify(changes)}).onmessage = () => location.reload()`
  const notice = trouble === undefined ? '' : `<pre class="trouble" role="alert">${escapeXml(trouble)}</pre>`
  return (
    html
      .replace("script-src '", `connect-src 'self'; script-src ${only(script)} '`)
      .replace("style-src '", `style-src ${only(style)} '`)
      // As a function: a dollar in a plan's text means nothing here.
      .replace('</head>', () => `<style>${style}</style>\n</head>`)
      .replace('<body>', () => `<body>\n${notice}`)
      .replace('</body>', () => `<script>${script}</script>\n</body>`)
  )
}

/** What is shown before there is a first set. */
export function pageOfTrouble(renewing: Renewing): string {
  const policy = "default-src 'none'; script-src ''; style-src ''"
  const head = `<meta charset="utf-8">\n<meta http-equiv="Content-Security-Policy" content="${policy}">`
  const page = `<!doctype html>\n<html lang="en-US">\n<head>\n${head}\n<title>Not made yet</title>\n</head>\n<body>\n</body>\n</html>\n`
  return renewingPage(page, renewing).replaceAll(" ''", '')
}

const style =
  '.trouble { margin: 0; padding: 1rem; border-bottom: 3px solid #000; background: #fff3cd; color: #000; font: 1rem/1.4 monospace; white-space: pre-wrap } @media print { .trouble { display: none } }'

function only(text: string): string {
  return `'sha256-${createHash('sha256').update(text).digest('base64')}'`
}
