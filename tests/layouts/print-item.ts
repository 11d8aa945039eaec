import { join } from 'node:path'
import type { PrintedItem } from '../../src/files/printed-plan.js'
import type { KeptWork } from '../../src/pipeline/kept-work.js'
import { putPlanOnSheets } from '../../src/pipeline.js'
import { formatProblem, type Outcome } from '../../src/problems.js'
import { folderWith } from '../pipeline/plan-folder.js'
import { sharedWork } from '../pipeline/shared-work.js'

export const marshWords = 'reed marsh shrub thrush stream spring gnat wren leaf moth frog perch'.split(' ')

/** A plan of the marsh, every word with a clue, up to its list of things to print. */
export const marshWithClues = `title: Along the marsh
class: Room 7, Heron Lane School
seed: 12
words:
  - {word: reed, clue: a tall grass that stands in water}
  - {word: marsh, clue: "wet, grassy land"}
  - {word: shrub, clue: a low plant with many woody stems}
  - {word: thrush, clue: a brown bird with a spotted front}
  - {word: stream, clue: water that runs downhill}
  - {word: spring, clue: water that comes up out of the ground}
  - {word: gnat, clue: a very small fly}
  - {word: wren, clue: a tiny bird with a loud song}
  - {word: leaf, clue: it grows on a twig}
  - {word: moth, clue: it flies to the lamp at night}
  - {word: frog, clue: it was a tadpole once}
  - {word: perch, clue: "a striped fish, or a place to sit"}
marks:
  - pattern: consonant-digraph
print:
`

/** The same with a tag under a mark, which must be as large as the words wherever they are. */
export const marshWithTag = marshWithClues.replace(
  '  - pattern: consonant-digraph\n',
  '  - {letters: sh, tag: q}\n',
)

/** What the plan prints with these items added. */
export async function printAll(
  items: readonly string[],
  plan = marshWithClues,
  kept: KeptWork = sharedWork,
): Promise<Outcome<readonly PrintedItem[]>> {
  const folder = folderWith({ 'marsh.yaml': `${plan}${items.map(item => `  - ${item}\n`).join('')}` })
  const drawn = await putPlanOnSheets({ planFile: join(folder, 'marsh.yaml'), kept })
  return drawn.ok ? { ...drawn, value: drawn.value.items.map(({ printed }) => printed) } : drawn
}

export async function printItem(item: string, plan = marshWithClues): Promise<PrintedItem> {
  const printed = await printAll([item], plan)
  if (!printed.ok) throw new Error(printed.problems.map(formatProblem).join('\n'))
  return printed.value[0]!
}

/** The messages and advice of an item that cannot be made, or that is made with a warning. */
export async function problemsOf(item: string, plan = marshWithClues): Promise<string> {
  const printed = await printAll([item], plan)
  return printed.problems.map(({ message, advice }) => `${message}\n${advice}`).join('\n')
}

export function piecesOf(item: PrintedItem) {
  return item.sheets
    .filter(sheet => sheet.side === 'front')
    .flatMap(sheet => sheet.pieces.map(({ piece }) => piece))
}

export function kindsOf(item: PrintedItem): readonly string[] {
  return [...new Set(item.sheets.map(sheet => sheet.kind))]
}

/** The lines of text on the item's pages of one kind, from top to bottom, those on one level from left to right. */
export function linesOn(item: PrintedItem, kind: string): readonly string[] {
  return item.sheets
    .filter(sheet => sheet.kind === kind)
    .flatMap(sheet => {
      const runs = sheet.furniture.flatMap(({ art, xMm, yMm }) =>
        art.text.map(run => ({ text: run.text, xMm: xMm + run.xMm, yMm: yMm + run.baselineMm })),
      )
      const levels = new Map<number, typeof runs>()
      for (const run of runs) {
        const level = [...levels.keys()].find(yMm => Math.abs(yMm - run.yMm) < 1) ?? run.yMm
        levels.set(level, [...(levels.get(level) ?? []), run])
      }
      return [...levels]
        .sort(([a], [b]) => a - b)
        .map(([, line]) =>
          line
            .sort((a, b) => a.xMm - b.xMm)
            .map(run => run.text)
            .join(' | '),
        )
    })
}
