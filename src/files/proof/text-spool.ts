import { deflateRawSync, inflateRawSync } from 'node:zlib'

/** A text put aside. */
export interface SpooledText {
  readonly read: () => string
}

/** Puts texts aside, packed, until they are read: best in the order in which they came. */
export type TextSpool = (text: string) => SpooledText

const BLOCK_BYTES = 2 ** 20

/** A week's proof page is shorter, and is not packed only to be unpacked again. */
const UNPACKED_BLOCKS = 4

interface Block {
  texts: string[]
  packed?: Buffer
}

/**
 * The proof page of thousands of cards is fifty megabytes of text, of which packing leaves a tenth. A page that is small
 * is never packed.
 */
export function textSpool(): TextSpool {
  let block: Block = { texts: [] }
  let bytes = 0
  let unpacked: Block[] | undefined = []
  let open: { readonly block: Block; readonly texts: readonly string[] } | undefined
  const textsOf = (of: Block): readonly string[] => {
    if (of.packed === undefined) return of.texts
    if (open?.block !== of) open = { block: of, texts: JSON.parse(inflateRawSync(of.packed).toString()) }
    return open.texts
  }
  return text => {
    const own = block
    const at = own.texts.push(text) - 1
    bytes += text.length
    if (bytes >= BLOCK_BYTES) {
      unpacked?.push(own)
      if (unpacked === undefined) pack(own)
      else if (unpacked.length > UNPACKED_BLOCKS) {
        unpacked.forEach(pack)
        unpacked = undefined
      }
      block = { texts: [] }
      bytes = 0
    }
    return { read: () => textsOf(own)[at]! }
  }
}

function pack(block: Block): void {
  block.packed = deflateRawSync(JSON.stringify(block.texts), { level: 1 })
  block.texts = []
}

/** A text that is short, or at hand anyway. */
export function asSpooled(text: string): SpooledText {
  return { read: () => text }
}
