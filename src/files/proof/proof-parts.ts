import { drawnSheet, type PrintedItem, type PrintedSheet } from '../printed-plan.js'
import { asOneOutline, countLines, linePlace, withLinesInPlace } from './lines-in-place.js'
import { type ProofSection, proofSection, type SectionText } from './proof-section.js'
import { sharedOutlines } from './shared-outlines.js'
import { type SpooledText, textSpool } from './text-spool.js'

/** What of a proof page belongs to its items, and is taken over where an item is not made anew. */
export interface ProofParts {
  /** Each item's section, by the item's name. */
  readonly sections: ReadonlyMap<string, SectionText>
  /** Outlines that the sections refer to, by their ids. */
  readonly definitions: ReadonlyMap<string, SpooledText>
}

/** The parts of a page whose sheets come one after another. */
export interface ProofDrawing {
  /** Begins an item, whose sheets are then added to it. */
  readonly begin: (item: PrintedItem<PrintedSheet>) => Pick<ProofSection, 'add'>
  /** After the last sheet of the last item. */
  readonly parts: () => ProofParts
}

export function drawProof(): ProofDrawing {
  const outlines = sharedOutlines()
  const spool = textSpool()
  const sections = new Map<string, ProofSection>()
  return {
    begin: item => {
      const section = proofSection(item, outlines.artMarkup, spool)
      sections.set(item.name, section)
      return section
    },
    parts: () => ({
      sections: new Map([...sections].map(([name, section]) => [name, section.text()])),
      definitions: outlines.definitions(),
    }),
  }
}

export function proofParts(items: readonly PrintedItem<PrintedSheet>[]): ProofParts {
  const drawing = drawProof()
  for (const item of items) {
    const section = drawing.begin(item)
    for (const sheet of item.sheets) section.add(drawnSheet(sheet))
  }
  return drawing.parts()
}

/** Where both have a section, the later one stands. */
export function joinedParts(kept: ProofParts, made: ProofParts): ProofParts {
  return {
    sections: new Map([...kept.sections, ...made.sections]),
    definitions: new Map([...kept.definitions, ...made.definitions]),
  }
}

/** What the rest of the page has to have for its sections. */
export interface PageNeeds {
  /** The definitions that they refer to, and those that these refer to, each once, in order of first use. */
  readonly definitions: readonly (() => string)[]
  /** A text of theirs with its lines as the page has them. */
  readonly placed: (text: SpooledText) => string
  /** `215.9x279.4` for every size of paper that stands in them. */
  readonly paperSizes: readonly string[]
}

/** What a page says is gone through for what it needs, and written: of a week's page what is made for the one is held for the other. */
const MOST_HELD = 2 ** 22

export function needsOf(
  sections: readonly SectionText[],
  definitions: ReadonlyMap<string, SpooledText>,
): PageNeeds {
  const used = new Map<string, () => string>()
  const sizes = new Set<string>()
  const definitionOf = (id: string) => definitions.get(id)?.read()
  const uses = countLines(readEach(sections))
  const held = new Map<SpooledText, string>()
  let heldLength = 0
  const placed = (text: SpooledText): string => {
    const before = held.get(text)
    if (before !== undefined) return before
    const now = withLinesInPlace(text.read(), uses, definitionOf)
    heldLength += now.length
    if (heldLength < MOST_HELD) held.set(text, now)
    return now
  }
  const add = (markup: string): void => {
    for (const [, id] of markup.matchAll(/<use href="#([gl][\w-]{6,})"/g)) {
      const definition = definitions.get(id!)
      if (definition === undefined || used.has(id!)) continue
      const isOften = id!.startsWith('l') && linePlace(uses.get(id!) ?? 0) === 'one outline'
      const read = () => (isOften ? asOneOutline(definition.read(), definitionOf) : definition.read())
      used.set(id!, read)
      // A word's outline refers to nothing.
      if (id!.startsWith('l')) add(read())
    }
  }
  for (const text of sections.flat()) {
    const markup = placed(text)
    add(markup)
    for (const [, size] of markup.matchAll(/ data-paper="([\d.]+x[\d.]+)"/g)) sizes.add(size!)
  }
  return { definitions: [...used.values()], paperSizes: [...sizes], placed }
}

/** One at a time, so that no more is held. */
function* readEach(sections: readonly SectionText[]): Generator<string, void> {
  for (const text of sections.flat()) yield text.read()
}
