import { mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'

/** A folder with a plan in it, which goes when the test has ended. */
export function deskFolder(text: string): { readonly folder: string; readonly plan: string } {
  const folder = realpathSync(mkdtempSync(join(tmpdir(), 'oaktag-desk-')))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  const plan = join(folder, 'week.yaml')
  writeFileSync(plan, text)
  return { folder, plan }
}
