import { describe, expect, it } from 'vitest'
import { promptsWith } from '../../../src/sets/games/prompt.js'
import { wordByHand } from '../words-by-hand.js'

const met = new Set(['fished', 'fishing'])
const promptOf = promptsWith(text => met.has(text))

describe('what stands for a word on another card', () => {
  const fish = wordByHand({ text: 'fish', sounds: 'f:F i:IH sh:SH', partsOfSpeech: ['noun', 'verb'] })
  const gull = wordByHand({ text: 'gull', sounds: 'g:G u:AH ll:L', partsOfSpeech: ['noun', 'verb'] })
  const wade = wordByHand({ text: 'wade', sounds: 'w:W a:EY d:D e:', partsOfSpeech: ['verb', 'noun'] })

  it('is a form of a verb that is a noun first only where the form is met in books', () => {
    expect([fish, gull].map(word => promptOf(word, 'past form'))).toEqual(['fished', undefined])
    expect([fish, gull].map(word => promptOf(word, 'ing form'))).toEqual(['fishing', undefined])
  })

  it('is any form of a word that is a verb first', () => {
    expect(promptOf(wade, 'past form')).toBe('waded')
  })

  it('says one sound and several', () => {
    const eye = wordByHand({ text: 'eye', sounds: 'eye:AY' })
    expect([eye, fish].map(word => promptOf(word, 'sounds'))).toEqual(['1 sound', '3 sounds'])
  })
})
