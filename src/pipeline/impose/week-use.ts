/** For which day of the week an item is, and how many of it are printed. */
import type { WeekUse } from '../../files/printed-plan.js'
import type { SheetKind, SheetToDraw } from '../../sheets/sheet.js'
import type { PreparedItem } from '../deal/prepare-item.js'

type Sheets = readonly Pick<SheetToDraw, 'kind' | 'side' | 'pieces'>[]

/** Undefined where the plan does not have the week's set made. */
export function weekUse(prepared: PreparedItem, sheets: Sheets): WeekUse | undefined {
  if (prepared.studied.plan.week === undefined) return undefined
  const { day } = prepared.layout.inWeek
  const { itemTitle: title } = prepared.request
  return { day, title, print: [howMany(prepared, sheets), ...forYou(prepared, sheets)].join('; ') }
}

function howMany({ layout, job: { item }, request: { children } }: PreparedItem, sheets: Sheets): string {
  const { given } = layout.inWeek
  if (given === 'screen')
    return item.paper.screen === true ? 'nothing, show it on the screen' : 'once, to show'
  if (given === 'once') return `once${boardsIn(sheets)}`
  if (item.copies > 1) return `once: ${item.copies} sets are in it`
  switch (given) {
    case 'you':
      return 'one for you'
    case 'each child':
      return forEachChild(children, sheets)
    case 'each pair':
      return counted(children && Math.ceil(children / 2), 'one for each pair of children')
  }
}

/** `: 22 boards are in it`, of a game with a board for each child. */
function boardsIn(sheets: Sheets): string {
  const boards = boardsOf(sheets)
  return boards < 2 ? '' : `: ${boards} boards are in it`
}

/** A board of several parts is one. */
function boardsOf(sheets: Sheets): number {
  const boards = sheets
    .filter(({ side }) => side === 'front')
    .flatMap(({ pieces }) => pieces.flatMap(({ piece }) => (piece.kind === 'board' ? [piece] : [])))
  return new Set(boards.map(({ number, copy }) => `${number} ${copy}`)).size
}

function forEachChild(children: number | undefined, sheets: Sheets): string {
  const each = 'one for each child'
  const boards = boardsOf(sheets)
  if (boards < 2) return counted(children, each)
  return isForAll(children, sheets) ? `once: ${boards} are in it, ${each}` : `${each}: ${boards} are in it`
}

/** Whether the sheets, printed once, are one for each child already. */
function isForAll(children: number | undefined, sheets: Sheets): boolean {
  return children !== undefined && children > 1 && boardsOf(sheets) >= children
}

function counted(many: number | undefined, each: string): string {
  return many === undefined ? each : `${many}, ${each}`
}

/** Kinds of pages that go with a set and are the grown-up's, as they are called. */
const kept: Readonly<Partial<Record<SheetKind, string>>> = {
  cover: 'cover',
  key: 'key',
  caller: 'list to read aloud',
  rules: 'rules',
  answers: 'answers',
}

/** What is printed once beside what is printed often. */
function forYou(
  { layout, job: { item }, request: { children } }: PreparedItem,
  sheets: Sheets,
): readonly string[] {
  const { given, yourList } = layout.inWeek
  const isOften =
    ['each child', 'each pair'].includes(given) && item.copies === 1 && !isForAll(children, sheets)
  const nameOf = (kind: SheetKind) => (kind === 'list' ? yourList : kept[kind])
  const names = [...new Set(sheets.flatMap(({ kind }) => nameOf(kind) ?? []))]
  return isOften && names.length > 0 ? [`for you once: ${names.join(', ')}`] : []
}
