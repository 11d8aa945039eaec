/** Small pictures that the page is shown by their contents: the same picture has the same address. */
import { createHash } from 'node:crypto'

const mostKept = 1000

/** As long as a page needs to ask for the first picture of those that it has just been told of, and then for the next. */
const [ASKED_SOON_MS, NEXT_MS] = [30, 6]

export interface Pictures {
  /** Keeps a picture for a while and gives the address at which it is shown. */
  readonly keep: (svg: string) => string
}

export interface PictureStore extends Pictures {
  readonly get: (name: string) => string | undefined
  /** When a page has asked for what is new since somebody last asked, or could have; at once where nothing is. */
  readonly asked: () => Promise<void>
}

export function pictureStore(): PictureStore {
  const pictures = new Map<string, string>()
  let hasNew = false
  let next = (): void => undefined
  return {
    keep: svg => {
      const name = createHash('sha256').update(svg).digest('base64url').slice(0, 20)
      if (!pictures.has(name)) hasNew = true
      pictures.delete(name)
      pictures.set(name, svg)
      for (const old of pictures.keys()) if (pictures.size > mostKept) pictures.delete(old)
      return `/pictures/${name}.svg`
    },
    get: name => {
      hasNew = false
      next()
      return pictures.get(name)
    },
    asked: () => {
      if (!hasNew) return Promise.resolve()
      hasNew = false
      return new Promise(resolve => {
        let timer = setTimeout(resolve, ASKED_SOON_MS)
        next = () => {
          clearTimeout(timer)
          timer = setTimeout(resolve, NEXT_MS)
        }
      })
    },
  }
}
