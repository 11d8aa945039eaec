/**
 * A class's accent over the lexicon's General American. What changes:
 * - r dropped: R goes where no vowel sound follows, so `ar` in marsh is one sound, and the r of fire is silent; ER
 *   stays the one vowel it is. There are fewer phonemes; as taught as many sounds, for a vowel with its r was one.
 * - cot and caught merged: AO becomes AA except before R. Counts stay; findings that tell au and aw from o change.
 * - wh its own: the dictionary's HH W, where wh spelled W. They are two phonemes, as the dictionary writes them, and as taught one sound.
 */
import type { Accent } from '../../plan/plan.js'
import { isVowelSound, withoutStress } from '../alignment/arpabet.js'
import type { Grapheme } from '../word.js'

export interface Spoken {
  readonly graphemes: readonly Grapheme[]
  /** ARPABET with stress, the sounds of the graphemes in order. */
  readonly pronunciation: string
}

/** A sound with its stress, and the grapheme that spells it. */
interface Placed {
  readonly sound: string
  readonly grapheme: number
}

export function inAccent({ graphemes, pronunciation }: Spoken, accent: Accent): Spoken {
  const stressed = pronunciation === '' ? [] : pronunciation.split(' ')
  const placed = graphemes
    .flatMap(({ sounds }, grapheme) => sounds.map(() => grapheme))
    .map((grapheme, index): Placed => ({ sound: stressed[index]!, grapheme }))
  const changes = [
    ...(accent.rhotic ? [] : [withoutFinalR]),
    ...(accent.cotCaught === 'merged' ? [cotAsCaught] : []),
    ...(accent.wh === 'own' ? [whApart(graphemes)] : []),
  ]
  const spoken = changes.reduce((sounds, change) => change(sounds), placed as readonly Placed[])
  return {
    graphemes: graphemes.map((grapheme, index) => ({
      ...grapheme,
      sounds: spoken.filter(each => each.grapheme === index).map(({ sound }) => withoutStress(sound)),
    })),
    pronunciation: spoken.map(({ sound }) => sound).join(' '),
  }
}

function withoutFinalR(sounds: readonly Placed[]): readonly Placed[] {
  return sounds.filter(({ sound }, index) => sound !== 'R' || isVowel(sounds[index + 1]) || index === 0)
}

function cotAsCaught(sounds: readonly Placed[]): readonly Placed[] {
  return sounds.map((placed, index) =>
    placed.sound.startsWith('AO') && sounds[index + 1]?.sound !== 'R'
      ? { ...placed, sound: placed.sound.replace('AO', 'AA') }
      : placed,
  )
}

function whApart(graphemes: readonly Grapheme[]) {
  return (sounds: readonly Placed[]): readonly Placed[] =>
    sounds.flatMap(placed =>
      placed.sound === 'W' && graphemes[placed.grapheme]!.letters.toLowerCase() === 'wh'
        ? [{ ...placed, sound: 'HH' }, placed]
        : [placed],
    )
}

function isVowel(placed: Placed | undefined): boolean {
  return placed !== undefined && isVowelSound(withoutStress(placed.sound))
}
