/** Shapes in an SVG picture that stand for others (`<use>`), which may stand for others in turn. */

interface Named {
  elements: number
  readonly uses: string[]
}

const tag = /<(\/?)([a-z][\w:.-]*)((?:"[^"]*"|'[^']*'|[^>"'])*?)(\/?)>/gi

/** A chain of uses longer than this is no drawing's. */
const deepest = 500

/**
 * How many elements are drawn when each `<use>` is followed; one that uses itself is followed once. Beyond `most` it is
 * not counted on.
 */
export function drawnElements(svg: string, most: number): number {
  const whole: Named = { elements: 0, uses: [] }
  const byId = new Map<string, Named>()
  const open: (Named | undefined)[] = []
  for (const [, closing, name = '', attributes = '', alone] of svg.matchAll(tag)) {
    if (closing === '/') {
      open.pop()
      continue
    }
    if (whole.elements > most) return whole.elements
    const id = /\bid\s*=\s*["']([^"']*)["']/.exec(attributes)?.[1]
    const named: Named | undefined = id === undefined ? undefined : { elements: 0, uses: [] }
    if (id !== undefined && named !== undefined) byId.set(id, named)
    const used = name === 'use' ? /\bhref\s*=\s*["']#([^"']*)["']/.exec(attributes)?.[1] : undefined
    for (const around of [whole, ...open, named]) {
      if (around === undefined) continue
      around.elements += 1
      if (used !== undefined) around.uses.push(used)
    }
    if (alone !== '/') open.push(named)
  }
  const counted = new Map<Named, number>()
  const count = (each: Named, depth: number): number => {
    const known = counted.get(each)
    if (known !== undefined) return known
    if (depth > deepest) return most + 1
    counted.set(each, 0)
    let sum = each.elements
    for (const id of each.uses) {
      const used = byId.get(id)
      if (used !== undefined) sum += count(used, depth + 1)
    }
    counted.set(each, sum)
    return sum
  }
  return count(whole, 0)
}
