/**
 * The names of a set's items in order: the plan's order for those that were made now or are kept from the last
 * set, then what the last set holds beyond the plan, as it stood.
 */
export function mergedItemNames(
  planOrder: readonly string[],
  made: readonly string[],
  kept: readonly string[],
): readonly string[] {
  const present = new Set([...made, ...kept])
  const ordered = [...planOrder, ...made, ...kept].filter(name => present.has(name))
  return [...new Set(ordered)]
}
