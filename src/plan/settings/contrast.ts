import { fail, succeed } from '../../outcomes.js'
import { errorAt } from '../../problems.js'
import { reading } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import type { Contrast } from '../plan.js'
import { parseColor } from '../values/colors.js'
import { misfit } from '../yaml/entry.js'

const form =
  'Write black on white, white on black, or a colour in quotes: "black on #fff6d5"; with "stock" at the end where the card itself has that colour.'

/** `black on white`: ink, then ground; `black on ivory stock`: the ground is the card's own colour. */
const contrastTaken: Takes = {
  kind: 'form',
  what: 'one colour on another, "stock" behind it where the card itself has that colour',
  samples: ['white on black', '"black on #fff6d5"', 'black on ivory stock'],
  pattern: String.raw`^\S.*\son\s+\S.*$`,
}

export const readContrast = reading<Contrast>(contrastTaken, entry => {
  if (entry.kind !== 'text') return misfit(entry, 'two colours', form)
  const { text, place, comment } = entry
  const colors = text.replace(/\s+stock$/i, '')
  const stock = colors === text ? {} : ({ stock: true } as const)
  const [ink, ground, ...more] = colors.split(/\s+on\s+/i).map(parseColor)
  if (ink && ground && more.length === 0) {
    if (ink !== ground) return succeed({ ink, ground, ...stock })
    return fail(errorAt(place, `"${text}" shows nothing`, 'Choose two colours that are far apart.'))
  }
  // YAML takes ` #fff6d5` for a comment, and leaves `black on`.
  const unquoted = comment && /\son$/i.test(text)
  const advice = unquoted ? `A # begins a note; put it in quotes: "${text} #${comment.trim()}".` : form
  return fail(errorAt(place, `"${text}" is not one colour on another`, advice))
})
