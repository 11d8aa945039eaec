/** The id of an item's part of the proof page. */
export function itemAnchor(name: string): string {
  return `item-${anchor(name)}`
}

/** A name as an id that a link can point to: letters, digits and hyphens stay, the rest becomes `_` and a code. */
export function anchor(name: string): string {
  return name.replace(/[^A-Za-z0-9-]/gu, sign => `_${sign.codePointAt(0)!.toString(16)}_`)
}
