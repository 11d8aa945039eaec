import { expect, test } from 'vitest'
import { withKin } from '../../../src/words/fitness/kin.js'

test.each([
  ['hustler', 'hustlers'],
  ['scam', 'scammed'],
  ['kidnap', 'kidnapped'],
  ['burglary', 'burglaries'],
  ['ugly', 'ugliest'],
  ['brutal', 'brutally'],
  ['sin', 'sinful'],
  ['gunman', 'gunmen'],
  ['casualty', 'casualties'],
])('%s passes on what it is with a regular ending: %s', (base, form) =>
  expect(withKin([base]).has(form)).toBe(true),
)

test.each([
  ['seduce', 'seduction'],
  ['addict', 'addiction'],
  ['sadist', 'sadism'],
  ['trauma', 'traumatic'],
])('%s passes it on to what WordNet derives from it: %s', (base, derived) =>
  expect(withKin([base]).has(derived)).toBe(true),
)

test.each([
  ['lover', 'love'],
  ['rob', 'robes'],
  ['wine', 'wind'],
  ['gin', 'ginger'],
  ['stud', 'study'],
  ['shoot', 'shot'],
  ['con', 'cone'],
])('%s passes nothing on to %s', (base, word) => expect(withKin([base]).has(word)).toBe(false))
