import { describe, expect, it } from 'vitest'
import { formsOf } from '../../../src/words/endings/forms.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { analysed } from '../gold/gold.js'

const lexicon = openLexicon()
const forms = (text: string) =>
  formsOf(analysed(text), lexicon).map(
    ({ ending, form, alternatives = [], rule }) =>
      `${ending} ${[form, ...alternatives].join(' or ')}: ${rule}`,
  )

describe('the forms that a word takes by an ending', () => {
  it('are -s, -ed and -ing of a verb, each with its rule', () => {
    expect(forms('hop')).toEqual([
      '-s hops: add s',
      '-ed hopped: double the last letter, add ed',
      '-ing hopping: double the last letter, add ing',
    ])
    expect(forms('run')).toContain('-ed ran: changes inside')
  })

  it('are -er and -est of an adjective that is compared so', () => {
    expect(forms('happy')).toEqual(['-er happier: y to i, add er', '-est happiest: y to i, add est'])
    expect(forms('good')).toEqual(['-er better: irregular ending', '-est best: irregular ending'])
  })

  it.each(['next', 'main', 'own', 'daily', 'better', 'worse', 'afraid', 'wooden', 'careful'])(
    'are none of %s',
    word => {
      expect(forms(word)).toEqual([])
    },
  )

  it.each(['jumping', 'ran', 'bigger', 'can', 'was', "can't", "they're", "o'clock", "we'll"])(
    'are none of %s, which is such a form or has none',
    word => {
      expect(forms(word)).toEqual([])
    },
  )
})
