/** The number at three decimals: a thousandth of a millimetre is finer than any printer. Never minus nought. */
export function toDecimal(value: number): number {
  return Math.round(value * 1000) / 1000 + 0
}
