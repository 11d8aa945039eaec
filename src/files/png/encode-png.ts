import { crc32 } from 'node:zlib'
import { packRows } from './pack-rows.js'
import type { Pixels } from './pixels.js'
import type { RunPacker } from './run-packer.js'

const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a])

/** A PNG file (PNG Specification, Third Edition, W3C) of 8 bits a channel, with its true size in `pHYs`. */
export function encodePng(pixels: Pixels, dpi: number, packer: RunPacker): Buffer {
  return pngFile(pixels, dpi, inBytes(packRows(pixels, packer)))
}

/** What of a picture a file says at its head. */
export type PngSize = Pick<Pixels, 'widthPx' | 'heightPx' | 'channels'>

/** What a chunk holds, put where it belongs in the file: a picture's rows are hundreds of kilobytes, and are copied once. */
export interface ChunkData {
  readonly length: number
  readonly copyTo: (file: Buffer, at: number) => void
}

export function pngFile({ widthPx, heightPx, channels }: PngSize, dpi: number, rows: ChunkData): Buffer {
  const header = Buffer.alloc(13)
  header.writeUInt32BE(widthPx, 0)
  header.writeUInt32BE(heightPx, 4)
  header.set([8, channels === 1 ? 0 : 2, 0, 0, 0], 8)
  const chunks = [
    ['IHDR', inBytes(header)],
    ['pHYs', inBytes(physicalSize(dpi))],
    ['IDAT', rows],
    ['IEND', inBytes(Buffer.alloc(0))],
  ] as const
  const length = chunks.reduce((sum, [, { length }]) => sum + CHUNK_BYTES + length, signature.length)
  const file = Buffer.allocUnsafe(length)
  let at = signature.copy(file)
  for (const [name, contents] of chunks) at += putChunk(file, at, name, contents)
  return file
}

function inBytes(bytes: Buffer): ChunkData {
  return { length: bytes.length, copyTo: (file, at) => bytes.copy(file, at) }
}

/** Pixels per metre in both directions, rounded: 300 DPI are 11811 (300 / 0.0254). */
function physicalSize(dpi: number): Buffer {
  const data = Buffer.alloc(9)
  const pixelsPerMetre = Math.round(dpi / 0.0254)
  data.writeUInt32BE(pixelsPerMetre, 0)
  data.writeUInt32BE(pixelsPerMetre, 4)
  data.writeUInt8(1, 8)
  return data
}

/** Its length, its name and its checksum. */
const CHUNK_BYTES = 12

/** Puts it into the file and gives how long it is. */
function putChunk(file: Buffer, at: number, name: string, data: ChunkData): number {
  file.writeUInt32BE(data.length, at)
  file.write(name, at + 4, 'latin1')
  data.copyTo(file, at + 8)
  const end = at + 8 + data.length
  file.writeUInt32BE(crc32(file.subarray(at + 4, end)), end)
  return CHUNK_BYTES + data.length
}
