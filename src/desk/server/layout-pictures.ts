/** Each layout as a small picture of her own words: the first sheet that it would give with nothing else asked of it. */
import { applyEdit, drawnSheet, isKeys, keepWork, placePlan, planData, toSvg } from '../../oaktag.js'
import type { LayoutPicture } from '../messages.js'
import { type FolderFiles, withPlanText } from './folder-files.js'
import type { Pictures } from './picture-store.js'

export interface LayoutPictures {
  readonly picture: (layout: string) => Promise<LayoutPicture>
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
    picture: layout => {
      const base = withoutPrint(text())
      if (drawnFor !== base) [drawnFor, drawn] = [base, new Map()]
      const known = drawn.get(layout)
      if (known !== undefined) return known
      // One after the other, or the pictures of a page would all wait for the last of them.
      const before = [...drawn.values()].at(-1) ?? Promise.resolve()
      const picture = before.then(() => firstSheet(layout, base))
      drawn.set(layout, picture)
      return picture
    },
  }

  async function firstSheet(layout: string, base: string | undefined): Promise<LayoutPicture> {
    const alone = base === undefined ? undefined : printing(base, layout)
    if (alone === undefined) return { why: '' }
    const placed = await placePlan({ plan: path, files: withPlanText(files, path, alone), kept })
    if (!placed.ok)
      return { why: sentence(placed.problems.find(({ severity }) => severity === 'error')?.message) }
    const sheets = placed.value.flatMap(item => item.sheets)
    const sheet =
      sheets.find(({ kind }) => kind === 'pieces') ?? sheets.find(({ kind }) => kind !== 'cover') ?? sheets[0]
    return sheet === undefined ? { why: '' } : { picture: pictures.keep(toSvg(drawnSheet(sheet))) }
  }
}

function sentence(message = ''): string {
  return message === '' ? '' : `${message.charAt(0).toUpperCase()}${message.slice(1)}.`
}

/** The plan without what it prints and for whom; undefined where that cannot be written. */
function withoutPrint(text: string): string | undefined {
  const data = planData(text)
  if (!isKeys(data)) return undefined
  const dropped = ['print', 'week', 'groups', 'children', 'spread']
  const others = Object.keys(data).filter(key => dropped.includes(key.toLowerCase()))
  return others.reduce<string | undefined>((each, key) => {
    const edited = each === undefined ? undefined : applyEdit(each, { kind: 'remove', path: [key] })
    return edited?.ok ? edited.value : undefined
  }, text)
}

function printing(base: string, layout: string): string | undefined {
  const edited = applyEdit(base, { kind: 'insert', path: ['print'], at: 0, values: [{ layout }] })
  return edited.ok ? edited.value : undefined
}
