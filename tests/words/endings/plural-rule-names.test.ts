import { describe, expect, it } from 'vitest'
import {
  followsPluralRule,
  pluralRuleName,
  pluralRuleNames,
} from '../../../src/words/endings/plural-rule-names.js'
import { openLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'

const lexicon = openLexicon()

function ruleOf(text: string): string {
  const word = studyWord({ text, place: { file: 'plan.yaml' }, overrides: {} }, lexicon)
  if (!word.ok || word.value.plural === null) throw new Error(`${text} has no plural`)
  return word.value.plural.rule
}

describe('a rule for plurals, as a plan names it', () => {
  it.each([
    ['add s', ['reed', 'stomach', 'snake']],
    ['add es', ['marsh', 'finch', 'box', 'potato']],
    ['y to i', ['berry']],
    ['f to v', ['leaf', 'knife']],
    ['double the z', ['quiz']],
    ['changes inside', ['goose', 'foot']],
    ['irregular ending', ['child']],
    ['stays the same', ['sheep']],
    ['always plural', ['scissors']],
    ['not counted', ['mud']],
  ])('%s: %o', (name, words) => {
    expect(pluralRuleNames).toContain(name)
    for (const word of words) {
      const rule = ruleOf(word)
      const following = pluralRuleNames.filter(other => followsPluralRule(rule, other))
      expect(following).toContain(name)
      // By what is done to the word, and by the whole rule, and by no other.
      expect(new Set(following)).toEqual(new Set([name, rule]))
    }
  })
})

describe('the short name of a rule', () => {
  it('is one for leaf and knife, and the rule itself where it has none', () => {
    expect([ruleOf('leaf'), ruleOf('knife')].map(pluralRuleName)).toEqual(['f to v', 'f to v'])
    expect(pluralRuleName('a rule of her own')).toBe('a rule of her own')
  })
})
