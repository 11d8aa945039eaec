/** Ways to choose: counts of subsets, exactly, and the subsets themselves. */

/** How many subsets of `size` there are among `items`; 0 where `size` is more than `items`. */
export function binomial(items: number, size: number): bigint {
  if (size < 0 || size > items) return 0n
  let count = 1n
  for (let step = 1; step <= size; step++) count = (count * BigInt(items - size + step)) / BigInt(step)
  return count
}

/** Every subset of `size` of the numbers 0 to `items` − 1, each ascending, in dictionary order. */
export function everySubset(items: number, size: number): number[][] {
  const extend = (start: number, left: number): number[][] => {
    if (left === 0) return [[]]
    const subsets: number[][] = []
    for (let first = start; first <= items - left; first++) {
      for (const rest of extend(first + 1, left - 1)) subsets.push([first, ...rest])
    }
    return subsets
  }
  return extend(0, size)
}
