import { readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { systemCode } from '../folder/file-problem.js'
import type { ManifestItem } from '../manifest.js'
import type { ProofParts } from './proof-parts.js'
import { sectionEnd, sectionOfLinks, sectionStart } from './proof-section.js'

/** The parts of items that are kept from the last run, taken from its proof page; where one is not found, links to its files. */
export async function keptParts(items: readonly ManifestItem[], folder: string): Promise<ProofParts> {
  const page = items.length === 0 ? '' : await readProofPage(folder)
  return {
    sections: new Map(items.map(item => [item.name, sectionIn(page, item.name) ?? sectionOfLinks(item)])),
    definitions: new Map(
      [...page.matchAll(/^<(?:path|g) id="([gl][\w-]{6,})".*$/gm)].map(([markup, id]) => [id!, markup]),
    ),
  }
}

function sectionIn(page: string, name: string): string | undefined {
  const starts = [true, false].map(several => page.indexOf(`\n${sectionStart(name, several)}\n`) + 1)
  const start = Math.max(...starts)
  const end = page.indexOf(sectionEnd, start)
  return start === 0 || end < 0 ? undefined : page.slice(start, end + sectionEnd.length)
}

async function readProofPage(folder: string): Promise<string> {
  try {
    return await readFile(join(folder, 'index.html'), 'utf8')
  } catch (error) {
    if (systemCode(error) === 'ENOENT') return ''
    throw error
  }
}
