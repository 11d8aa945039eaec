/** The plan's file and the lists beside it: their texts, the steps that led to them, and what other programs write into them. */
import { realpathSync } from 'node:fs'
import { dirname, join } from 'node:path'
import {
  applyEdit,
  applyListEdit,
  listFileData,
  meant,
  type PlanData,
  planData,
  rebased,
} from '../../oaktag.js'
import type { Change, Step, StepAnswer } from '../messages.js'
import {
  type DeskTexts,
  isSameTexts,
  isStrange,
  isTooLong,
  readText,
  replaceFile,
  textsOnDisk,
  versionOf,
} from './desk-texts.js'

export interface PlanFile {
  readonly text: () => string
  /** Lists of words beside the plan, by the names that it gives them. */
  readonly lists: () => ReadonlyMap<string, string>
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
  readonly before: DeskTexts
  readonly after: DeskTexts
  readonly says: string
  readonly gesture: string | undefined
}

const mostSteps = 500
/** States that a step may still be made from. */
const mostStates = 200
const elsewhere = 'what another program changed'

/** @param file real path of the plan */
export function openPlanFile(file: string): PlanFile {
  let texts = textsOnDisk(file, readText(file) ?? '')
  let done: readonly Done[] = []
  let undone: readonly Done[] = []
  const states = new Map<string, DeskTexts>([[versionOf(texts), texts]])

  const become = (after: DeskTexts): void => {
    texts = after
    states.delete(versionOf(texts))
    states.set(versionOf(texts), texts)
    for (const old of states.keys()) if (states.size > mostStates) states.delete(old)
  }
  const note = (after: DeskTexts, says: string, gesture?: string): void => {
    const last = done.at(-1)
    const isSame = gesture !== undefined && last?.gesture === gesture && undone.length === 0
    const before = isSame ? last.before : texts
    done = [...(isSame ? done.slice(0, -1) : done), { before, after, says, gesture }].slice(-mostSteps)
    undone = []
    become(after)
  }
  const takeIn = (): boolean => {
    const plan = readText(file)
    if (plan === undefined) return false
    const found = textsOnDisk(file, plan === texts.plan ? texts.plan : plan, texts)
    if (isSameTexts(found, texts)) return false
    note(found, elsewhere)
    return true
  }
  /** Those that are another; what another program wrote meanwhile has been taken in, so that nothing is written over it. */
  const write = (before: DeskTexts, after: DeskTexts): StepAnswer | undefined => {
    const written: string[] = []
    try {
      for (const [path, text] of differing(file, before, after)) {
        replaceFile(path, text)
        written.push(path)
      }
      return undefined
    } catch (error) {
      const code = error instanceof Error && 'code' in error ? String(error.code) : 'unknown reason'
      for (const [path, text] of differing(file, after, before))
        if (written.includes(path)) replaceFile(path, text)
      return { ok: false, why: `The file cannot be written (${code}). Nothing was changed.` }
    }
  }
  const goTo = (step: Done | undefined, back: boolean): StepAnswer => {
    if (takeIn())
      return { ok: false, why: 'Another program has just changed the plan. Look at it, then try again.' }
    if (step === undefined)
      return { ok: false, why: back ? 'There is nothing to undo.' : 'There is nothing to redo.' }
    const [from, to] = back ? [step.after, step.before] : [step.before, step.after]
    const lost = [...from.lists].find(([name, text]) => {
      const now = texts.lists.get(name)
      return to.lists.get(name) !== text && now !== undefined && now !== text
    })
    if (lost !== undefined) {
      ;[done, undone] = [[], []]
      const why = `Another program changed ${lost[0]} while the plan did not name it. What it wrote stands, and what was done before is not undone.`
      return { ok: false, why }
    }
    const failed = write(from, to)
    if (failed !== undefined) return failed
    if (back) [done, undone] = [done.slice(0, -1), [...undone, step]]
    else [done, undone] = [[...done, step], undone.slice(0, -1)]
    become(textsOnDisk(file, to.plan, to))
    return { ok: true, version: versionOf(texts) }
  }
  return {
    text: () => texts.plan,
    lists: () => texts.lists,
    version: () => versionOf(texts),
    undoes: () => done.at(-1)?.says ?? null,
    redoes: () => undone.at(-1)?.says ?? null,
    takeIn,
    step: ({ from, changes, says, gesture }) => {
      takeIn()
      const made = states.get(from)
      if (made === undefined) return { ok: false, why: 'The page is older than the plan. Load it again.' }
      const after = withChanges(texts, made, changes)
      if (!after.ok) return after
      if (isSameTexts(after.texts, texts)) return { ok: true, version: versionOf(texts) }
      if (isTooLong(after.texts)) return { ok: false, why: tooLong }
      const failed = write(texts, after.texts)
      if (failed !== undefined) return failed
      note(textsOnDisk(file, after.texts.plan, after.texts), says, gesture)
      return { ok: true, version: versionOf(texts) }
    },
    undo: () => goTo(done.at(-1), true),
    redo: () => goTo(undone.at(-1), false),
  }
}

