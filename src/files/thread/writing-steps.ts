/** What is asked of the thread that does a disk's work, and what it answers: plain data, which threads can pass on. */

import { type Discarding, setAside } from '../folder/discard-set.js'
import { type FileSystem, machineFiles } from '../folder/file-system.js'
import { patientFiles } from '../folder/patient-files.js'
import { type LeftFile, setFilesAtOnce } from '../folder/set-files.js'
import { writeAtOnce } from '../folder/write-file.js'
import { type PackedPage, type PageUnpacking, pageUnpacking } from '../page/packed-page.js'
import type { PageShapes } from '../page/page-shapes.js'
import { type KeptPngs, keptPngs } from '../png/kept-pngs.js'
import { bytesOfPart } from './shared-parts.js'
import { failureOf, type StepFailure } from './step-failure.js'

export type WritingStep =
  | { readonly kind: 'make folder'; readonly path: string }
  | {
      readonly kind: 'write'
      readonly path: string
      /** The part of the shared memory that holds the bytes, from its beginning. */
      readonly part: number
      readonly length: number
      /** Whether it follows what stands in the file. */
      readonly goesOn: boolean
    }
  | {
      readonly kind: 'draw'
      readonly path: string
      readonly dpi: number
      readonly look: string
      /** Left out of one that was drawn ahead. */
      readonly page?: PackedPage
    }
  /** It is to be written soon: what goes wrong is told then. */
  | {
      readonly kind: 'draw ahead'
      readonly dpi: number
      readonly look: string
      readonly page: PackedPage
    }
  /** A run has ended: what is no longer held of its pages. */
  | { readonly kind: 'let go'; readonly shapes: readonly number[] }
  | { readonly kind: 'link'; readonly from: string; readonly to: string }
  | { readonly kind: 'settle'; readonly path: string }
  | { readonly kind: 'set aside'; readonly discarding: Discarding }
  | { readonly kind: 'remove folder'; readonly path: string }

/** Steps that follow one another. */
export interface WritingSteps {
  /** After a step that failed no other of the same run is taken. */
  readonly run: number
  readonly steps: readonly WritingStep[]
}

/** What a step gives. */
export interface StepResult {
  readonly left?: LeftFile
  /** New paths of files that are not ours. */
  readonly moved?: readonly string[]
}

export interface WritingAnswer {
  /** Of the steps that were taken, in their order. */
  readonly results: readonly StepResult[]
  /** Of the step behind those. */
  readonly failure?: StepFailure
}

/** Takes steps in their order, each when the one before is done. */
export function stepTaker(
  memory: SharedArrayBuffer,
  files: FileSystem = machineFiles,
): (steps: WritingSteps) => Promise<WritingAnswer> {
  const taking = {
    memory,
    files,
    patient: patientFiles(files),
    pages: pageUnpacking(),
    undrawn: new Map<string, PageShapes>(),
    pngs: keptPngs(),
  }
  let failed: number | undefined
  return async ({ run, steps }) => {
    const results: StepResult[] = []
    let failure: StepFailure | undefined
    for (const step of steps) {
      // Those of a run that failed too: later pages speak of what is on them.
      const unpacked = unpackedStep(step, taking.pages)
      if (run === failed) continue
      try {
        results.push(await taken(unpacked, taking))
      } catch (error) {
        failed = run
        failure = failureOf(error)
      }
    }
    return failure === undefined ? { results } : { results, failure }
  }
}

interface Taking {
  readonly memory: SharedArrayBuffer
  readonly files: FileSystem
  readonly patient: FileSystem
  readonly pages: PageUnpacking
  /** Pages that could not be drawn ahead, by what was asked. Of those that could the picture alone is held. */
  readonly undrawn: Map<string, PageShapes>
  readonly pngs: KeptPngs
}

type StepOfKind<K extends WritingStep['kind']> = Extract<WritingStep, { readonly kind: K }>
type UnpackedStep =
  | Exclude<WritingStep, StepOfKind<'draw' | 'draw ahead'>>
  | (StepOfKind<'draw'> & { readonly shapes?: PageShapes })
  | (StepOfKind<'draw ahead'> & { readonly shapes: PageShapes })

function unpackedStep(step: WritingStep, pages: PageUnpacking): UnpackedStep {
  if (step.kind === 'draw ahead') return { ...step, shapes: pages.unpack(step.page) }
  if (step.kind === 'draw' && step.page !== undefined) return { ...step, shapes: pages.unpack(step.page) }
  return step
}

async function taken(
  step: UnpackedStep,
  { memory, files, patient, pages, undrawn, pngs }: Taking,
): Promise<StepResult> {
  switch (step.kind) {
    case 'make folder':
      await files.makeFolder(step.path)
      return {}
    case 'write':
      writeAtOnce(step.path, bytesOfPart(memory, step.part).subarray(0, step.length), step.goesOn ? 'a' : 'w')
      return { left: { linked: false, standing: await files.look(step.path) } }
    case 'draw': {
      const { path, dpi, look, shapes } = step
      const page = () => shapes ?? undrawn.get(`${dpi} ${look}`)!
      writeAtOnce(path, await pngs.at(dpi)(look, page), 'w')
      return { left: { linked: false, standing: await files.look(path) } }
    }
    case 'draw ahead': {
      const { dpi, look, shapes } = step
      try {
        await pngs.at(dpi)(look, () => shapes)
      } catch {
        // It is met again, and told, when the page is written.
        undrawn.set(`${dpi} ${look}`, shapes)
      }
      return {}
    }
    case 'let go':
      undrawn.clear()
      pages.forget(step.shapes)
      pngs.letGo()
      return {}
    case 'link': {
      let left: LeftFile | undefined
      await setFilesAtOnce(files).link(step.from, step.to, it => {
        left = it
      })
      return left === undefined ? {} : { left }
    }
    case 'settle':
      await files.settle(step.path)
      return {}
    case 'set aside':
      return { moved: await setAside(step.discarding, patient) }
    case 'remove folder':
      await patient.removeFolder(step.path)
      return {}
  }
}
