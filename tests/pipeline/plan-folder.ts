import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { onTestFinished } from 'vitest'

/** A folder with these files, gone when the test is done. */
export function folderWith(files: Readonly<Record<string, string | Uint8Array>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-plan-'))
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }))
  for (const [name, contents] of Object.entries(files)) writeFileSync(join(folder, name), contents)
  return folder
}

export const marshPlan = `title: Along the marsh
class: Room 7, Heron Lane School
seed: 12
words: [reed, marsh, shrub, thrush, stream, spring, gnat, wren, leaf, moth, frog, perch]
marks:
  - {pattern: consonant-digraph, inside blends: no}
  - pattern: silent-letters
    line: wavy
  - pattern: vowel-team
    outline: rounded
print:
`