/** Paths of those that are another, each with its text afterwards; a list that is a link is written where it leads. */
function differing(
  file: string,
  before: DeskTexts,
  after: DeskTexts,
): readonly (readonly [string, string])[] {
  const lists = [...after.lists].flatMap(([name, text]) =>
    before.lists.has(name) && before.lists.get(name) !== text
      ? [[realpathSync(join(dirname(file), name)), text] as const]
      : [],
  )
  return after.plan === before.plan ? lists : [...lists, [file, after.plan]]
}

const tooLong = 'That makes the file longer than is read again: up to 1 million signs. Nothing was changed.'

type Changed = { readonly ok: true; readonly texts: DeskTexts } | { readonly ok: false; readonly why: string }

/** Each change as it was meant in the state that she saw, made in the texts as they are now. */
export function withChanges(texts: DeskTexts, made: DeskTexts, changes: readonly Change[]): Changed {
  let now = texts
  const seen = new Map<string | undefined, PlanData | undefined>()
  for (const change of changes) {
    const { file } = change
    const [text, old] = [textIn(now, file), textIn(made, file)]
    if (text !== undefined && isStrange(text)) return { ok: false, why: strange(file) }
    if (text === undefined || old === undefined) return { ok: false, why: notThere(file) }
    const data = seen.get(file) ?? dataIn(old, file)
    const fresh = dataIn(text, file)
    if (data === undefined || fresh === undefined) return { ok: false, why: unreadable(file) }
    const edit = textIn(texts, file) === old ? change : rebased(change, data, fresh)
    if (edit === undefined)
      return {
        ok: false,
        why: 'Another program changed the same thing meanwhile. What it wrote stands; look at it, then try again.',
      }
    const applied = file === undefined ? applyEdit(text, edit) : applyListEdit({ name: file, text }, edit)
    if (!applied.ok) {
      const { message = '', advice = '' } = applied.problems[0] ?? {}
      return { ok: false, why: `${message.charAt(0).toUpperCase()}${message.slice(1)}. ${advice}` }
    }
    now =
      file === undefined
        ? { ...now, plan: applied.value }
        : { ...now, lists: new Map([...now.lists, [file, applied.value]]) }
    seen.set(file, meant(data, change))
  }
  return { ok: true, texts: now }
}

function textIn({ plan, lists }: DeskTexts, file: string | undefined): string | undefined {
  return file === undefined ? plan : lists.get(file)
}

function dataIn(text: string, file: string | undefined): PlanData | undefined {
  return file === undefined ? planData(text) : listFileData({ name: file, text })
}

function notThere(file = 'The plan'): string {
  return `${file} does not lie beside the plan, or is too long. Nothing was changed.`
}

function unreadable(file = 'The plan'): string {
  return `${file} cannot be read, so nothing is changed in it. Mend it in the file first.`
}

function strange(file = 'The plan'): string {
  return `${file} is not in UTF-8, so nothing is changed in it. Open it in an editor and save it as plain text in UTF-8.`
}
