/** The keys of things to print as controls of a page: a number with its limits, a choice, yes or no, else a text. */
import { present } from '../outcomes.js'
import { vocabularyOfNames } from '../pipeline/vocabulary-of-names.js'
import { takenInWords } from '../plan/keys/taken-in-words.js'
import type { FormTaken, Takes } from '../plan/keys/takes.js'
import { keysOfPlan } from '../plan/plan-keys.js'
import { weekParts } from '../plan/week/week-parts.js'
import type { Control, ItemControl } from './control.js'

export type { Control, ItemControl }

export interface ItemControls {
  /** Of an item of any layout. */
  readonly ofAll: readonly ItemControl[]
  /** Of its own, by layout. */
  readonly ofLayout: Readonly<Record<string, readonly ItemControl[]>>
  /** Parts of the week's whole set, which `without` names. */
  readonly ofWeek: readonly { readonly name: string; readonly summary: string }[]
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
  const ofWeek = weekParts.map(({ name, title = name.replaceAll('-', ' ') }) => ({ name, summary: title }))
  return { ofAll, ofLayout, ofWeek }
}

function controlFor(takes: Takes): Control {
  switch (takes.kind) {
    case 'number':
      return { takes: 'number', least: takes.least, most: takes.most }
    case 'names':
      return { takes: 'choice', choices: takes.names }
    case 'yes or no':
      return { takes: 'yes or no' }
    case 'form':
      return formControl(takes)
    case 'any of': {
      const [names, pairs] = takes.ways
      // Two of the names are asked for by their names too: a pair that none of them names is left to be written.
      const isChoice =
        names?.kind === 'names' && pairs?.kind === 'form' && pairs.what.startsWith('two of these')
      return isChoice
        ? { takes: 'choice', choices: names.names }
        : { takes: 'text', what: takenInWords(takes) }
    }
    default:
      return { takes: 'text', what: takenInWords(takes) }
  }
}

/** A form says in words what it is; a few of them are better asked for by parts. */
function formControl(takes: FormTaken): Control {
  const grid = /^columns x rows, each from (\d+) to (\d+)$/.exec(takes.what)
  if (grid !== null) return { takes: 'grid', least: Number(grid[1]), most: Number(grid[2]) }
  if (takes.what === 'a length') return { takes: 'length' }
  const numbers = /^\^\(\?:((?:\d+\|?)+)\)\$$/.exec(takes.pattern)?.[1]
  return numbers === undefined
    ? { takes: 'text', what: takenInWords(takes) }
    : { takes: 'choice', choices: numbers.split('|') }
}
