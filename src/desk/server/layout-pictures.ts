/** Each layout as a small picture of her own words: the first sheet that it would give with nothing else asked of it. */
import {
  applyEdit,
  drawnSheet,
  isKeys,
  keepWork,
  type PlanData,
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
      if (drawnFor !== base || drawn.size > mostHeld) [drawnFor, drawn] = [base, new Map()]
      const key = JSON.stringify([item, of])
      const known = drawn.get(key)
      if (known !== undefined) return known
      // One after the other, or the pictures of a page would all wait for the last of them.
      const before = [...drawn.values()].at(-1) ?? Promise.resolve()
      const picture = before.then(() => pictureOf(item, of, base))
      drawn.set(key, picture)
      return picture
    },
  }

  async function pictureOf(
    item: Item,
    of: 'sheet' | 'front' | 'back',
    base?: string,
  ): Promise<LayoutPicture> {
    const alone = base === undefined ? undefined : printing(base, item)
    if (alone === undefined) return { why: '' }
    const placed = await placePlan({ plan: path, files: withPlanText(files, path, alone), kept })
    if (!placed.ok)
      return {
        why: besidePlan(
          sentence(placed.problems.find(({ severity }) => severity === 'error')?.message),
          path,
        ),
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

/** The plan without what it prints and for whom; undefined where that cannot be written. */
function withoutPrint(text: string): string | undefined {
  const data = planData(text)
  if (!isKeys(data)) return undefined
  const hasWords = Object.keys(data).some(key => key.toLowerCase() === 'words')
  const dropped = ['print', 'week', 'children', 'spread', ...(hasWords ? ['groups'] : [])]
  const others = Object.keys(data).filter(key => dropped.includes(key.toLowerCase()))
  const left = others.reduce<string | undefined>((each, key) => {
    const edited = each === undefined ? undefined : applyEdit(each, { kind: 'remove', path: [key] })
    return edited?.ok ? edited.value : undefined
  }, text)
  const isEmpty = !Object.entries(data).some(
    ([key, value]) => ['words', 'groups'].includes(key.toLowerCase()) && value.length !== 0,
  )
  if (left === undefined || !isEmpty) return left
  const edited = applyEdit(left, { kind: 'insert', path: ['words'], at: 0, values: exampleWords })
  return edited.ok ? edited.value : left
}

function printing(base: string, item: Item): string | undefined {
  const edited = applyEdit(base, { kind: 'insert', path: ['print'], at: 0, values: [item] })
  return edited.ok ? edited.value : undefined
}
