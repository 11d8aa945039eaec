/** The plan's sheets: put on paper anew after every change, those that are looked at first, and drawn when somebody looks. */
import { errorAt, type KeptWork, type PlacedItem, type Problem, placePlan } from '../../oaktag.js'
import type { DeskItem, SeenSheet } from '../messages.js'
import type { FolderFiles } from './folder-files.js'
import { sheetAddresses } from './sheet-addresses.js'

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
  /** What is looked at, in the order in which it is wanted. */
  readonly seen?: () => readonly SeenSheet[]
  /** What goes before a run, such as what the page asks for at once. */
  readonly before?: () => Promise<void>
  /** Told when there are new sheets, and when a run has ended. */
  readonly told: () => void
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

export function sheetRuns({
  path,
  files,
  kept,
  seen = () => [],
  before = async () => {},
  told,
}: Running): SheetRuns {
  let controller = new AbortController()
  let running: Promise<void> = Promise.resolve()
  let state: RunState = { busy: false, older: false, items: [], problems: [] }
  /** Of the last run that succeeded. */
  let whole: readonly DeskItem[] = []
  const sheets = sheetAddresses()

  /** In place of its sheets of before; where there are none, it is told with all the others. */
  const placedSoon = async (item: PlacedItem, wanted: readonly SeenSheet[], signal: AbortSignal) => {
    const older = state.items.find(({ name }) => name === item.name)
    if (signal.aborted || older === undefined) return
    const now = sheets.told(item)
    const others = wanted
      .filter(each => each.item === item.name)
      .flatMap(({ sheet }) => now.sheets[sheet]?.address ?? [])
      .filter(address => !older.sheets.some(each => each.address === address))
    if (others.length === 0) return
    for (const address of others) sheets.draw(address)
    state = { ...state, items: state.items.map(each => (each === older ? now : each)) }
    told()
    await sheets.asked(others)
  }
  const run = async (signal: AbortSignal): Promise<void> => {
    const wanted = seen()
    const soon = {
      items: [...new Set(wanted.map(({ item }) => item))],
      placed: (item: PlacedItem) => placedSoon(item, wanted, signal),
    }
    const placed = await placePlan({ plan: path, files, kept, watching: { signal }, soon })
    if (signal.aborted) return
    const { problems } = placed
    if (placed.ok) whole = placed.value.map(sheets.told)
    state = { busy: false, older: !placed.ok && whole.length > 0, items: whole, problems }
    sheets.letGo(whole)
    told()
  }
  return {
    begin: () => {
      controller.abort()
      controller = new AbortController()
      const { signal } = controller
      state = { ...state, busy: true, items: state.items.map(item => ({ ...item, toCome: true })) }
      // One after the other: two runs at a time would only share the processor.
      running = running
        .then(sentFirst)
        .then(() => (signal.aborted ? undefined : before()))
        .then(() => (signal.aborted ? undefined : run(signal)))
        .catch((error: unknown) => {
          if (signal.aborted) return
          state = { busy: false, older: whole.length > 0, items: whole, problems: [failed(error)] }
          told()
        })
    },
    rest: () => {
      controller.abort()
      whole = []
      state = { busy: false, older: false, items: [], problems: [] }
    },
    state: () => state,
    svg: sheets.svg,
    stop: () => controller.abort(),
  }
}
