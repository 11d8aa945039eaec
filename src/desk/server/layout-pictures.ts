/** Each layout as a small picture of her own words: the first sheet that it would give with nothing else asked of it. */
import {
  drawnSheet,
  isKeys,
  isSame,
  keepWork,
  meant,
  type PlanData,
  type PlanPath,
  pathFinder,
  placePlan,
  planData,
  type Sheet,
  toSvg,
} from '../../oaktag.js'
import { exampleWords } from '../example-words.js'
import type { LayoutPicture } from '../messages.js'
import { type FolderFiles, withPlanText } from './folder-files.js'
import type { Pictures } from './picture-store.js'
import { besidePlan } from './plan-view.js'

export type Item = { readonly [key: string]: PlanData }

const mostHeld = 500

export interface LayoutPictures {
  /** @param item with its layout and whatever else is said of it */
  readonly picture: (item: Item, of: 'sheet' | 'front' | 'back') => Promise<LayoutPicture>
}

export interface Picturing {
  readonly path: string
  readonly files: FolderFiles
  readonly text: () => string
  readonly pictures: Pictures
}

export function layoutPictures({ path, files, text, pictures }: Picturing): LayoutPictures {
  const kept = keepWork()
  let drawnFor: string | undefined
  let drawn = new Map<string, Promise<LayoutPicture>>()
  return {
    picture: (item, of) => {
      const base = withoutPrint(text())
      const known = JSON.stringify(base)
      if (drawnFor !== known || drawn.size > mostHeld) [drawnFor, drawn] = [known, new Map()]
      const key = JSON.stringify([item, of])
      const found = drawn.get(key)
      if (found !== undefined) return found
      // One after the other, or the pictures of a page would all wait for the last of them.
      const before = [...drawn.values()].at(-1) ?? Promise.resolve()
      const picture = before.then(() => pictureOf(item, of, base))
      drawn.set(key, picture)
      return picture
    },
  }

  async function pictureOf(item: Item, of: 'sheet' | 'front' | 'back', base: Item): Promise<LayoutPicture> {
    const whole = await placedAlone({ ...base, print: [item] })
    // What else is said of the thing may leave no room: then what the picture is of is shown without it.
    const { layout = '', ...more } = item
    const bare = { layout, ...Object.fromEntries(Object.entries(more).slice(-1)) }
    const placed = whole.ok ? whole : await placedAlone({ ...base, print: [bare] })
    if (!placed.ok) {
      const [own] = placed.problems.filter(({ severity }) => severity === 'error')
      return { why: besidePlan(sentence(own?.message), path) }
    }
    const sheets = placed.value.flatMap(each => each.sheets)
    const side = of === 'back' ? 'back' : 'front'
    const sheet =
      sheets.find(each => each.kind === 'pieces' && each.side === side) ??
      sheets.find(({ kind }) => kind !== 'cover') ??
      sheets[0]
    if (sheet === undefined) return { why: '' }
    const drawn = drawnSheet(sheet)
    return { picture: pictures.keep(toSvg(of === 'sheet' ? drawn : pieceAlone(drawn))) }
  }

  /** What is wrong elsewhere in the plan is told in its place, and keeps no thing from being shown. */
  async function placedAlone(plan: Item, tries = 4): Promise<ReturnType<typeof placePlan>> {
    // All of JSON is YAML (YAML 1.2.2, 1.3), and each value has a place of its own.
    const has = (name: string) => Object.keys(plan).some(key => key.toLowerCase() === name)
    const words = has('words') || has('groups') ? {} : { words: exampleWords }
    const text = JSON.stringify({ ...plan, ...words }, null, 1)
    const placed = await placePlan({ plan: path, files: withPlanText(files, path, text), kept })
    if (placed.ok || tries === 0) return placed
    const find = pathFinder(text)
    const wrong = placed.problems.flatMap(({ severity, place }) => {
      const at = place.file === path && place.line !== undefined ? find(place.line, place.column) : undefined
      return severity === 'error' && at !== undefined && at[0] !== 'print' ? [at] : []
    })
    const left = wrong.reduceRight<PlanData>((data, at) => withoutEntry(data, at), plan)
    return wrong.length > 0 && isKeys(left) && !isSame(left, plan) ? placedAlone(left, tries - 1) : placed
  }
}

/** Without the entry of a list that holds the place, or the key of the plan. */
function withoutEntry(plan: PlanData, at: PlanPath): PlanData {
  const entry = at.findIndex(step => typeof step === 'number')
  const path = at.slice(0, entry < 0 ? 1 : entry + 1)
  return meant(plan, { kind: 'remove', path }) ?? plan
}

/** The first piece that shows something, large enough to be looked at. */
function pieceAlone(sheet: Sheet): Sheet {
  const placed = sheet.pieces[0]
  if (placed === undefined) return sheet
  const { widthMm, heightMm } = placed.piece
  return { ...sheet, widthMm, heightMm, pieces: [{ ...placed, xMm: 0, yMm: 0 }], cuts: [], furniture: [] }
}

function sentence(message = ''): string {
  return message === '' ? '' : `${message.charAt(0).toUpperCase()}${message.slice(1)}.`
}

/** What the plan says but for what it prints and for whom; nothing of one that cannot be read. */
function withoutPrint(text: string): Item {
  const data = planData(text)
  const held = Object.entries(isKeys(data) ? data : {}).filter(([, value]) => value.length !== 0)
  const has = (name: string) => held.some(([key]) => key.toLowerCase() === name)
  const dropped = ['print', 'week', 'children', 'spread', 'printer', ...(has('words') ? ['groups'] : [])]
  const kept = held.filter(([key]) => !dropped.includes(key.toLowerCase()))
  return Object.fromEntries(kept)
}
