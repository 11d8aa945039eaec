/** Words that sound like another with a different spelling, in a class's accent. */
import { lazily } from '../../lazily.js'
import type { Accent } from '../../plan/plan.js'
import { readHomophones } from './homophones-file.js'
import type { HomophoneGroup, Where } from './where.js'

const groups = lazily(() => readHomophones())

/** Those that sound the same in General American. */
export function homophoneGroups(): readonly HomophoneGroup[] {
  return groups().filter(({ where }) => holdsIn(where, undefined))
}

const groupsByWord = lazily((): ReadonlyMap<string, readonly HomophoneGroup[]> => {
  const byWord = new Map<string, HomophoneGroup[]>()
  for (const group of groups()) {
    for (const word of group.words) {
      const key = word.toLowerCase()
      const known = byWord.get(key)
      if (known === undefined) byWord.set(key, [group])
      else known.push(group)
    }
  }
  return byWord
})

/** The other spellings of its sound, if there are any. The word is in lower case. */
export function homophonesOf(word: string, accent?: Accent): readonly string[] {
  const others = (groupsByWord().get(word) ?? [])
    .filter(({ where }) => holdsIn(where, accent))
    .flatMap(({ words, where }) => (where === 'wh said as w' ? withinWh(words, word, accent) : words))
    .filter(other => other.toLowerCase() !== word)
  return [...new Set(others)]
}

function holdsIn(where: Where, accent: Accent | undefined): boolean {
  if (where === 'cot and caught merged') return accent?.cotCaught === 'merged'
  if (where === 'merry said as marry') return accent?.rhotic !== false
  if (where === 'r dropped') return accent?.rhotic === false
  return true
}

/** Where wh has its own sound, those with wh sound like one another and the rest like the rest. */
function withinWh(words: readonly string[], word: string, accent: Accent | undefined): readonly string[] {
  if (accent?.wh !== 'own') return words
  return words.filter(other => other.startsWith('wh') === word.startsWith('wh'))
}
