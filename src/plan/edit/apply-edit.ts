/** Writes a change into a plan's text: its own signs change, every other byte stays. */

import { fail, succeed } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import { addKey, isOnOneLine, removeKey, replaceText, textBehindKey } from './edit-keys.js'
import { beginList, insertIntoList, moveInList, removeFromList } from './edit-list.js'
import { lineBreakOf, type Splice, spliced } from './lines.js'
import { type Located, type LocatedMap, type LocatedPair, located, pairOf, stepInto } from './located.js'
import { dataOf, isSame, meant, planData } from './plan-data.js'
import type { PlanEdit, PlanPath } from './plan-edit.js'
import { inBrackets } from './written.js'

/**
 * The text after the change. It is read back and held against what was meant; where it cannot be written so (what
 * stands there is shared by an anchor, or set in a way that only a person unravels), the text stays and this is told.
 */
export function applyEdit(text: string, edit: PlanEdit): Outcome<string> {
  const body = text.startsWith('\uFEFF') ? text.slice(1) : text
  const root = located(body)
  if (root === undefined) return refuse('the plan cannot be read, so nothing is changed in it')
  const wanted = meant(dataOf(root), edit)
  if (wanted === undefined) return refuse('what was to be changed is not there any more')
  const splices = splicesFor(body, root, edit)
  if (splices === undefined) return refuse('this part is written in a way that cannot be changed here')
  const lineBreak = lineBreakOf(body)
  const written = spliced(
    body,
    splices.map(each => ({ ...each, put: withBreaks(each.put, lineBreak) })),
  )
  if (!isSame(planData(written), wanted))
    return refuse('this part is written in a way that cannot be changed here')
  return succeed(`${text.slice(0, text.length - body.length)}${written}`)
}

function withBreaks(put: string, lineBreak: string): string {
  return put.replaceAll(/\r?\n/g, lineBreak)
}

function refuse(message: string): Outcome<string> {
  return fail(errorAt({ file: '' }, message, 'Change it in the file with an editor.'))
}

function splicesFor(text: string, root: LocatedMap, edit: PlanEdit): readonly Splice[] | undefined {
  switch (edit.kind) {
    case 'set':
      return setAt(text, root, edit)
    case 'remove': {
      const { holder, step } = holderOf(root, edit.path)
      if (holder?.kind === 'list' && typeof step === 'number') return removeFromList(text, holder, step)
      const pair = holder?.kind === 'map' && typeof step === 'string' ? pairOf(holder, step) : undefined
      return holder?.kind === 'map' && pair ? removeKey(text, holder, pair) : undefined
    }
    case 'insert': {
      const { holder, step } = holderOf(root, edit.path)
      if (holder?.kind !== 'map' || typeof step !== 'string') return undefined
      const pair = pairOf(holder, step)
      if (pair === undefined) return addKey(text, holder, step, edit.values, holder === root)
      if (pair.value.kind === 'list') return insertIntoList(text, pair.value, edit.at, edit.values)
      return pair.value.kind === 'text' ? listFromText(text, holder, pair, edit) : undefined
    }
    case 'move': {
      const list = edit.path.reduce<Located | undefined>((node, step) => node && stepInto(node, step), root)
      return list?.kind === 'list' ? moveInList(text, list, edit.from, edit.to) : undefined
    }
  }
}

type Inserting = Extract<PlanEdit, { readonly kind: 'insert' }>

function listFromText(
  text: string,
  holder: LocatedMap,
  pair: LocatedPair,
  { at, values }: Inserting,
): readonly Splice[] | undefined {
  const { value } = pair
  const list = value.kind === 'text' && value.text !== '' ? [value.text].toSpliced(at, 0) : []
  const all = [...list.slice(0, at), ...values, ...list.slice(at)]
  if (!holder.flow) return beginList(text, pair, all)
  return [{ start: pair.colonEnd, end: value.end, put: ` ${inBrackets(all)}` }]
}

type Setting = Extract<PlanEdit, { readonly kind: 'set' }>

function setAt(
  text: string,
  root: LocatedMap,
  { path, value, textAs }: Setting,
): readonly Splice[] | undefined {
  const { holder, step, above } = holderOf(root, path)
  if (holder === undefined || step === undefined) return undefined
  if (holder.kind === 'text' && typeof step === 'string' && textAs !== undefined) {
    const index = path.at(-2)
    const dash = above?.kind === 'list' && typeof index === 'number' ? above.dashes[index] : undefined
    return textBehindKey(text, holder, { textAs, key: step, value, dash })
  }
  const node = stepInto(holder, step)
  if (holder.kind === 'map' && typeof step === 'string' && node === undefined)
    return addKey(text, holder, step, value)
  if (node?.kind === 'text' && isOnOneLine(value)) return replaceText(text, node, value, isInFlow(root, path))
  const isFlow = (node?.kind === 'list' || node?.kind === 'map') && node.flow
  return isFlow && isOnOneLine(value)
    ? [
        {
          start: node.start,
          end: node.end,
          put: typeof value === 'string' && value === '' ? '' : inBrackets(value),
        },
      ]
    : undefined
}

function holderOf(root: LocatedMap, path: PlanPath) {
  const steps = path.slice(0, -1)
  const walk = (upTo: readonly (string | number)[]) =>
    upTo.reduce<Located | undefined>((node, step) => node && stepInto(node, step), root)
  return {
    holder: walk(steps),
    above: steps.length === 0 ? undefined : walk(steps.slice(0, -1)),
    step: path.at(-1),
  }
}

function isInFlow(root: LocatedMap, path: PlanPath): boolean {
  return path.some((_, length) => {
    const node = path
      .slice(0, length)
      .reduce<Located | undefined>((found, step) => found && stepInto(found, step), root)
    return (node?.kind === 'list' || node?.kind === 'map') && node.flow
  })
}
