import channelsByName from 'color-name'
import { fail, succeed } from '../../outcomes.js'
import { errorAt } from '../../problems.js'
import { reading } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import { misfit } from '../yaml/entry.js'
import { nearestAdvice } from './nearest.js'

const names = new Map(Object.entries(channelsByName))

/** The names of CSS. */
export const colorNames: readonly string[] = [...names.keys()]

/**
 * `#rgb`, `#rrggbb` or a colour name of CSS Color Module Level 4, §6.1 → `#rrggbb` in lower case;
 * `null` where it is none of them.
 */
export function parseColor(text: string): string | null {
  const lower = text.toLowerCase()
  if (/^#[0-9a-f]{6}$/.test(lower)) return lower
  if (/^#[0-9a-f]{3}$/.test(lower)) return lower.replaceAll(/[0-9a-f]/g, '$&$&')
  const channels = names.get(lower.replaceAll(/[\s_-]/g, ''))
  return channels ? `#${channels.map(channel => channel.toString(16).padStart(2, '0')).join('')}` : null
}

const form =
  'Write six hexadecimal digits in quotes, such as "#00618a", or a colour name of CSS, such as teal.'

const colorTaken: Takes = {
  kind: 'form',
  what: 'a colour in quotes, or its name in CSS',
  samples: ['"#00618a"', 'teal'],
  pattern: '^#[0-9a-f]{3}(?:[0-9a-f]{3})?$|^[a-z][a-z _-]*$',
}

export const readColor = reading<string>(colorTaken, entry => {
  if (entry.kind !== 'text') return misfit(entry, 'a colour', form)
  const color = parseColor(entry.text)
  if (color !== null) return succeed(color)
  const advice = /^[a-z ]+$/i.test(entry.text)
    ? nearestAdvice({ name: entry.text, known: colorNames, where: form })
    : form
  return fail(errorAt(entry.place, `"${entry.text}" is no colour`, advice))
})
