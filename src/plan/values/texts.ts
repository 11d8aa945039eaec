import { fail, succeed } from '../../outcomes.js'
import { directionMarks, errorAt } from '../../problems.js'
import { reading, type ValueReader } from '../keys/key.js'
import { misfit } from '../yaml/entry.js'

/** A text of one line, white space made single, of at most `longest` characters. */
export function textReader(what: string, longest: number): ValueReader<string> {
  const advice = `Write up to ${longest} characters, in quotes where it holds signs such as : or #.`
  return reading({ kind: 'text', longest }, entry => {
    if (entry.kind !== 'text') return misfit(entry, what, advice)
    const text = entry.text.replaceAll(/\s+/g, ' ')
    const length = [...text].length
    if (/\p{Cc}/u.test(text)) return fail(errorAt(entry.place, `${what} holds a control character`, advice))
    if (text.search(directionMarks) >= 0) {
      const unseen = 'Write it anew by hand: signs that cannot be seen came along when it was copied.'
      return fail(errorAt(entry.place, `${what} holds a sign that turns the direction of writing`, unseen))
    }
    if (length <= longest) return succeed(text)
    return fail(errorAt(entry.place, `${what} is ${length} characters long`, advice))
  })
}
