/** The keys of things to print as controls of a page: a number with its limits, a choice, yes or no, else a text. */
import { present } from '../outcomes.js'
import { vocabularyOfNames } from '../pipeline/vocabulary-of-names.js'
import { takenInWords } from '../plan/keys/taken-in-words.js'
import type { Takes } from '../plan/keys/takes.js'
import { keysOfPlan } from '../plan/plan-keys.js'

export type ItemControl = {
  readonly name: string
  /** What it does, a clause that begins small and has no full stop. */
  readonly does: string
  /** What holds where it is left out. */
  readonly usual?: string
  /** A value as it may be written. */
  readonly example: string
} & Control

export type Control =
  | { readonly takes: 'number'; readonly least: number; readonly most: number }
  | { readonly takes: 'choice'; readonly choices: readonly string[] }
  | { readonly takes: 'yes or no' }
  | { readonly takes: 'text'; readonly what: string }

export interface ItemControls {
  /** Of an item of any layout. */
  readonly ofAll: readonly ItemControl[]
  /** Of its own, by layout. */
  readonly ofLayout: Readonly<Record<string, readonly ItemControl[]>>
}

export function itemControls(): ItemControls {
  const ofAll: ItemControl[] = []
  const ofLayout: Record<string, ItemControl[]> = {}
  for (const { name, key, place } of keysOfPlan(vocabularyOfNames())) {
    if (!place.what.startsWith('an item')) continue
    const { does, usual, example } = key.text
    const control: ItemControl = { name, does, example, ...present({ usual }), ...controlFor(key.takes) }
    if (place.layout === undefined) ofAll.push(control)
    else {
      ofLayout[place.layout] ??= []
      ofLayout[place.layout]!.push(control)
    }
  }
  return { ofAll, ofLayout }
}

function controlFor(takes: Takes): Control {
  switch (takes.kind) {
    case 'number':
      return { takes: 'number', least: takes.least, most: takes.most }
    case 'names':
      return { takes: 'choice', choices: takes.names }
    case 'yes or no':
      return { takes: 'yes or no' }
    default:
      return { takes: 'text', what: takenInWords(takes) }
  }
}
