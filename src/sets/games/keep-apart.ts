/** A random order in which certain cards do not lie side by side. */
import { type Generator, shuffle } from '../random.js'

/**
 * The same items in seeded order, with as few neighbours that `belong` together as the search finds; none, wherever
 * four items or more form pairs.
 */
export function shuffleApart<T>(
  items: readonly T[],
  belong: (a: T, b: T) => boolean,
  generator: Generator,
): T[] {
  const close = (order: readonly T[]): number =>
    order.filter((item, index) => {
      const next = order[index + 1]
      return next !== undefined && (belong(item, next) || belong(next, item))
    }).length
  let order = shuffle(items, generator)
  let touching = close(order)
  for (let step = 0; step < 60 * items.length && touching > 0; step++) {
    const [a, b] = [generator.below(order.length), generator.below(order.length)]
    const changed = [...order]
    changed[a] = order[b]!
    changed[b] = order[a]!
    const stillTouching = close(changed)
    if (stillTouching <= touching) [order, touching] = [changed, stillTouching]
  }
  return order
}
