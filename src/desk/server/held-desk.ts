/** The plan as the desk has it open: looked at and put on sheets anew whenever it is another, and told to every page. */
import type { ServerResponse } from 'node:http'
import { basename, dirname, join } from 'node:path'
import { keepWork, pathFinder } from '../../oaktag.js'
import type { Data, DeskNames, DeskSheets, Path, SeenSheet } from '../messages.js'
import { folded, listOf, textOf } from '../plan-values.js'
import { watchFiles } from './file-watch.js'
import { type FolderFiles, folderFiles } from './folder-files.js'
import { pagePhrases } from './page-phrases.js'
import { type PictureStore, pictureStore } from './picture-store.js'
import { openPlanFile, type PlanFile } from './plan-file.js'
import { type LookedAt, viewPlan } from './plan-view.js'
import { tellProblems } from './refused-files.js'
import { type SheetRuns, sheetRuns } from './sheet-runs.js'

const mostProblems = 200

export interface HeldDesk {
  readonly path: string
  readonly file: PlanFile
  readonly files: FolderFiles
  readonly pictures: PictureStore
  readonly names: DeskNames
  readonly looked: () => LookedAt
  /** What the engine says, in the words of the page. */
  readonly said: (text: string) => string
  /** Drawn when somebody looks. */
  readonly svg: SheetRuns['svg']
  /** Looks at the plan anew where it is another than it was. */
  readonly renewIfChanged: () => void
  /** A page says what of the sheets it shows; where there are several, the one that spoke last is looked at. */
  readonly see: (seen: readonly SeenSheet[]) => void
  /** Tells a page of the plan and its sheets, now and at every change. */
  readonly listen: (response: ServerResponse) => void
  readonly close: () => void
}

/** Things are called as the page calls them, not as their files are: `"word-cards-kits"`. */
function withTitles(text: string, items: DeskSheets['items']): string {
  return items.reduce(
    (told, { name, title, group }) =>
      told.replaceAll(`"${name}"`, group === null ? title : `${title} for ${group}`),
    text,
  )
}

/** Which kind of thing a path of the plan leads to. */
function layoutAt(data: Data | null, path: Path | undefined): string | undefined {
  const [key, index] = path ?? []
  if (data === null || folded(String(key)) !== 'print' || typeof index !== 'number') return undefined
  const item = listOf(data, 'print')[index]
  return item === undefined ? undefined : folded(typeof item === 'string' ? item : textOf(item, 'layout'))
}

/** @param path real path of the plan */
export function holdDesk(path: string, names: DeskNames): HeldDesk {
  const file = openPlanFile(path)
  const files = folderFiles(path, file.text)
  const kept = keepWork()
  const pictures = pictureStore()
  const listening = new Set<ServerResponse>()
  const shownName = basename(path)
  const view = () => viewPlan({ path, shownName, file, files, kept, pictures, definitions: names.patterns })
  const said = pagePhrases(names)
  let looked = view()
  let seen: readonly SeenSheet[] = []
  let isBegun = false

  const sheets = (): DeskSheets => {
    const { busy, older, items, problems } = runs.state()
    const find = pathFinder(file.text())
    const { waits } = looked
    const isTold = waits === undefined && !(busy && problems.length === 0)
    const all = isTold ? problems : looked.problems
    return {
      version: file.version(),
      busy,
      older,
      ...(waits === undefined ? {} : { waits }),
      items: items.map(item => ({ ...item, notes: item.notes.map(note => said(note, item.layout)) })),
      problems: tellProblems({
        problems: all.slice(0, mostProblems),
        refused: files.refused(),
        path,
        find,
        lists: file.lists(),
      }).map(({ message, advice, ...problem }) => {
        const layout = layoutAt(looked.plan.data, problem.path)
        return { ...problem, message: said(withTitles(message, items), layout), advice: said(advice, layout) }
      }),
    }
  }
  const tell = (event: string, value: unknown, to: Iterable<ServerResponse> = listening): void => {
    const text = `event: ${event}\ndata: ${JSON.stringify(value)}\n\n`
    for (const response of to) response.write(text)
  }
  const runs = sheetRuns({
    path,
    files,
    kept,
    seen: () => seen,
    before: pictures.asked,
    told: () => tell('sheets', sheets()),
  })
  const beginSheets = (): void => {
    if (looked.waits === undefined) runs.begin()
    else runs.rest()
  }
  const renew = (): void => {
    files.forget()
    looked = view()
    tell('plan', looked.plan)
    beginSheets()
    tell('sheets', sheets())
  }
  const watching = watchFiles(
    dirname(path),
    () => [path, ...files.asked()],
    others => {
      // Its own writing is seen here too, and is nothing new.
      const held = [path, ...[...file.lists().keys()].map(name => join(dirname(path), name))]
      if (file.takeIn() || others.some(other => !held.includes(other))) renew()
    },
  )
  return {
    path,
    file,
    files,
    pictures,
    names,
    looked: () => looked,
    said,
    svg: runs.svg,
    renewIfChanged: () => {
      if (looked.plan.version !== file.version()) renew()
    },
    see: now => {
      seen = now
    },
    listen: response => {
      response.writeHead(200, { 'content-type': 'text/event-stream' })
      listening.add(response)
      response.on('close', () => listening.delete(response))
      tell('plan', looked.plan, [response])
      // The first page comes before the first sheets.
      if (!isBegun) beginSheets()
      isBegun = true
      tell('sheets', sheets(), [response])
    },
    close: () => {
      watching.close()
      runs.stop()
    },
  }
}
