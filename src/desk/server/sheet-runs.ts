/** The plan's sheets: put on paper anew after every change, drawn when somebody looks. */
import {
  drawnSheet,
  errorAt,
  type KeptWork,
  type PlacedItem,
  type Problem,
  placePlan,
  toSvg,
} from '../../oaktag.js'
import type { DeskItem } from '../messages.js'
import type { FolderFiles } from './folder-files.js'

type SheetOfItem = PlacedItem['sheets'][number]

export interface SheetRuns {
  /** Begins a run; one that is under way is given up. */
  readonly begin: () => void
  /** There is nothing to put on sheets yet. */
  readonly rest: () => void
  readonly state: () => RunState
  /** An SVG, drawn once. */
  readonly svg: (id: string) => string | undefined
  readonly stop: () => void
}

export interface RunState {
  readonly busy: boolean
  readonly older: boolean
  readonly items: readonly DeskItem[]
  readonly problems: readonly Problem[]
}

export interface Running {
  readonly path: string
  readonly files: FolderFiles
  readonly kept: KeptWork
  /** Told when a run has ended. */
  readonly ended: () => void
}

/** No plan should lead there; the desk stays open all the same. */
function failed(error: unknown): Problem {
  const what = error instanceof Error ? error.message : String(error)
  return errorAt(
    { file: '' },
    `the sheets could not be made: ${what}`,
    'Undo the last step, or look at the plan.',
  )
}

/** What is told of the plan goes out before the processor is taken by its sheets, so that the page draws meanwhile. */
function sentFirst(): Promise<void> {
  return new Promise(resolve => setImmediate(resolve))
}

function addressOf(name: string): string {
  return `/sheets/${name}.svg`
}

export function sheetRuns({ path, files, kept, ended }: Running): SheetRuns {
  let controller = new AbortController()
  let running: Promise<void> = Promise.resolve()
  let state: RunState = { busy: false, older: false, items: [], problems: [] }
  const names = new WeakMap<SheetOfItem, string>()
  const held = new Map<string, { readonly sheet: SheetOfItem; svg?: string }>()
  let count = 0
  let before: ReadonlySet<string> = new Set()

  /** A sheet that is the same as in the last run keeps its name, so that no page loads it again. */
  const nameOf = (sheet: SheetOfItem): string => {
    const known = names.get(sheet)
    const name = known ?? String(++count)
    names.set(sheet, name)
    if (!held.has(name)) held.set(name, { sheet })
    return name
  }
  const told = (item: PlacedItem): DeskItem => ({
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
  })
  const run = async (signal: AbortSignal): Promise<void> => {
    const placed = await placePlan({ plan: path, files, kept, watching: { signal } })
    if (signal.aborted) return
    const { problems } = placed
    state = placed.ok
      ? { busy: false, older: false, items: placed.value.map(told), problems }
      : { busy: false, older: state.items.length > 0, items: state.items, problems }
    // Those of the run before may still be asked for by a page that has not heard of this one.
    const now = new Set(state.items.flatMap(item => item.sheets.map(({ address }) => address)))
    for (const name of held.keys())
      if (![now, before].some(each => each.has(addressOf(name)))) held.delete(name)
    before = now
    ended()
  }
  return {
    begin: () => {
      controller.abort()
      controller = new AbortController()
      const { signal } = controller
      state = { ...state, busy: true }
      // One after the other: two runs at a time would only share the processor.
      running = running
        .then(sentFirst)
        .then(() => (signal.aborted ? undefined : run(signal)))
        .catch((error: unknown) => {
          if (signal.aborted) return
          state = { ...state, busy: false, older: state.items.length > 0, problems: [failed(error)] }
          ended()
        })
    },
    rest: () => {
      controller.abort()
      state = { busy: false, older: false, items: [], problems: [] }
    },
    state: () => state,
    svg: id => {
      const found = held.get(id)
      if (found === undefined) return undefined
      found.svg ??= toSvg(drawnSheet(found.sheet))
      return found.svg
    },
    stop: () => controller.abort(),
  }
}
