/** The longest code that deflate takes for a symbol (RFC 1951, §3.2.7). */
const LONGEST = 15

/**
 * How many bits each symbol's code has, so that what comes often is short (Huffman 1952); 0 for a symbol that does not come.
 * Where a code would be too long, differences between rare symbols are made smaller until none is.
 */
export function codeLengths(counts: Uint32Array): Uint8Array {
  let weights = counts
  for (;;) {
    const lengths = lengthsFor(weights)
    if (lengths.every(length => length <= LONGEST)) return lengths
    weights = weights.map(weight => (weight === 0 ? 0 : (weight >> 1) + 1))
  }
}

function lengthsFor(weights: Uint32Array): Uint8Array {
  const lengths = new Uint8Array(weights.length)
  const symbols = [...weights.keys()].filter(symbol => weights[symbol]! > 0)
  symbols.sort((a, b) => weights[a]! - weights[b]! || a - b)
  const leaves = symbols.length
  // The leaves by weight, and after them what is joined: each the two lightest, so they come by weight too.
  const weight = symbols.map(symbol => weights[symbol]!)
  const parent: number[] = []
  let [leaf, joined] = [0, leaves]
  const lightest = (): number =>
    leaf < leaves && (joined >= weight.length || weight[leaf]! <= weight[joined]!) ? leaf++ : joined++
  while (weight.length < 2 * leaves - 1) {
    const [a, b] = [lightest(), lightest()]
    parent[a] = parent[b] = weight.length
    weight.push(weight[a]! + weight[b]!)
  }
  const depth: number[] = []
  for (let node = weight.length - 1; node >= 0; node--)
    depth[node] = parent[node] === undefined ? 0 : depth[parent[node]!]! + 1
  for (const [index, symbol] of symbols.entries()) lengths[symbol] = Math.max(1, depth[index]!)
  return lengths
}

/** The codes of these lengths, as deflate numbers them (RFC 1951, §3.2.2), each with its first bit lowest. */
export function codesOf(lengths: Uint8Array): Uint16Array {
  const codes = new Uint16Array(lengths.length)
  let code = 0
  for (let length = 1; length <= LONGEST; length++) {
    for (let symbol = 0; symbol < lengths.length; symbol++)
      if (lengths[symbol] === length) codes[symbol] = turned(code++, length)
    code <<= 1
  }
  return codes
}

function turned(code: number, length: number): number {
  let result = 0
  for (let bit = 0; bit < length; bit++) result |= ((code >> bit) & 1) << (length - 1 - bit)
  return result
}
