/**
 * A browser copies whatever a `<use>` refers to, and all that this refers to, before it draws: a page of lines that refer
 * to words costs it several nodes a word. So a line that stands once on the page stands in its place, one that stands
 * often is one outline, and only the rest refers twice over.
 */

/** What of a line's definition has to be on the page, by how often the line stands there. */
export type LinePlace = 'in its place' | 'refers to its words' | 'one outline'

/** A line that stands as often as this is worth the room that its whole outline takes. */
const OFTEN = 3

export function linePlace(uses: number): LinePlace {
  if (uses === 1) return 'in its place'
  return uses < OFTEN ? 'refers to its words' : 'one outline'
}

/** How often each line stands in these texts of a page. */
export function countLines(texts: Iterable<string>): ReadonlyMap<string, number> {
  const uses = new Map<string, number>()
  for (const text of texts)
    for (const [, id] of text.matchAll(/<use href="#(l[\w-]{6,})"/g)) uses.set(id!, (uses.get(id!) ?? 0) + 1)
  return uses
}

/** Gives the markup of a definition, where it is known. */
type Definitions = (id: string) => string | undefined

/** The text with the lines that stand once on the page written out where they stand. */
export function withLinesInPlace(
  text: string,
  uses: ReadonlyMap<string, number>,
  definitionOf: Definitions,
): string {
  const lineOf = (id: string) =>
    linePlace(uses.get(id) ?? 0) === 'in its place' ? LINE.exec(definitionOf(id) ?? '') : null
  return text
    .replace(LINE_ALONE, (_, place: string, id: string, fill: string) => {
      const line = lineOf(id)
      if (line === null) return `<use href="#${id}" fill="${fill}" transform="${place}"/>`
      return `<g fill="${fill}" transform="${place} ${line[1]}">${line[2]}</g>`
    })
    .replace(LINE_AMONG_OTHERS, (reference, id: string, fill: string) => {
      const line = lineOf(id)
      return line === null ? reference : `<g fill="${fill}" transform="${line[1]}">${line[2]}</g>`
    })
}

/** A reference to a line, alone in a drawing or with other things. */
const LINE_ALONE = /<g transform="([^"]*)"><use href="#(l[\w-]{6,})" fill="([^"]*)"\/><\/g>/g
const LINE_AMONG_OTHERS = /<use href="#(l[\w-]{6,})" fill="([^"]*)"\/>/g
/** The definition of a line: its scale, its words. */
const LINE = /^<g id="l[\w-]+" transform="([^"]*)">(.*)<\/g>$/
const WORD_IN_LINE = /<use href="#(g[\w-]{6,})" x="(-?\d+)" y="(-?\d+)"\/>/g
/** The definition of a word: where its outline begins, and the rest of it, each step from the one before. */
const WORD = /^<path id="g[\w-]+" d="m(-?\d+) ?(-?\d+)([^"]*)"\/>$/

/** The line with the outlines of its words instead of references to them; as it was, if one of them is not known. */
export function asOneOutline(markup: string, definitionOf: Definitions): string {
  const words = LINE.exec(markup)?.[2] ?? ''
  const outlines = [...words.matchAll(WORD_IN_LINE)].map(([, id, x, y]) => {
    const word = WORD.exec(definitionOf(id!) ?? '')
    return word === null
      ? undefined
      : `M${Number(x) + Number(word[1])} ${Number(y) + Number(word[2])}${word[3]}`
  })
  if (outlines.length === 0 || outlines.includes(undefined)) return markup
  return markup.replace(words, `<path d="${outlines.join('')}"/>`)
}
