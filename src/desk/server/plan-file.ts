/** The plan's file: its text, the steps that led to it, and whatever another program writes into it. */
import { createHash, randomBytes } from 'node:crypto'
import { readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { applyEdit, meant, planData, rebased } from '../../oaktag.js'
import type { Change, Step, StepAnswer } from '../messages.js'

export interface PlanFile {
  readonly text: () => string
  readonly version: () => string
  readonly undoes: () => string | null
  readonly redoes: () => string | null
  readonly step: (step: Step) => StepAnswer
  readonly undo: () => StepAnswer
  readonly redo: () => StepAnswer
  /** Takes in what another program wrote; whether there was anything. */
  readonly takeIn: () => boolean
}

interface Done {
  readonly before: string
  readonly after: string
  readonly says: string
  readonly gesture: string | undefined
}

const mostSteps = 500
/** States that a step may still be made from. */
const mostStates = 200
const elsewhere = 'what another program changed'

/** @param file real path of the plan */
export function openPlanFile(file: string): PlanFile {
  let text = decoded(readFileSync(file))
  let done: readonly Done[] = []
  let undone: readonly Done[] = []
  const states = new Map<string, string>([[versionOf(text), text]])

  const become = (after: string): void => {
    text = after
    states.delete(versionOf(text))
    states.set(versionOf(text), text)
    for (const old of states.keys()) if (states.size > mostStates) states.delete(old)
  }
  const note = (after: string, says: string, gesture?: string): void => {
    const last = done.at(-1)
    const isSame = gesture !== undefined && last?.gesture === gesture && undone.length === 0
    const before = isSame ? last.before : text
    done = [...(isSame ? done.slice(0, -1) : done), { before, after, says, gesture }].slice(-mostSteps)
    undone = []
    become(after)
  }
  const takeIn = (): boolean => {
    const found = readAgain(file)
    if (found === undefined || found === text) return false
    note(found, elsewhere)
    return true
  }
  /** What another program wrote meanwhile is taken in first, so that nothing is written over it. */
  const write = (after: string): StepAnswer | undefined => {
    try {
      replaceFile(file, after)
      return undefined
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? String(error.code) : 'unknown reason'
      return { ok: false, why: `The plan cannot be written (${code}). Nothing was changed.` }
    }
  }
  const goTo = (step: Done | undefined, back: boolean): StepAnswer => {
    if (takeIn())
      return { ok: false, why: 'Another program has just changed the plan. Look at it, then try again.' }
    if (step === undefined)
      return { ok: false, why: back ? 'There is nothing to undo.' : 'There is nothing to redo.' }
    const failed = write(back ? step.before : step.after)
    if (failed !== undefined) return failed
    if (back) [done, undone] = [done.slice(0, -1), [...undone, step]]
    else [done, undone] = [[...done, step], undone.slice(0, -1)]
    become(back ? step.before : step.after)
    return { ok: true, version: versionOf(text) }
  }
  return {
    text: () => text,
    version: () => versionOf(text),
    undoes: () => done.at(-1)?.says ?? null,
    redoes: () => undone.at(-1)?.says ?? null,
    takeIn,
    step: ({ from, changes, says, gesture }) => {
      takeIn()
      if (isStrange(text)) return { ok: false, why: strange }
      const made = states.get(from)
      if (made === undefined) return { ok: false, why: 'The page is older than the plan. Load it again.' }
      const after = withChanges(text, made, changes)
      if (!after.ok) return after
      if (after.text === text) return { ok: true, version: versionOf(text) }
      const failed = write(after.text)
      if (failed !== undefined) return failed
      note(after.text, says, gesture)
      return { ok: true, version: versionOf(text) }
    },
    undo: () => goTo(done.at(-1), true),
    redo: () => goTo(undone.at(-1), false),
  }
}

type Changed = { readonly ok: true; readonly text: string } | { readonly ok: false; readonly why: string }

/** Each change as it was meant in the state that she saw, made in the text as it is now. */
export function withChanges(text: string, made: string, changes: readonly Change[]): Changed {
  let now = text
  let seen = planData(made)
  for (const change of changes) {
    const fresh = planData(now)
    if (seen === undefined || fresh === undefined)
      return {
        ok: false,
        why: 'The plan cannot be read, so nothing is changed in it. Mend it in the file first.',
      }
    const edit = text === made ? change : rebased(change, seen, fresh)
    if (edit === undefined)
      return {
        ok: false,
        why: 'Another program changed the same thing meanwhile. What it wrote stands; look at it, then try again.',
      }
    const applied = applyEdit(now, edit)
    if (!applied.ok) {
      const { message = '', advice = '' } = applied.problems[0] ?? {}
      return { ok: false, why: `${message.charAt(0).toUpperCase()}${message.slice(1)}. ${advice}` }
    }
    now = applied.value
    seen = meant(seen, change)
  }
  return { ok: true, text: now }
}

export function versionOf(text: string): string {
  return createHash('sha256').update(text).digest('base64url').slice(0, 16)
}

/** The mark at the beginning stays in the text, so that it is written again. */
function decoded(bytes: Uint8Array): string {
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(bytes)
}

/** Another encoding, or no text at all: written again, it would be lost. */
function isStrange(text: string): boolean {
  return /[\0\uFFFD]/.test(text)
}

const strange =
  'The plan is not in UTF-8, so nothing is changed in it. Open it in an editor and save it as plain text in UTF-8.'

/** Undefined while it is not there, as when an editor puts a new file in its place. */
function readAgain(file: string): string | undefined {
  try {
    return decoded(readFileSync(file))
  } catch {
    return undefined
  }
}

/** As it was; of one that has gone, as files usually are. */
function modeOf(file: string): number {
  return statSync(file, { throwIfNoEntry: false })?.mode ?? 0o644
}

/** The new text stands beside the old one until it is whole, then takes its place. */
function replaceFile(file: string, text: string): void {
  const beside = join(dirname(file), `.${basename(file)}.${randomBytes(6).toString('hex')}`)
  try {
    writeFileSync(beside, text, { flag: 'wx', mode: modeOf(file) })
    renameSync(beside, file)
  } catch (error) {
    rmSync(beside, { force: true })
    throw error
  }
}
