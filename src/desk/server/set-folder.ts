/** The folder of files that she asks for, made as `oaktag make` makes it. */
import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { make, pathFinder, stemOf } from '../../oaktag.js'
import type { SaveAnswer } from '../messages.js'
import { isInside } from './folder-files.js'
import type { HeldDesk } from './held-desk.js'
import { tellProblem } from './plan-view.js'

export interface SetFolder {
  readonly save: (what: 'pdf' | 'all') => Promise<SaveAnswer>
  /** One of its own PDFs, by name. */
  readonly pdf: (name: string) => Uint8Array | undefined
}

/** @param outFolder its whole path */
export function setFolder({ path, file, files }: HeldDesk, outFolder: string): SetFolder {
  const own = join(outFolder, stemOf(path))
  return {
    save: async what => {
      file.takeIn()
      const made = await make({
        plan: path,
        out: outFolder,
        formats: what === 'pdf' ? ['svg', 'pdf'] : ['svg', 'png', 'pdf'],
        files,
      })
      if (!made.ok) {
        const [first] = made.problems.filter(({ severity }) => severity === 'error')
        if (first === undefined) return { ok: false, why: 'The plan has a problem.' }
        const { message, advice } = tellProblem(first, path, pathFinder(file.text()))
        return { ok: false, why: `${message} ${advice}` }
      }
      const pdfs = readdirSync(own)
        .filter(name => name.endsWith('.pdf'))
        .map(name => ({ name, address: `/files/${encodeURIComponent(name)}` }))
      return { ok: true, folder: own, pdfs }
    },
    pdf: name => {
      const wanted = join(own, name)
      return /^[^/\\]+\.pdf$/.test(name) && existsSync(wanted) && isInside(own, wanted)
        ? readFileSync(wanted)
        : undefined
    },
  }
}
