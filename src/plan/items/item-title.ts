/** What an item is called where people read it; its `name` is what its files are called. */
import type { PrintItem } from '../plan.js'

type Named = Pick<PrintItem, 'name' | 'givenName'>

/** Within a line: `word cards`, `marked list 2`. A name that she gave stands as she wrote it. */
export function itemInWords({ name, givenName }: Named): string {
  return givenName ?? name.replaceAll('-', ' ')
}

/** As a title: `Word cards`. */
export function itemTitle(item: Named): string {
  const words = itemInWords(item)
  return item.givenName === undefined ? `${words.charAt(0).toUpperCase()}${words.slice(1)}` : words
}
