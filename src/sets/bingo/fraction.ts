/** A fraction in lowest terms, `under` above zero, with its value as a number. */
export interface Fraction {
  readonly over: bigint
  readonly under: bigint
  readonly value: number
}

/** Throws a RangeError where `under` is zero. */
export function fraction(over: bigint, under: bigint): Fraction {
  if (under === 0n) throw new RangeError('a fraction cannot be over zero')
  const sign = under < 0n ? -1n : 1n
  const divisor = greatestCommonDivisor(over < 0n ? -over : over, under * sign)
  const [top, bottom] = [(sign * over) / divisor, (sign * under) / divisor]
  return { over: top, under: bottom, value: quotient(top, bottom) }
}

/** To about 15 digits, also where both numbers are too large for a double. */
function quotient(over: bigint, under: bigint): number {
  if (over < 0n) return -quotient(-over, under)
  const whole = over / under
  const scale = 10n ** 18n
  const [parts, digits] = [((over % under) * scale) / under, Number(scale)]
  if (whole > 0n || parts > 10n ** 16n) return Number(whole) + Number(parts) / digits
  const finer = 10n ** 60n
  return Number((over * finer) / under) / 1e60
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [larger, smaller] = [a, b]
  while (smaller !== 0n) [larger, smaller] = [smaller, larger % smaller]
  return larger
}
