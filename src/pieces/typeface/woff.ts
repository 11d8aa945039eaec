import { inflateSync } from 'node:zlib'

const signatures = {
  woff: 0x774f4646,
  woff2: 0x774f4632,
  trueType: 0x00010000,
  cff: 0x4f54544f,
  apple: 0x74727565,
}

/** As much as a plain font file may have: what a WOFF says of itself is not believed further. */
const largestBytes = 50_000_000

/**
 * The plain font file (TTF or OTF) inside `bytes`: unpacks WOFF 1.0 (W3C Recommendation, 13 December 2012, §4 and §5),
 * gives TTF and OTF back as they are. `undefined` where it is neither (WOFF2 among them), or a WOFF that is damaged.
 */
export function unpackFont(bytes: Uint8Array): Uint8Array | undefined {
  if (bytes.length < 12) return undefined
  const signature = new DataView(bytes.buffer, bytes.byteOffset).getUint32(0)
  if (signature === signatures.woff) return unlessDamaged(() => unpackWoff(bytes))
  const plain: readonly number[] = [signatures.trueType, signatures.cff, signatures.apple]
  return plain.includes(signature) ? bytes : undefined
}

function unlessDamaged(unpack: () => Uint8Array | undefined): Uint8Array | undefined {
  try {
    return unpack()
  } catch {
    // What is packed does not unpack, or a number leads out of the file.
    return undefined
  }
}

function unpackWoff(bytes: Uint8Array): Uint8Array | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength)
  const count = view.getUint16(12)
  if (bytes.length < 44 + 20 * count) return undefined
  let length = 12 + 16 * count
  const tables = Array.from({ length: count }, (_, index) => {
    const entry = 44 + 20 * index
    const [tag, start, packed, plain, checksum] = [0, 4, 8, 12, 16].map(at => view.getUint32(entry + at))
    if (length + plain! > largestBytes) throw new RangeError('more than any font holds')
    const data = bytes.subarray(start!, start! + packed!)
    const table = {
      tag: tag!,
      checksum: checksum!,
      start: length,
      data: packed! < plain! ? inflateSync(data, { maxOutputLength: plain! }) : data,
    }
    if (table.data.length !== plain) throw new RangeError('less than was packed')
    length += Math.ceil(plain! / 4) * 4
    return table
  })
  const font = new Uint8Array(length)
  const out = new DataView(font.buffer)
  const largestPower = 2 ** Math.floor(Math.log2(count))
  out.setUint32(0, view.getUint32(4))
  out.setUint16(4, count)
  out.setUint16(6, largestPower * 16)
  out.setUint16(8, Math.log2(largestPower))
  out.setUint16(10, (count - largestPower) * 16)
  tables.forEach(({ tag, checksum, start, data }, index) => {
    const record = 12 + 16 * index
    out.setUint32(record, tag)
    out.setUint32(record + 4, checksum)
    out.setUint32(record + 8, start)
    out.setUint32(record + 12, data.length)
    font.set(data, start)
  })
  return font
}
