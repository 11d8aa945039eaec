/** The first of the settings that takes the fewest pages; none is tried once one page is enough. */
export function fewestPages<S, P>(settings: readonly S[], set: (setting: S) => readonly P[]): readonly P[] {
  let fewest: readonly P[] | undefined
  for (const setting of settings) {
    if (fewest?.length === 1) break
    const pages = set(setting)
    if (fewest === undefined || pages.length < fewest.length) fewest = pages
  }
  return fewest ?? []
}
