/** Which keys of a mark go together. */
import { errorAt, type Problem } from '../../problems.js'
import { foldName } from '../values/fold-name.js'
import type { MapEntry } from '../yaml/entry.js'
import { valueAt } from '../yaml/keys.js'
import { wordFeatures } from './word-target.js'

export const markForm =
  'Begin each mark with "- pattern:" and a name, with "- letters:" and the letters, or with "- part of speech:", "- plural:", "- sounds:" or "- syllables:" for whole words.'

export function markRules(map: MapEntry): readonly Problem[] {
  return [...oneTarget(map), ...nothingInside(map), ...onLettersAlone(map)]
}

function oneTarget(map: MapEntry): readonly Problem[] {
  const given = targetKeys.filter(key => valueAt(map, key))
  if (given.length === 1) return []
  if (given.length === 0) return [errorAt(map.place, 'a mark without "pattern" or "letters"', markForm)]
  const [one, other] = given
  return [
    errorAt(
      map.place,
      `a mark with "${one}" and "${other}"`,
      'Give each mark one of the two; for both, make two marks of it.',
    ),
  ]
}

const targetKeys = ['pattern', 'letters', ...wordFeatures]

/** A whole word has no place in itself, and nothing to join or to break. */
function onLettersAlone(map: MapEntry): readonly Problem[] {
  const feature = wordFeatures.find(key => valueAt(map, key))
  if (feature === undefined) return []
  return ['place', 'descenders', 'link'].flatMap(key => {
    const pair = map.pairs.find(each => foldName(each.key) === key)
    if (pair === undefined) return []
    const message = `"${key}" goes with a mark on letters, not on whole words`
    return [errorAt(pair.keyPlace, message, `Take the line out: "${feature}" marks the word as a whole.`)]
  })
}

/** The pattern that stands inside digraph blends too (words/patterns/inside-blends.ts). */
const foundInsideBlends = 'consonant-digraph'

function nothingInside(map: MapEntry): readonly Problem[] {
  const inside = map.pairs.find(({ key }) => foldName(key) === 'inside-blends')
  if (inside === undefined) return []
  const pattern = valueAt(map, 'pattern')
  if (pattern?.kind === 'text' && foldName(pattern.text) === foundInsideBlends) return []
  if (pattern !== undefined) {
    const message = '"inside blends" goes with the pattern consonant-digraph alone'
    const advice = 'Take the line out: only a digraph inside a blend (the sh of shrub) can go unmarked.'
    return [errorAt(inside.keyPlace, message, advice)]
  }
  if (valueAt(map, 'letters') === undefined) return []
  const advice = 'Take the line out: letters are marked wherever they stand, inside a blend too.'
  return [errorAt(inside.keyPlace, '"inside blends" goes with a pattern, not with letters', advice)]
}
