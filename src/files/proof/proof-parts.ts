import type { PrintedItem } from '../printed-plan.js'
import { proofSection } from './proof-section.js'
import { sharedOutlines } from './shared-outlines.js'

/** What of a proof page belongs to its items, and is taken over where an item is not made anew. */
export interface ProofParts {
  /** Each item's section, by the item's name. */
  readonly sections: ReadonlyMap<string, string>
  /** Outlines that the sections refer to, by their ids. */
  readonly definitions: ReadonlyMap<string, string>
}

export function proofParts(items: readonly PrintedItem[]): ProofParts {
  const outlines = sharedOutlines()
  const sections = new Map(items.map(item => [item.name, proofSection(item, outlines.idFor)]))
  return { sections, definitions: outlines.definitions() }
}

/** Where both have a section, the later one stands. */
export function joinedParts(kept: ProofParts, made: ProofParts): ProofParts {
  return {
    sections: new Map([...kept.sections, ...made.sections]),
    definitions: new Map([...kept.definitions, ...made.definitions]),
  }
}

/** The definitions that these sections refer to, and those that these refer to, each once, in order of first use. */
export function definitionsFor(
  sections: readonly string[],
  definitions: ReadonlyMap<string, string>,
): readonly string[] {
  const used = new Map<string, string>()
  const add = (markup: string): void => {
    for (const [, id] of markup.matchAll(/<use href="#([gl][\w-]{6,})"/g)) {
      const definition = definitions.get(id!)
      if (definition === undefined || used.has(id!)) continue
      used.set(id!, definition)
      add(definition)
    }
  }
  for (const section of sections) add(section)
  return [...used.values()]
}
