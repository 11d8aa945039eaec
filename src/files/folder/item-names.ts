import { errorAt, type Problem } from '../../problems.js'
import { printRuns } from '../print-runs.js'
import type { PrintedPlan, PrintedSheet } from '../printed-plan.js'
import type { FileSystem } from './file-system.js'
import { planPdfPath, printRunPath } from './item-paths.js'

/** Names of files that stand beside the items' folders. */
const reserved = ['index.html', 'manifest.json']

/** Items whose names cannot be folders beside each other, on any common file system, and a plan whose name cannot be one here. */
export function itemNameProblems(
  { stem, items }: PrintedPlan<PrintedSheet>,
  folder: string,
  kind: FileSystem['kind'],
): readonly Problem[] {
  const place = { file: folder }
  const advice = 'Give the item another name under print: (name: …).'
  const runs = printRuns({ items }).map(run => printRunPath(stem, run.name))
  const taken = new Set([...reserved, planPdfPath(stem), ...runs].map(name => name.toLowerCase()))
  return [
    ...(isFolderName(stem) || kind === 'posix'
      ? []
      : [errorAt(place, `“${stem}” cannot be the name of a folder`, 'Give the plan file another name.')]),
    ...items.flatMap(({ name }) => {
      if (!isFolderName(name)) return [errorAt(place, `“${name}” cannot be the name of a folder`, advice)]
      if (taken.has(name.toLowerCase())) return [errorAt(place, `two things are named “${name}”`, advice)]
      taken.add(name.toLowerCase())
      return []
    }),
  ]
}

/** Devices of Windows: `con.txt` is the console too ("Naming Files, Paths, and Namespaces", learn.microsoft.com). */
const devices = /^(?:con|prn|aux|nul|conin\$|conout\$|(?:com|lpt)[0-9¹²³])(?:\.|$)/i

function isFolderName(name: string): boolean {
  return name !== '' && !/^\.|[/\\:*?"<>|\p{Cc}]|[. ]$/u.test(name) && !devices.test(name)
}
