/** What is answered to a page that may ask: where it looks, and what it does. */
import { readFileSync } from 'node:fs'
import type { ServerResponse } from 'node:http'
import { join } from 'node:path'
import { listedWords, lookAtPlan, pageFonts, sortsOfPlan } from '../../oaktag.js'
import { listFilesIn } from '../plan-values.js'
import { withPlanText } from './folder-files.js'
import type { HeldDesk } from './held-desk.js'
import { layoutPictures } from './layout-pictures.js'
import { plainPlan } from './plan-view.js'
import { proposedLists } from './proposed-lists.js'
import { fieldsOf, readItem, readSeenSheets, readStep, readTypedWords } from './read-message.js'
import { refuse, send, sendFound } from './responses.js'
import type { SetFolder } from './set-folder.js'
import { tellTyped } from './word-view.js'

/** Of a list's file into the plan: more than a year of words. */
const mostBroughtIn = 2000

/** Nothing where it is no text of an address. */
function decoded(name: string): string {
  try {
    return decodeURIComponent(name)
  } catch {
    return ''
  }
}

export interface DeskRoutes {
  /** What a GET is answered. */
  readonly give: (pathname: string, query: URLSearchParams, response: ServerResponse) => Promise<void>
  /** What comes of a POST. */
  readonly act: (pathname: string, given: unknown, response: ServerResponse) => Promise<void>
}

export interface Routing {
  readonly desk: HeldDesk
  readonly set: SetFolder
  /** Holds the page as it was built. */
  readonly pageFolder: string
  readonly close: () => void
}

export function deskRoutes({ desk, set, pageFolder, close }: Routing): DeskRoutes {
  const { path, file, files, pictures, names, looked } = desk
  const layouts = layoutPictures({ path, files, text: file.text, pictures })

  async function give(pathname: string, query: URLSearchParams, response: ServerResponse): Promise<void> {
    const [, room = '', name = '', ...more] = pathname.split('/')
    if (more.length > 0) return refuse(response, 404)
    const own = name.replace(/\.svg$/, '')
    switch (room) {
      case '':
        return send(response, 'html', readFileSync(join(pageFolder, 'page.html')))
      case 'page.js':
      case 'page.css':
        return send(response, room.slice(5), readFileSync(join(pageFolder, room)))
      case 'names':
        return send(response, 'json', JSON.stringify(names))
      case 'changes':
        return desk.listen(response)
      case 'fonts': {
        const face = pageFonts().faces.find(({ weight }) => `${weight}.woff2` === name)
        return face === undefined ? refuse(response, 404) : send(response, 'woff2', face.woff2)
      }
      case 'pictures':
        return sendFound(response, 'svg', pictures.get(own))
      case 'sheets':
        return sendFound(response, 'svg', desk.svg(own))
      case 'layouts':
        return givePicture(name, query, response)
      case 'sorts': {
        const sorts = await sortsOfPlan(path, files)
        return send(response, 'json', JSON.stringify(sorts.ok ? sorts.value.map(sort => sort.name) : []))
      }
      case 'proposed':
        return send(response, 'json', JSON.stringify(await proposedLists(path, files, query)))
      case 'list':
        return giveList(query.get('file') ?? '', response)
      case 'styles':
        return sendFound(response, 'svg', style(own))
      case 'files':
        return sendFound(response, 'pdf', set.pdf(decoded(name)))
      default:
        return refuse(response, 404)
    }
  }

  async function act(pathname: string, given: unknown, response: ServerResponse): Promise<void> {
    switch (pathname) {
      case '/step': {
        const step = readStep(given)
        if (step === undefined) return refuse(response, 400)
        return changed(response, file.step(step))
      }
      case '/undo':
        return changed(response, file.undo())
      case '/redo':
        return changed(response, file.redo())
      case '/seen': {
        const seen = readSeenSheets(given)
        if (seen === undefined) return refuse(response, 400)
        desk.see(seen)
        return send(response, 'json', '{}')
      }
      case '/study': {
        const words = readTypedWords(given)
        if (words === undefined) return refuse(response, 400)
        return send(response, 'json', JSON.stringify(tellTyped(words, looked().looked, pictures)))
      }
      case '/save': {
        const what = fieldsOf(given).what === 'pdf' ? 'pdf' : 'all'
        const answer = await set.save(what)
        const told = answer.ok ? answer : { ...answer, why: desk.said(answer.why) }
        return send(response, 'json', JSON.stringify(told))
      }
      case '/close':
        response.on('close', close)
        send(response, 'json', '{}')
        return
      default:
        return refuse(response, 404)
    }
  }

  async function givePicture(
    layout: string,
    query: URLSearchParams,
    response: ServerResponse,
  ): Promise<void> {
    const more = readItem(query.get('item') ?? '{}')
    if (more === undefined) return refuse(response, 400)
    const of = query.get('of')
    const picture = await layouts.picture({ ...more, layout }, of === 'front' || of === 'back' ? of : 'sheet')
    send(response, 'json', JSON.stringify(picture))
  }

  /** Of a list that the plan names, and of no other file. */
  function giveList(list: string, response: ServerResponse): void {
    const isNamed = listFilesIn(looked().plan.data).includes(list)
    const words = isNamed ? listedWords({ plan: path, list, files }) : undefined
    if (words === undefined || words.length > mostBroughtIn) refuse(response, 404)
    else send(response, 'json', JSON.stringify(words))
  }

  function changed(response: ServerResponse, answer: { readonly ok: boolean }): void {
    // Whatever came of it, the page is to see what the plan is now.
    desk.renewIfChanged()
    send(response, 'json', JSON.stringify(answer))
  }

  /** Looks are to be seen even while too little of her plan can be read. */
  function plain() {
    return lookAtPlan({ plan: path, files: withPlanText(files, path, plainPlan) }).value
  }

  /** The looks of a line or an outline by itself: `line-wavy`, `outline-oval`. */
  function style(name: string): string | undefined {
    const [kind = '', ...rest] = name.split('-')
    const own = rest.join('-')
    const pictureOf = (looked().looked ?? plain())?.pictureOfLooks
    if (kind === 'line' && names.lines.some(each => each.name === own)) return pictureOf?.({ line: own })
    const isOutline = kind === 'outline' && names.outlines.some(each => each.name === own)
    return isOutline ? pictureOf?.({ outline: own }) : undefined
  }

  return { give, act }
}
