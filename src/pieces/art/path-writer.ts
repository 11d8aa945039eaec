/**
 * Path data written letter by letter into bytes and read from there as one piece of text: nearly all that a sheet's
 * outlines take passes here, and text put together from thousands of bits is slower and keeps every bit in memory. Most of
 * a run it is not compiled yet, and what is not compiled takes lists apart slowly: so there are none in it.
 */
export interface PathWriter {
  /** A letter of ASCII. */
  readonly character: (code: number) => void
  /** A length in mm, at most three decimals: a thousandth of a millimetre is far below what paper shows. */
  readonly number: (mm: number) => void
  /** What was written since the last call. */
  readonly take: () => string
}

const [MINUS, POINT, ZERO] = [45, 46, 48]
/** No number that stands on paper is longer, nor is a letter. */
const LONGEST = 16

export function pathWriter(): PathWriter {
  let bytes = Buffer.alloc(1 << 14)
  let end = 0
  const makeRoom = (): void => {
    if (end + LONGEST > bytes.length) bytes = Buffer.concat([bytes, Buffer.alloc(bytes.length)])
  }
  const digits = (value: number): void => {
    if (value >= 10) digits((value / 10) | 0)
    bytes[end++] = ZERO + (value % 10)
  }
  return {
    character: code => {
      makeRoom()
      bytes[end++] = code
    },
    number: mm => {
      makeRoom()
      const count = Math.round(mm * 1000) | 0
      const thousandths = count < 0 ? -count : count
      if (count < 0) bytes[end++] = MINUS
      const whole = (thousandths / 1000) | 0
      digits(whole)
      const rest = thousandths - whole * 1000
      if (rest === 0) return
      const tenths = (rest / 100) | 0
      const hundredths = (rest / 10) | 0
      bytes[end++] = POINT
      bytes[end++] = ZERO + tenths
      if (rest === tenths * 100) return
      bytes[end++] = ZERO + (hundredths % 10)
      if (rest !== hundredths * 10) bytes[end++] = ZERO + (rest % 10)
    },
    take: () => {
      const text = bytes.toString('latin1', 0, end)
      end = 0
      return text
    },
  }
}
