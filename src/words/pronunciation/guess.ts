/** A pronunciation for letters that no dictionary holds: the likeliest run of graphemes under the joint model. */
import { isVowelSound, withoutStress } from '../alignment/arpabet.js'
import type { Condition } from '../alignment/conditions.js'
import { pairingKey } from '../alignment/grapheme-table.js'
import { learnedTable } from '../alignment/graphemes.js'
import type { Spelling } from '../alignment/spelling.js'
import {
  beginning,
  type Context,
  contextOf,
  costOf,
  ending,
  type JointModel,
  keyOf,
  order,
} from './joint-model.js'

interface Hypothesis {
  readonly cost: number
  /** The newest tokens, as many as the model looks back on. */
  readonly history: readonly number[]
  readonly sounds: readonly string[]
  /** Whether a vowel has taken the main stress; a word has one. */
  readonly stressed: boolean
}

export interface Guesser {
  /** @returns ARPABET with stress, exactly one vowel with the main stress; empty when no letter is English */
  guess(spelling: Pick<Spelling, 'letters' | 'breaks'>): string
}

/** So many hypotheses are followed from each letter on. */
const beamWidth = 12
const longestGrapheme = 5

export function guesserOf(model: JointModel): Guesser {
  const tokensOf = new Map<string, number[]>()
  model.tokens.forEach(({ letters }, id) => {
    if (id > ending) tokensOf.set(letters, [...(tokensOf.get(letters) ?? []), id])
  })
  const conditionOf = new Map<string, Condition>()
  for (const { letters, sounds, mayStand } of learnedTable().pairings) {
    if (mayStand !== undefined) conditionOf.set(pairingKey(letters, sounds), mayStand)
  }
  const conditions = model.tokens.map(({ letters, sounds }) =>
    conditionOf.get(pairingKey(letters, sounds.map(withoutStress))),
  )

  const stresses = model.tokens.map(({ sounds }) => sounds.some(sound => sound.endsWith('1')))

  const nothingBefore = contextOf(model, [])
  const extend = (from: Hypothesis, context: Context, token: number): Hypothesis => ({
    cost: from.cost + costOf(model, context, token),
    history: [...from.history.slice(1), token],
    sounds: [...from.sounds, ...model.tokens[token]!.sounds],
    stressed: from.stressed || stresses[token]!,
  })

  /** For runs of letters that are no spelling: each letter's likeliest sounds. */
  const letterByLetter = (letters: string): readonly string[] =>
    [...letters].flatMap(letter => {
      const sounding = (tokensOf.get(letter) ?? []).filter(token => model.tokens[token]!.sounds.length > 0)
      const likeliest = sounding.toSorted(
        (a, b) => costOf(model, nothingBefore, a) - costOf(model, nothingBefore, b),
      )[0]
      return likeliest === undefined ? [] : model.tokens[likeliest]!.sounds
    })

  return {
    guess({ letters, breaks }) {
      const beams: Hypothesis[][] = Array.from({ length: letters.length + 1 }, () => [])
      beams[0]!.push({
        cost: 0,
        history: new Array<number>(order - 1).fill(beginning),
        sounds: [],
        stressed: false,
      })
      for (let start = 0; start < letters.length; start++) {
        const beam = narrowed(beams[start]!)
        const contexts = beam.map(({ history }) => contextOf(model, history))
        for (let end = start + 1; end <= Math.min(letters.length, start + longestGrapheme); end++) {
          for (const token of tokensOf.get(letters.slice(start, end)) ?? []) {
            const mayStand = conditions[token]
            for (const [index, hypothesis] of beam.entries()) {
              if (hypothesis.stressed && stresses[token]) continue
              if (mayStand !== undefined) {
                const sounds = [...hypothesis.sounds, ...model.tokens[token]!.sounds].map(withoutStress)
                const from = hypothesis.sounds.length
                if (!mayStand({ letters, start, end, sounds, from, to: sounds.length })) continue
              }
              beams[end]!.push(extend(hypothesis, contexts[index]!, token))
            }
          }
          if (breaks.has(end)) break
        }
        // A letter from outside the English alphabet stays without a sound.
        if (!tokensOf.has(letters[start]!)) beams[start + 1]!.push(...beam)
      }
      const ended = narrowed(
        beams[letters.length]!.map(hypothesis =>
          extend(hypothesis, contextOf(model, hypothesis.history), ending),
        ),
      )
      const said = ended.filter(({ sounds }) => sounds.length > 0)
      const best = said.find(hypothesis => hypothesis.stressed) ?? said[0]
      return withMainStress(best?.sounds ?? letterByLetter(letters)).join(' ')
    },
  }
}

/** The likeliest hypotheses, one for each history. */
function narrowed(beam: readonly Hypothesis[]): readonly Hypothesis[] {
  const best = new Map<number, Hypothesis>()
  for (const hypothesis of beam) {
    const name = 2 * keyOf(hypothesis.history) + Number(hypothesis.stressed)
    const rival = best.get(name)
    if (rival === undefined || hypothesis.cost < rival.cost) best.set(name, hypothesis)
  }
  return [...best.values()].sort((a, b) => a.cost - b.cost).slice(0, beamWidth)
}

/** Where no vowel has the main stress, the first with the lesser takes it, or the first of all. */
function withMainStress(sounds: readonly string[]): readonly string[] {
  if (sounds.some(sound => sound.endsWith('1'))) return sounds
  const vowels = sounds.flatMap((sound, index) => (isVowelSound(withoutStress(sound)) ? [index] : []))
  const main = vowels.find(index => sounds[index]!.endsWith('2')) ?? vowels[0]
  return sounds.map((sound, index) => (index === main ? `${withoutStress(sound)}1` : sound))
}
