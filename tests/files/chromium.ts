import { spawnSync } from 'node:child_process'
import { mkdtemp, rm, stat } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'
import { runProgram } from './system-program.js'

export function chromiumPath(): string {
  return runProgram('which', ['chromium']).trim()
}

export const quiet = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]

/** Prints a file to PDF in Chromium as a teacher would: at 100 %, without the browser's headers. */
export function printInChromium(file: string, pdf: string, fragment = ''): Promise<void> {
  return runChromium(
    ['--no-pdf-header-footer', `--print-to-pdf=${pdf}`, `${pathToFileURL(file).href}${fragment}`],
    pdf,
  )
}

/** The page as Chromium holds it once loaded. */
async function runChromium(args: readonly string[], result: string): Promise<void> {
  const profile = await mkdtemp(join(tmpdir(), 'oaktag-chromium-'))
  try {
    const run = spawnSync('chromium', ['--headless', ...quiet, `--user-data-dir=${profile}`, ...args], {
      encoding: 'utf8',
    })
    if (run.status !== 0 || !(await stat(result).catch(() => undefined)))
      throw new Error(`chromium failed: ${run.stderr}`)
  } finally {
    await rm(profile, { recursive: true, force: true, maxRetries: 5 })
  }
}
