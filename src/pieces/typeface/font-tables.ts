/**
 * What a font file's own directory of tables says of it (OpenType 1.9, "Organization of an OpenType font"): whether it
 * is whole is told from its sums, before anything is drawn from it.
 */
interface Table {
  readonly tag: string
  readonly sum: number
  readonly start: number
  readonly length: number
}

/** Without these nothing can be drawn; outlines are in `glyf` and `loca`, or in `CFF `. */
const needed = ['cmap', 'head', 'hhea', 'hmtx', 'maxp']
/**
 * What letters are drawn and set from. `head` holds a sum of the whole file, which tools get wrong without harm, and
 * tables of names, hints and signatures are not used.
 */
const summed = ['cmap', 'hhea', 'hmtx', 'maxp', 'glyf', 'loca', 'CFF ', 'CFF2', 'GSUB', 'GPOS', 'kern']

/** Why the file cannot be used, a clause; undefined where its tables are whole. */
export function faultOfTables(bytes: Uint8Array): string | undefined {
  const tables = tablesOf(bytes)
  if (tables === undefined) return 'its file breaks off'
  const tags = tables.map(table => table.tag)
  const lacking = needed.find(tag => !tags.includes(tag))
  if (lacking !== undefined) return `its file lacks a part that every font has (${lacking})`
  const hasOutlines =
    ['glyf', 'loca'].every(tag => tags.includes(tag)) || tags.some(tag => tag.startsWith('CFF'))
  if (!hasOutlines) return 'its file holds no outlines of letters'
  if (tables.some(({ start, length }) => start + length > bytes.length)) return 'its file breaks off'
  const head = tables.find(table => table.tag === 'head')
  if (head === undefined || !hasSoundEm(head, bytes)) return 'its file does not say how large its letters are'
  const damaged = tables.find(table => summed.includes(table.tag) && sumOf(table, bytes) !== table.sum)
  return damaged && `its file is damaged (the part ${damaged.tag.trim()} is not what it was when it was made)`
}

/** The tables that the file lists; undefined where the list itself is not all there. */
function tablesOf(bytes: Uint8Array): readonly Table[] | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const count = bytes.length < 12 ? 0 : view.getUint16(4)
  if (count === 0 || bytes.length < 12 + 16 * count) return undefined
  return Array.from({ length: count }, (_, index) => {
    const at = 12 + 16 * index
    return {
      tag: String.fromCharCode(...bytes.subarray(at, at + 4)),
      sum: view.getUint32(at + 4),
      start: view.getUint32(at + 8),
      length: view.getUint32(at + 12),
    }
  })
}

/** An em is divided into 16 to 16,384 units. */
function hasSoundEm({ start, length }: Table, bytes: Uint8Array): boolean {
  if (length < 54) return false
  const units = new DataView(bytes.buffer, bytes.byteOffset + start).getUint16(18)
  return units >= 16 && units <= 16_384
}

/** The table as numbers of four bytes, the last filled up with zeros, added up without carrying over 32 bits. */
function sumOf({ start, length }: Table, bytes: Uint8Array): number {
  const whole = new Uint8Array(Math.ceil(length / 4) * 4)
  whole.set(bytes.subarray(start, start + length))
  const view = new DataView(whole.buffer)
  let sum = 0
  for (let at = 0; at < whole.length; at += 4) sum = (sum + view.getUint32(at)) >>> 0
  return sum
}
