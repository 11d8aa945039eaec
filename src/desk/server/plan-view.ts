/** The plan as the page is shown it: its data, and beside each word what the study tells of it. */
import { dirname, join, sep } from 'node:path'
import {
  applyEdit,
  dataAt,
  isKeys,
  isList,
  isSame,
  type KeptWork,
  type LookedAtPlan,
  listFileEntries,
  lookAtPlan,
  type PathFinder,
  type Problem,
  plainName,
  planData,
  type Word,
} from '../../oaktag.js'
import type { Data, DeskPattern, DeskPlan, DeskProblem, Path, Waits } from '../messages.js'
import { picturesBeside, weeksBeside } from './files-beside.js'
import { type FolderFiles, withPlanText } from './folder-files.js'
import { drawn, tellLists } from './listed-words-view.js'
import type { Pictures } from './picture-store.js'
import type { PlanFile } from './plan-file.js'
import { inASentence } from './word-view.js'

/** A word of ours where she has none yet. */
const standIn = 'reed'

/** A plan of ours, for what is to be seen while hers cannot be read or has no words. */
export const plainPlan = `words: [${standIn}]\nprint: [word-cards]\n`

export interface LookedAt {
  readonly plan: DeskPlan
  readonly looked: LookedAtPlan | undefined
  readonly problems: readonly Problem[]
  /** What has to come before there can be sheets. */
  readonly waits: Waits | undefined
}

export interface Viewing {
  readonly path: string
  readonly shownName: string
  readonly file: PlanFile
  readonly files: FolderFiles
  readonly kept: KeptWork
  readonly pictures: Pictures
  readonly definitions: readonly { readonly name: string; readonly summary: string }[]
}

export function viewPlan(viewing: Viewing): LookedAt {
  const { path, shownName, file, files, kept, pictures, definitions } = viewing
  const data = planData(file.text()) ?? null
  const { text, waits } = finished(file.text(), data ?? undefined)
  const { value, problems } = lookAtPlan({ plan: path, files: withPlanText(files, path, text), kept })
  const looked = value && (waits === 'words' ? { ...value, words: [] } : value)
  const words = looked?.words ?? []
  return {
    looked,
    problems,
    waits,
    plan: {
      version: file.version(),
      file: shownName,
      data,
      undo: file.undoes(),
      redo: file.redoes(),
      ...tellLists(viewing, data, looked),
      patterns: patternsOf(
        words.map(({ word }) => word),
        definitions,
      ),
      pictures: picturesBeside(path),
      weeks: weeksBeside(path),
      looks: drawn(looked?.picturesOfMarks() ?? [], pictures),
    },
  }
}

/** A plan that says yet nothing of what is printed, or has no words, is looked at as if it did. */
function finished(
  text: string,
  held: Data | undefined,
): { readonly text: string; readonly waits?: Waits | undefined } {
  if (!isKeys(held)) return { text }
  const isEmpty = (key: string) => held[key] === '' || isEmptyList(held[key])
  const keys = Object.keys(held).filter(key => !isEmpty(key))
  const has = (...names: readonly string[]) => keys.some(key => names.includes(key.toLowerCase()))
  const missing = [
    ...(has('words', 'groups') ? [] : [['words', standIn] as const]),
    ...(has('print', 'week') ? [] : [['print', 'word-cards'] as const]),
  ]
  if (missing.length === 0) return { text }
  const waits = missing[0]?.[0] === 'words' ? 'words' : 'things'
  const lines = text.split('\n').map(line => (isEmpty(/^([^:#]+):/.exec(line)?.[1] ?? '') ? '' : line))
  const below = [...lines, ...missing.map(([key, value]) => `${key}: [${value}]`), ''].join('\n')
  if (missing.every(([key, value]) => isSame(dataAt(planData(below), [key]), [value])))
    return { text: below, waits }
  // In braces, or in brackets over several lines: written as the page would write it, which moves its lines.
  const within = missing.reduce((plan, [key, value]) => {
    const edited = applyEdit(plan, { kind: 'insert', path: [key], at: 0, values: [value] })
    return edited.ok ? edited.value : plan
  }, text)
  return { text: within, waits }
}

function isEmptyList(data: Data | undefined): boolean {
  return data !== undefined && isList(data) && data.length === 0
}

function patternsOf(
  words: readonly Word[],
  definitions: readonly { readonly name: string; readonly summary: string }[],
): readonly DeskPattern[] {
  const showing = new Map<string, string[]>()
  for (const word of new Set(words))
    for (const pattern of new Set(word.patterns.map(each => each.pattern))) {
      const texts = showing.get(pattern) ?? []
      showing.set(pattern, [...texts, word.text])
    }
  return definitions.flatMap(({ name, summary }) => {
    const own = showing.get(name)
    return own === undefined ? [] : [{ name, title: plainName(name), definition: summary, words: own }]
  })
}

/** A problem with what it is about in the plan. */
export function tellProblem(
  { severity, place, message, advice }: Problem,
  path: string,
  find: PathFinder,
  lists: ReadonlyMap<string, string> = new Map(),
): DeskProblem {
  const own = place.file === path && place.line !== undefined
  const at = own ? find(place.line, place.column) : entryOfList(place, path, lists)
  const where =
    place.file === path || place.file === ''
      ? ''
      : `In ${place.file.split(/[\\/]/).at(-1)}${place.line === undefined ? '' : `, line ${place.line}`}: `
  return {
    severity,
    message: besidePlan(where === '' ? inASentence(message) : `${where}${message}.`, path),
    advice: besidePlan(advice, path),
    ...(own ? { line: place.line } : {}),
    ...(at === undefined ? {} : { path: at }),
  }
}

/** Where the page has the word of a list beside the plan. */
function entryOfList(
  { file, line }: Problem['place'],
  path: string,
  lists: ReadonlyMap<string, string>,
): Path | undefined {
  const list = [...lists].find(([name]) => join(dirname(path), name) === file)
  if (list === undefined) return undefined
  const [name, text] = list
  const index = listFileEntries({ name, text })?.findIndex(entry => entry.line === line) ?? -1
  return index < 0 ? ['file', name] : ['file', name, index]
}

/** Files beside the plan are known by their own names. */
export function besidePlan(text: string, path: string): string {
  return text.replaceAll(`${dirname(path)}${sep}`, '')
}
