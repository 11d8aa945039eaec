import { rowsOf } from '../tables/installed-tables.js'

/** Words of the trade for what a plan names otherwise, of one kind: each with what to write instead, a sentence. */
export function tradeWords(kind: string): ReadonlyMap<string, string> {
  return new Map(
    rowsOf('trade-words/trade-words').flatMap(([of, said, instead]) =>
      of === kind && said !== undefined && instead !== undefined ? [[said, instead] as const] : [],
    ),
  )
}
