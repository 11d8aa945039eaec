/** Small pictures that the page is shown by their contents: the same picture has the same address. */
import { createHash } from 'node:crypto'

const mostKept = 1000

export interface Pictures {
  /** Keeps a picture for a while and gives the address at which it is shown. */
  readonly keep: (svg: string) => string
}

export interface PictureStore extends Pictures {
  readonly get: (name: string) => string | undefined
}

export function pictureStore(): PictureStore {
  const pictures = new Map<string, string>()
  return {
    keep: svg => {
      const name = createHash('sha256').update(svg).digest('base64url').slice(0, 20)
      pictures.delete(name)
      pictures.set(name, svg)
      for (const old of pictures.keys()) if (pictures.size > mostKept) pictures.delete(old)
      return `/pictures/${name}.svg`
    },
    get: name => pictures.get(name),
  }
}
