import { errorAt, type Place, type Problem } from '../problems.js'

/** More than any week has; what is longer is another file, or a slip. */
const mostEntries = {
  words: 10_000,
  'things to print': 500,
  groups: 100,
  marks: 200,
  weeks: 100,
  'earlier weeks': 100,
  'words of earlier weeks': 20_000,
} as const

export function isTooMany(what: keyof typeof mostEntries, count: number): boolean {
  return count > mostEntries[what]
}

/** A list that is longer than can be meant, told at the list. */
export function tooMany(
  what: keyof typeof mostEntries,
  entries: readonly unknown[],
  place: Place,
): readonly Problem[] {
  const most = mostEntries[what]
  if (!isTooMany(what, entries.length)) return []
  return [
    errorAt(
      place,
      `the list has ${entries.length.toLocaleString('en-US')} ${what}`,
      `Up to ${most.toLocaleString('en-US')} are read: divide it, or check that it is the list you mean.`,
    ),
  ]
}
