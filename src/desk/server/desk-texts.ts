/** The plan's text and those of the lists of words that it names, as they stand on the disk, and how they get there. */
import { createHash, randomBytes } from 'node:crypto'
import { readFileSync, renameSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'
import { planData } from '../../oaktag.js'
import { listFilesIn } from '../plan-values.js'
import { isInside } from './folder-files.js'

export interface DeskTexts {
  readonly plan: string
  /** By the name that the plan gives them; those that lie beside it, or in folders there. */
  readonly lists: ReadonlyMap<string, string>
}

/** As many as anybody names, and each as long as a list may be. */
const mostLists = 100
const mostBytes = 1_000_000

/** What stands on the disk now; texts that are as they were stay the same ones. */
export function textsOnDisk(file: string, plan: string, before?: DeskTexts): DeskTexts {
  const names = listFilesIn(planData(plan) ?? null).slice(0, mostLists)
  const lists = names.flatMap(name => {
    const text = readList(join(dirname(file), name), dirname(file))
    const old = before?.lists.get(name)
    return text === undefined ? [] : [[name, text === old ? old : text] as const]
  })
  return { plan, lists: new Map(lists) }
}

function readList(path: string, folder: string): string | undefined {
  if (!isInside(folder, path)) return undefined
  const state = statSync(path, { throwIfNoEntry: false })
  return state?.isFile() && state.size <= mostBytes ? readText(path) : undefined
}

export function isSameTexts(one: DeskTexts, other: DeskTexts): boolean {
  return (
    one.plan === other.plan &&
    one.lists.size === other.lists.size &&
    [...one.lists].every(([name, text]) => other.lists.get(name) === text)
  )
}

export function versionOf({ plan, lists }: DeskTexts): string {
  const hash = createHash('sha256').update(plan)
  for (const [name, text] of lists) hash.update('\0').update(name).update('\0').update(text)
  return hash.digest('base64url').slice(0, 16)
}

/** More than is read when it is opened again. */
export function isTooLong({ plan, lists }: DeskTexts): boolean {
  return [plan, ...lists.values()].some(text => Buffer.byteLength(text) > mostBytes)
}

/** Another encoding, or no text at all: written again, it would be lost. */
export function isStrange(text: string): boolean {
  return /[\0\uFFFD]/.test(text)
}

/** Undefined while it is not there, as when an editor puts a new file in its place. */
export function readText(file: string): string | undefined {
  try {
    // The mark at the beginning stays in the text, so that it is written again.
    return new TextDecoder('utf-8', { ignoreBOM: true }).decode(readFileSync(file))
  } catch {
    return undefined
  }
}

/** The new text stands beside the old one until it is whole, then takes its place. */
export function replaceFile(file: string, text: string): void {
  const beside = join(dirname(file), `.${basename(file)}.${randomBytes(6).toString('hex')}`)
  try {
    writeFileSync(beside, text, { flag: 'wx', mode: modeOf(file) })
    renameSync(beside, file)
  } catch (error) {
    rmSync(beside, { force: true })
    throw error
  }
}

/** As it was; of one that has gone, as files usually are. */
function modeOf(file: string): number {
  return statSync(file, { throwIfNoEntry: false })?.mode ?? 0o644
}
