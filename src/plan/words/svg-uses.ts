/** Shapes in an SVG picture that stand for others (`<use>`), which may stand for others in turn. */

/** An element with a name: what stands in it, itself included, and which of the picture's uses, from one to before another. */
interface Named {
  elements: number
  readonly usesFrom: number
  usesTo: number
}

interface Open {
  readonly named: Named | undefined
  /** How many elements stood before it. */
  readonly before: number
}

const tag = /<(\/?)([a-z][\w:.-]*)((?:"[^"]*"|'[^']*'|[^>"'])*?)(\/?)>/gi

/** A chain of uses longer than this is no drawing's. */
const deepest = 500

/**
 * How many elements are drawn when each `<use>` is followed; one that uses itself is followed once. Beyond `most` it is
 * not counted on.
 */
export function drawnElements(svg: string, most: number): number {
  const byId = new Map<string, Named>()
  const open: Open[] = []
  const uses: string[] = []
  let elements = 0
  const close = (last: Open | undefined): void => {
    if (last?.named === undefined) return
    last.named.elements = elements - last.before
    last.named.usesTo = uses.length
  }
  for (const [, closing, name = '', attributes = '', alone] of svg.matchAll(tag)) {
    if (closing === '/') {
      close(open.pop())
      continue
    }
    if (elements > most) return elements
    const id = /\bid\s*=\s*["']([^"']*)["']/.exec(attributes)?.[1]
    const named: Named | undefined =
      id === undefined ? undefined : { elements: 0, usesFrom: uses.length, usesTo: uses.length }
    if (id !== undefined && named !== undefined) byId.set(id, named)
    const used = name === 'use' ? /\bhref\s*=\s*["']#([^"']*)["']/.exec(attributes)?.[1] : undefined
    const opened: Open = { named, before: elements }
    elements += 1
    if (used !== undefined) uses.push(used)
    if (alone === '/') close(opened)
    else open.push(opened)
  }
  for (const left of open) close(left)
  const whole: Named = { elements, usesFrom: 0, usesTo: uses.length }
  const counted = new Map<Named, number>()
  const count = (each: Named, depth: number): number => {
    const known = counted.get(each)
    if (known !== undefined) return known
    if (depth > deepest) return most + 1
    counted.set(each, 0)
    let sum = each.elements
    for (let index = each.usesFrom; index < each.usesTo; index++) {
      const used = byId.get(uses[index]!)
      if (used !== undefined) sum += count(used, depth + 1)
    }
    counted.set(each, sum)
    return sum
  }
  return count(whole, 0)
}
