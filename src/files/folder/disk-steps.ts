/** What is asked of the thread that does a disk's work, and what it answers: plain data, which threads can pass on. */
import { type Discarding, setAside } from './discard-set.js'
import { type FileSystem, machineFiles, systemCode } from './file-system.js'
import { LinkToNothing } from './make-folders.js'
import { patientFiles } from './patient-files.js'
import { type LeftFile, setFilesAtOnce } from './set-files.js'
import { bytesOfPart } from './shared-parts.js'
import { writeAtOnce } from './write-file.js'

export type DiskStep =
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
  | { readonly kind: 'link'; readonly from: string; readonly to: string }
  | { readonly kind: 'settle'; readonly path: string }
  | { readonly kind: 'set aside'; readonly discarding: Discarding }
  | { readonly kind: 'remove folder'; readonly path: string }

/** Steps that follow one another. */
export interface DiskSteps {
  /** After a step that failed no other of the same run is taken. */
  readonly run: number
  readonly steps: readonly DiskStep[]
}

/** What a step gives. */
export interface StepResult {
  readonly left?: LeftFile
  /** New paths of files that are not ours. */
  readonly moved?: readonly string[]
}

export interface DiskAnswer {
  /** Of the steps that were taken, in their order. */
  readonly results: readonly StepResult[]
  /** Of the step behind those. */
  readonly failure?: StepFailure
}

/** An error loses what it has beside its message when it is passed to another thread. */
export interface StepFailure {
  readonly message: string
  readonly system?: { readonly code: string; readonly syscall: string }
  readonly isLinkToNothing?: boolean
}

/** Takes steps in their order, each when the one before is done. */
export function stepTaker(
  memory: SharedArrayBuffer,
  files: FileSystem = machineFiles,
): (steps: DiskSteps) => Promise<DiskAnswer> {
  const patient = patientFiles(files)
  let failed: number | undefined
  return async ({ run, steps }) => {
    const results: StepResult[] = []
    if (run === failed) return { results }
    try {
      for (const step of steps) results.push(await taken(step, { memory, files, patient }))
      return { results }
    } catch (error) {
      failed = run
      return { results, failure: failureOf(error) }
    }
  }
}

interface Taking {
  readonly memory: SharedArrayBuffer
  readonly files: FileSystem
  readonly patient: FileSystem
}

async function taken(step: DiskStep, { memory, files, patient }: Taking): Promise<StepResult> {
  switch (step.kind) {
    case 'make folder':
      await files.makeFolder(step.path)
      return {}
    case 'write':
      writeAtOnce(step.path, bytesOfPart(memory, step.part).subarray(0, step.length), step.goesOn ? 'a' : 'w')
      return { left: { linked: false, standing: await files.look(step.path) } }
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

function failureOf(error: unknown): StepFailure {
  if (!(error instanceof Error)) return { message: String(error) }
  const code = systemCode(error)
  if (code !== undefined && 'syscall' in error)
    return { message: error.message, system: { code, syscall: String(error.syscall) } }
  if (error instanceof LinkToNothing) return { message: error.message, isLinkToNothing: true }
  return { message: error.stack ?? error.message }
}

/** The error again, as whoever asked for the step would have met it. */
export function errorOf({ message, system, isLinkToNothing }: StepFailure): Error {
  if (isLinkToNothing === true) return new LinkToNothing(message)
  return Object.assign(new Error(message), system)
}
