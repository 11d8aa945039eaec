/** Reads and makes whatever the models give, and tells of the first that breaks the rules, as small as it can be made. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { planVocabulary } from '../../src/pipeline/vocabulary.js'
import { makePlan } from '../../src/pipeline.js'
import { readPlan } from '../../src/plan/read-plan.js'
import { readWordListFile } from '../../src/plan/words/word-list.js'
import { filesInMemory } from '../plan/reading.js'
import { classFiles, type Folder, planFile, plans, spreadsheets, wordLists } from './models/plan-texts.js'
import type { Quality } from './models/value-texts.js'
import { faultsOf, faultsOfSet, watched } from './oracle.js'

const vocabulary = planVocabulary()

/** As a file of its own or as a part of a folder; what a run of the model gives. */
export interface Trial {
  readonly folder: Folder
  readonly path: string
}

export const qualities: readonly Quality[] = ['valid', 'nearly', 'hostile']

/** A plan, a list, a table or a class file, all as likely. */
export const readings: fc.Arbitrary<Trial> = fc.constantFrom(...qualities).chain(quality =>
  fc.oneof(
    plans(quality).map(folder => ({ folder, path: planFile })),
    wordLists(quality).map(text => ({ folder: { 'words.txt': text }, path: 'words.txt' })),
    spreadsheets(quality).map(text => ({ folder: { 'words.csv': text }, path: 'words.csv' })),
    classFiles(quality).map(text => ({
      folder: { [planFile]: 'class file: room-7.yaml\nwords: [reed]\nprint: [key]\n', 'room-7.yaml': text },
      path: planFile,
    })),
  ),
)

export function faultsOfReading({ folder, path }: Trial): Promise<readonly string[]> {
  const files = filesInMemory(folder)
  return watched(() => {
    const outcome =
      path === planFile
        ? readPlan({ file: path, text: String(folder[path]), vocabulary, files })
        : readWordListFile({ path, files, patterns: vocabulary.patterns })
    return faultsOf(outcome, folder)
  })
}

export interface Made {
  readonly faults: readonly string[]
  readonly ok: boolean
}

export async function tryToMake(folder: Folder): Promise<Made> {
  const home = mkdtempSync(join(tmpdir(), 'oaktag-any-'))
  let ok = false
  try {
    for (const [name, contents] of Object.entries(folder)) writeFileSync(join(home, name), contents)
    const outFolder = join(home, 'out')
    const faults = await watched(async () => {
      const made = await makePlan({
        planFile: join(home, planFile),
        outFolder,
        formats: ['svg'],
        dpi: 72,
        jobs: 1,
      })
      ok = made.ok
      return [...faultsOf(made, folder), ...faultsOfSet(outFolder, 'week', made.ok)]
    })
    return { faults, ok }
  } finally {
    rmSync(home, { recursive: true, force: true })
  }
}
