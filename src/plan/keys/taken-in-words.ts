import { inWords } from '../values/in-words.js'
import type { KeysTaken, Takes } from './takes.js'

/** As a part of a sentence: `a whole number from 1 to 20`. */
export function takenInWords(takes: Takes): string {
  switch (takes.kind) {
    case 'text':
      return `a text of up to ${takes.longest} characters`
    case 'number':
      return `a whole number from ${takes.least} to ${takes.most}`
    case 'yes or no':
      return 'yes or no'
    case 'names':
      return takes.list === undefined ? inWords(takes.names) : `${takes.what} of "oaktag list ${takes.list}"`
    case 'form':
      return `${takes.what}, such as ${inWords(takes.samples)}`
    case 'list':
      return takes.alone
        ? `${takenInWords(takes.of)}; or a list of them`
        : `a list, each of them ${takenInWords(takes.of)}`
    case 'keys':
      return keysInWords(takes)
    case 'any of':
      return takes.ways.map(takenInWords).join('; or ')
  }
}

function keysInWords({ keys, layouts }: KeysTaken): string {
  const own = layouts === undefined ? '' : ', and those of its layout'
  return `the keys ${Object.keys(keys()).join(', ')}${own}`
}

/** The names that a value can be, where names are all or a part of what is taken. */
export function valuesOf(takes: Takes): readonly string[] {
  switch (takes.kind) {
    case 'names':
      return takes.names
    case 'yes or no':
      return ['yes', 'no']
    case 'list':
      return valuesOf(takes.of)
    case 'any of':
      return takes.ways.flatMap(valuesOf)
    default:
      return []
  }
}
