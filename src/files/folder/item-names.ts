import { errorAt, type Problem } from '../../problems.js'
import { printRuns } from '../print-runs.js'
import type { PrintedPlan } from '../printed-plan.js'
import { planPdfPath, printRunPath } from './item-paths.js'

/** Names of files that stand beside the items' folders. */
const reserved = ['index.html', 'manifest.json']

/** Items whose names cannot be folders beside each other, on any common file system. */
export function itemNameProblems({ stem, items }: PrintedPlan, folder: string): readonly Problem[] {
  const place = { file: folder }
  const advice = 'Give the item another name under print: (name: …).'
  const runs = printRuns({ items }).map(run => printRunPath(stem, run.name))
  const taken = new Set([...reserved, planPdfPath(stem), ...runs].map(name => name.toLowerCase()))
  return items.flatMap(({ name }) => {
    if (!isFolderName(name)) return [errorAt(place, `“${name}” cannot be the name of a folder`, advice)]
    if (taken.has(name.toLowerCase())) return [errorAt(place, `two things are named “${name}”`, advice)]
    taken.add(name.toLowerCase())
    return []
  })
}

function isFolderName(name: string): boolean {
  return name !== '' && !/^\.|[/\\:*?"<>|]|\.$/.test(name)
}
