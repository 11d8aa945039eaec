import { errorAt } from '../problems.js'
import { parseColor } from './colors.js'
import { misfit, type Reader } from './entry.js'
import { fail, succeed } from './outcomes.js'
import type { Contrast } from './plan.js'

const form = 'Write black on white, white on black, or a colour in quotes: "black on #fff6d5".'

/** `black on white`: ink, then ground. */
export const readContrast: Reader<Contrast> = entry => {
  if (entry.kind !== 'text') return misfit(entry, 'two colours', form)
  const { text, place, comment } = entry
  const [ink, ground, ...more] = text.split(/\s+on\s+/i).map(parseColor)
  if (ink && ground && more.length === 0) {
    if (ink !== ground) return succeed({ ink, ground })
    return fail(errorAt(place, `"${text}" shows nothing`, 'Choose two colours that are far apart.'))
  }
  // YAML takes ` #fff6d5` for a comment, and leaves `black on`.
  const unquoted = comment && /\son$/i.test(text)
  const advice = unquoted ? `A # begins a note; put it in quotes: "${text} #${comment.trim()}".` : form
  return fail(errorAt(place, `"${text}" is not one colour on another`, advice))
}
