import { systemCode } from '../folder/file-system.js'
import { LinkToNothing } from '../folder/make-folders.js'
import { UnreadablePicture } from '../page/unreadable-picture.js'

/** An error loses what it has beside its message, and what it is, when it is passed to another thread. */
export interface StepFailure {
  readonly message: string
  readonly system?: { readonly code: string; readonly syscall: string }
  readonly kind?: keyof typeof toldOf
}

/** Those that a teacher is told of in words of their own. */
const toldOf = { 'link to nothing': LinkToNothing, 'unreadable picture': UnreadablePicture } as const

export function failureOf(error: unknown): StepFailure {
  if (!(error instanceof Error)) return { message: String(error) }
  const code = systemCode(error)
  if (code !== undefined && 'syscall' in error)
    return { message: error.message, system: { code, syscall: String(error.syscall) } }
  if (error instanceof LinkToNothing) return { message: error.message, kind: 'link to nothing' }
  if (error instanceof UnreadablePicture) return { message: error.message, kind: 'unreadable picture' }
  return { message: error.stack ?? error.message }
}

/** The error again, as whoever asked for the step would have met it. */
export function errorOf({ message, system, kind }: StepFailure): Error {
  if (kind !== undefined) return new toldOf[kind](message)
  return Object.assign(new Error(message), system)
}
