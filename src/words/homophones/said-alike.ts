/**
 * What a class hears as the same: pronunciations with equal keys. Stress tells words apart (désert, dessért), whether it
 * is secondary does not. The dictionary writes some sounds now one way, now another, and here they are one: tear and
 * tier (IH or IY before r), poor (UH or UW), flower and flour (ER or R after a glide), profit and prophet (a weak IH or
 * AH that does not open the word).
 */
import { isVowelSound, withoutStress } from '../alignment/arpabet.js'

export function keyOf(pronunciation: string): string {
  return pronunciation
    .replaceAll('2', '0')
    .replaceAll(/\bIH(?=\d R\b)/g, 'IY')
    .replaceAll(/\bUH(?=\d R\b)/g, 'UW')
    .replaceAll(/\b(A[YW]\d) ER0\b/g, '$1 R')
    .replaceAll(/(?<= )IH0\b(?! NG| K$)/g, 'AH0')
}

/** Of a class that says r only before a vowel. */
export function keyWithoutR(pronunciation: string): string {
  const sounds = keyOf(pronunciation).split(' ')
  const isSaid = (index: number) => index === 0 || isVowelSound(withoutStress(sounds[index + 1] ?? ''))
  return sounds.filter((sound, index) => sound !== 'R' || isSaid(index)).join(' ')
}

/** Of a class for which cot and caught have one vowel. */
export function keyWhereMerged(pronunciation: string): string {
  return keyOf(pronunciation).replaceAll(/\bAO(?=\d(?! R\b))/g, 'AA')
}
