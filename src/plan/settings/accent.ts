import { andThen, succeed } from '../../outcomes.js'
import type { Accent } from '../plan.js'
import { choiceReader } from '../values/names.js'
import { misfit, type Reader } from '../yaml/entry.js'
import { readKeys } from '../yaml/keys.js'

/** General American, as the lexicon has it. */
export const lexiconAccent: Accent = { rhotic: true, cotCaught: 'apart', wh: 'w' }

const named: Readonly<Record<'american' | 'r-less', Accent>> = {
  american: lexiconAccent,
  'r-less': { ...lexiconAccent, rhotic: false },
}

const form =
  'Write american or r-less, or the keys r: sounded or dropped, cot and caught: apart or merged, wh: own or w.'

/** A name, or the features one by one; what is left out is as in the lexicon. */
export const readAccent: Reader<Accent> = entry => {
  if (entry.kind === 'text') {
    const name = choiceReader('an accent', ['american', 'r-less'])(entry)
    return andThen(name, known => succeed(named[known]))
  }
  if (entry.kind !== 'map') return misfit(entry, 'an accent', form)
  const keys = readKeys(entry, {
    what: 'an accent',
    readers: {
      r: choiceReader('a value of "r"', ['sounded', 'dropped']),
      'cot and caught': choiceReader('a value of "cot and caught"', ['apart', 'merged']),
      wh: choiceReader('a value of "wh"', ['own', 'w']),
    },
  })
  return andThen(keys, ({ values }) =>
    succeed({
      rhotic: values.r ? values.r === 'sounded' : lexiconAccent.rhotic,
      cotCaught: values['cot and caught'] ?? lexiconAccent.cotCaught,
      wh: values.wh ?? lexiconAccent.wh,
    }),
  )
}
