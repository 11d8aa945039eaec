/** The addresses under which a page is shown sheets, each drawn when somebody looks. */
import { drawnSheet, type PlacedItem, toSvg } from '../../oaktag.js'
import type { DeskItem } from '../messages.js'

type SheetOfItem = PlacedItem['sheets'][number]

const [opening, ending] = ['/sheets/', '.svg']

/** As long as a page needs to ask for what it has just been told of; one that is busy with something else asks later. */
const ASKED_SOON_MS = 40

export interface SheetAddresses {
  readonly told: (item: PlacedItem) => DeskItem
  /** An SVG, drawn once; undefined where no page can know of it. */
  readonly svg: (id: string) => string | undefined
  /** Draws it, so that it is there when it is asked for. */
  readonly draw: (address: string) => void
  /** When all of these have been asked for, or could have been. */
  readonly asked: (addresses: readonly string[]) => Promise<void>
  /** After a run: what stays beside its sheets is what a page that has not heard of them may still ask for. */
  readonly letGo: (items: readonly DeskItem[]) => void
}

export function sheetAddresses(): SheetAddresses {
  const names = new WeakMap<SheetOfItem, string>()
  const held = new Map<string, { readonly sheet: SheetOfItem; svg?: string }>()
  let count = 0
  /** Those told since the end of the last run, and in the run before. */
  let late = new Set<string>()
  let earlier: ReadonlySet<string> = new Set()
  const waiting = new Set<{ readonly left: Set<string>; readonly done: () => void }>()

  /** A sheet that is the same as in the last run keeps its name, so that no page loads it again. */
  const nameOf = (sheet: SheetOfItem): string => {
    const known = names.get(sheet)
    const name = known ?? String(++count)
    names.set(sheet, name)
    if (!held.has(name)) held.set(name, { sheet })
    late.add(name)
    return name
  }
  const svg = (id: string): string | undefined => {
    const found = held.get(id)
    if (found === undefined) return undefined
    found.svg ??= toSvg(drawnSheet(found.sheet))
    return found.svg
  }
  return {
    told: item => ({
      name: item.name,
      title: item.title,
      layout: item.layout,
      group: item.group,
      notes: item.notes,
      sheets: item.sheets.map(sheet => ({
        address: addressOf(nameOf(sheet)),
        title: sheet.title,
        kind: sheet.kind,
        side: sheet.side,
        widthMm: sheet.widthMm,
        heightMm: sheet.heightMm,
      })),
    }),
    svg: id => {
      for (const { left, done } of waiting) {
        left.delete(id)
        if (left.size === 0) done()
      }
      return svg(id)
    },
    draw: address => void svg(idOf(address)),
    asked: addresses =>
      new Promise(resolve => {
        const done = (): void => {
          clearTimeout(timer)
          waiting.delete(each)
          setImmediate(resolve)
        }
        const each = { left: new Set(addresses.map(idOf)), done }
        const timer = setTimeout(done, ASKED_SOON_MS)
        waiting.add(each)
      }),
    letGo: items => {
      const now = new Set(items.flatMap(item => item.sheets.map(({ address }) => idOf(address))))
      for (const name of held.keys())
        if (![now, late, earlier].some(each => each.has(name))) held.delete(name)
      earlier = late
      late = new Set()
    },
  }
}

function addressOf(name: string): string {
  return `${opening}${name}${ending}`
}

function idOf(address: string): string {
  return address.slice(opening.length, -ending.length)
}
