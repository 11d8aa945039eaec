/** How much of a week's list are words of earlier weeks. */
import { fail, succeed } from '../../outcomes.js'
import { errorAt } from '../../problems.js'
import { reading } from '../keys/key.js'
import { misfit } from '../yaml/entry.js'

/** Of the words of the whole list, between 0 and 1, with the teacher's own way of writing it. */
export interface Share {
  readonly part: number
  readonly text: string
}

/** One old word to three new ones; our own choice, no source. */
export const usualShare: Share = { part: 1 / 4, text: '1/4' }

const [least, most] = [1 / 20, 3 / 4] as const
const advice = 'Write a part of the whole list from 1/20 to 3/4, such as 1/4 or 25 %.'

export const readShare = reading<Share>(
  {
    kind: 'form',
    what: 'a part of the list',
    samples: ['1/4', '25 %'],
    pattern: String.raw`^\s*(?:\d+\s*/\s*\d+|\d+(?:\.\d+)?\s*%|0?\.\d+)\s*$`,
    plain: ['number'],
  },
  entry => {
    if (entry.kind !== 'text') return misfit(entry, 'a part of the list', advice)
    const part = partOf(entry.text)
    if (part === undefined) return fail(errorAt(entry.place, `"${entry.text}" is no part of a list`, advice))
    if (part < least || part > most)
      return fail(errorAt(entry.place, `a share of ${entry.text} is not taken`, advice))
    return succeed({ part, text: entry.text })
  },
)

function partOf(text: string): number | undefined {
  const [, of, parts] = /^(\d+)\s*\/\s*(\d+)$/.exec(text) ?? []
  if (of !== undefined) return Number(of) / Number(parts)
  const [, percent] = /^(\d+(?:\.\d+)?)\s*%$/.exec(text) ?? []
  if (percent !== undefined) return Number(percent) / 100
  return /^0?\.\d+$/.test(text) ? Number(text) : undefined
}

/** How many old words stand beside so many of the week's own, so that they are the share of all; at least one. */
export function wordsForShare(own: number, { part }: Share): number {
  return own === 0 ? 0 : Math.max(1, Math.round((own * part) / (1 - part)))
}
