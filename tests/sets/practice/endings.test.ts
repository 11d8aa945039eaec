import { describe, expect, it } from 'vitest'
import { endingPractice } from '../../../src/sets/practice/endings.js'
import { formsOf } from '../../../src/words/endings/forms.js'
import { offeredTexts, openOfferedWords } from '../../../src/words/find/offered-file.js'
import { installedLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studied } from './word-of-lexicon.js'

const practise = (...words: readonly string[]) =>
  endingPractice({
    words: words.map(studied),
    study: studied,
    lexicon: installedLexicon(),
    isOffered: text => offeredTexts().has(text),
  })
const answersOf = (...words: readonly string[]) =>
  practise(...words).items.map(({ prompt, answer, rule }) => `${prompt} = ${answer} (${rule})`)

describe('practice of endings', () => {
  it('asks for forms of every rule: just add, double, drop, change', () => {
    expect(answersOf('hop').toSorted()).toEqual([
      'hop + ed = hopped (double the last letter)',
      'hop + ing = hopping (double the last letter)',
      'hop + s = hops (just add the ending)',
    ])
    expect(answersOf('bake')).toContain('bake + ing = baking (drop the e)')
    expect(answersOf('carry')).toContain('carry + ed = carried (y to i)')
    expect(answersOf('happy')).toContain('happy + est = happiest (y to i)')
    expect(answersOf('lie')).toContain('lie + ing = lying (ie to y)')
    expect(answersOf('panic')).toContain('panic + ed = panicked (add k)')
    expect(answersOf('marsh')).toEqual(['marsh + s = marshes (add es)'])
  })

  it.each(['run', 'think', 'go'])('asks for no past of %s, which is none in -ed', verb => {
    expect(practise(verb).items.filter(({ prompt }) => prompt.endsWith('+ ed'))).toEqual([])
  })

  it.each(['travel', 'signal', 'label'])('asks for no -ing of %s, which has it in two spellings', verb => {
    expect(practise(verb).items.filter(({ prompt }) => prompt.endsWith('+ ing'))).toEqual([])
  })

  it('asks for no -s of leaf, which is leaves or leafs', () => {
    expect(practise('leaf')).toEqual({
      items: [],
      leftOut: [
        {
          word: 'leaf',
          why: 'no ending joins it by one of the rules, in one spelling, to a word that children meet',
        },
      ],
    })
  })

  it('compares adjectives whose forms are seldom printed: those that are heard, and those made with -y', () => {
    expect(answersOf('neat')).toContain('neat + er = neater (just add the ending)')
    expect(answersOf('sunny')).toContain('sunny + er = sunnier (y to i)')
    expect(answersOf('muddy', 'stormy')).toEqual(
      expect.arrayContaining(['muddy + est = muddiest (y to i)', 'stormy + er = stormier (y to i)']),
    )
    expect(answersOf('awry', 'nearby')).toEqual([])
  })

  it('asks of a word with its ending for that word', () => {
    expect(answersOf('hopping', 'baked', 'carries', 'happiest', 'jumped')).toEqual([
      'jump + ed = jumped (just add the ending)',
      'hop + ing = hopping (double the last letter)',
      'bake + ed = baked (drop the e)',
      'carry + s = carries (y to i)',
      'happy + est = happiest (y to i)',
    ])
  })

  it('asks for a word of the list once, where its base is on the list too', () => {
    const prompts = practise('hop', 'hopping').items.map(({ prompt }) => prompt)
    expect(prompts.toSorted()).toEqual(['hop + ed', 'hop + ing', 'hop + s'])
  })

  it('leaves a guess out', () => {
    expect(practise('zorp').leftOut).toEqual([{ word: 'zorp', why: 'what we know of it is a guess' }])
  })

  it('takes one form of each word of a long list, and further ones of a short list up to twelve', () => {
    const long = 'hop bake carry jump play stop smile try swim walk rain shout clap'.split(' ')
    expect(practise(...long).items).toHaveLength(13)
    expect(practise(...long.slice(0, 5)).items).toHaveLength(12)
  })

  it('gives for every word that find offers only forms that the analysis has', () => {
    const lexicon = installedLexicon()
    const sample = openOfferedWords().filter((_, index) => index % 20 === 0)
    const wrong = sample.flatMap(({ text }) => {
      return practise(text).items.filter(({ word, answer }) => {
        const forms = [...formsOf(word, lexicon).map(({ form }) => form), word.plural?.form]
        return !forms.includes(answer)
      })
    })
    expect(wrong).toEqual([])
  })
})
