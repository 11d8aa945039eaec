import { join } from 'node:path'
import type { FileSystem } from '../folder/file-system.js'
import type { ManifestItem } from '../manifest.js'
import type { ProofParts } from './proof-parts.js'
import { sectionEnd, sectionKinds, sectionOfLinks, sectionStart } from './proof-section.js'
import { asSpooled } from './text-spool.js'

/** The parts of items that are kept from the last run, taken from its proof page; where one is not found, links to its files. */
export async function keptParts(
  items: readonly ManifestItem[],
  folder: string,
  files: FileSystem,
): Promise<ProofParts> {
  const page = items.length === 0 ? '' : await readProofPage(folder, files)
  return {
    sections: new Map(
      items.map(item => [item.name, [asSpooled(sectionIn(page, item.name) ?? sectionOfLinks(item))]]),
    ),
    definitions: new Map(
      [...page.matchAll(/^<(?:path|g) id="([gl][\w-]{6,})".*$/gm)].map(([markup, id]) => [
        id!,
        asSpooled(markup),
      ]),
    ),
  }
}

function sectionIn(page: string, name: string): string | undefined {
  const starts = sectionKinds.map(kind => page.indexOf(`\n${sectionStart(name, kind)}\n`) + 1)
  const start = Math.max(...starts)
  const end = page.indexOf(sectionEnd, start)
  return start === 0 || end < 0 ? undefined : page.slice(start, end + sectionEnd.length)
}

async function readProofPage(folder: string, files: FileSystem): Promise<string> {
  const path = join(folder, 'index.html')
  return (await files.look(path))?.kind === 'file' ? files.readText(path) : ''
}
