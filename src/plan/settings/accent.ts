import { andThen, succeed } from '../../outcomes.js'
import { key, reading } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import type { Accent } from '../plan.js'
import { choiceReader } from '../values/names.js'
import { misfit } from '../yaml/entry.js'
import { readKeys } from '../yaml/keys.js'

/** General American, as the lexicon has it. */
export const lexiconAccent: Accent = { rhotic: true, cotCaught: 'apart', wh: 'w' }

const named: Readonly<Record<'american' | 'r-less', Accent>> = {
  american: lexiconAccent,
  'r-less': { ...lexiconAccent, rhotic: false },
}

const form =
  'Write american or r-less, or the keys r: sounded or dropped, cot and caught: apart or merged, wh: own or w.'

const accentKeys = {
  r: key('whether r is heard after a vowel (marsh)', choiceReader('a value of "r"', ['sounded', 'dropped']), {
    example: 'dropped',
    usual: 'sounded',
  }),
  'cot and caught': key(
    'whether the two sound alike',
    choiceReader('a value of "cot and caught"', ['apart', 'merged']),
    { example: 'merged', usual: 'apart' },
  ),
  wh: key('whether wh has a sound of its own', choiceReader('a value of "wh"', ['own', 'w']), {
    usual: 'w',
  }),
}

const readName = choiceReader('an accent', ['american', 'r-less'])

const accentTaken: Takes = {
  kind: 'any of',
  ways: [readName.takes, { kind: 'keys', what: 'an accent', keys: () => accentKeys, needed: [] }],
}

/** A name, or the features one by one; what is left out is as in the lexicon. */
export const readAccent = reading<Accent>(accentTaken, entry => {
  if (entry.kind === 'text') {
    const name = readName(entry)
    return andThen(name, known => succeed(named[known]))
  }
  if (entry.kind !== 'map') return misfit(entry, 'an accent', form)
  const keys = readKeys(entry, {
    what: 'an accent',
    readers: accentKeys,
  })
  return andThen(keys, ({ values }) =>
    succeed({
      rhotic: values.r ? values.r === 'sounded' : lexiconAccent.rhotic,
      cotCaught: values['cot and caught'] ?? lexiconAccent.cotCaught,
      wh: values.wh ?? lexiconAccent.wh,
    }),
  )
})
