/** Words that are plurals already, by their spelling and by what the word list has. */
import type { Plural } from '../word.js'
import { pluralsInTwoSpellings, singularOfIrregular } from './irregular-plurals.js'
import { endsLikeFToV, isInGroup } from './plural-groups.js'
import type { PluralQuestion } from './plural-question.js'

/** The word is in lower case. */
export function alreadyPlural(word: string, question: PluralQuestion): Plural | null {
  const one =
    singularOfIrregular().get(word) ?? (/men$/.test(word) ? singularInMen(word, question) : undefined)
  if (one !== undefined) return { form: word, rule: `already plural: one ${one}` }
  return mayBePlural(word, question) ? pluralInS(word, question) : null
}

/** Taxis and menus, of nouns in i and u; not axis, not virus. */
function isOfNounInVowel(word: string, { lookUp }: PluralQuestion): boolean {
  return lookUp?.(word.slice(0, -1))?.partsOfSpeech[0] === 'noun'
}

function singularInMen(word: string, { properName }: PluralQuestion): string | undefined {
  return properName || isInGroup(word, 'one thing in men') ? undefined : `${word.slice(0, -2)}an`
}

function mayBePlural(word: string, question: PluralQuestion): boolean {
  if (question.properName || word.length <= 3 || isInGroup(word, 'one thing in s')) return false
  return /[^sui]s$/.test(word) || (/[ui]s$/.test(word) && isOfNounInVowel(word, question))
}

/**
 * Of the commonest noun that it can be the plural of (cookie, not cooky), though leave is commoner than leaf: it is seldom
 * a noun, and leaf mostly is one; finals and twenties are of none.
 */
function pluralInS(word: string, { lookUp }: PluralQuestion): Plural | null {
  const singulars = possibleSingulars(word)
  if (lookUp === undefined) return { form: word, rule: `already plural: one ${singulars[0]!}` }
  const nouns = singulars
    .map(singular => ({ singular, listed: lookUp(singular) }))
    .filter(({ listed }) => listed?.partsOfSpeech.includes('noun'))
    .sort((first, second) => rank(second) - rank(first))
  if (nouns[0] !== undefined) return { form: word, rule: `already plural: one ${nouns[0].singular}` }
  if (/.{2}ics$/.test(word)) return { form: word, rule: 'not counted: stays the same' }
  const isOfAnother = singulars.some(singular => (lookUp(singular)?.partsOfSpeech.length ?? 0) > 0)
  return isOfAnother ? { form: word, rule: 'always plural: stays the same' } : null
}

interface PossibleSingular {
  readonly singular: string
  readonly listed: ReturnType<NonNullable<PluralQuestion['lookUp']>>
}

function rank({ singular, listed }: PossibleSingular): number {
  const { partsOfSpeech: [part] = [], familiarity = 0 } = listed ?? {}
  return singular.endsWith('ve') && part !== 'noun' ? 0 : familiarity
}

function possibleSingulars(word: string): readonly string[] {
  const found: string[] = []
  const withoutEs = word.endsWith('es') ? word.slice(0, -2) : ''
  if (word.endsWith('ies')) found.push(`${word.slice(0, -3)}y`)
  if (word.endsWith('ves'))
    found.push(...[`${word.slice(0, -3)}f`, `${word.slice(0, -3)}fe`].filter(isInVesList))
  const addsEs = isInGroup(withoutEs, 'o adds es') || pluralsInTwoSpellings().has(withoutEs)
  if (addsEs || /(?:ss|x|zz|sh|ch)$/.test(withoutEs)) found.push(withoutEs)
  found.push(word.slice(0, -1))
  if (/[sz]$/.test(withoutEs)) found.push(withoutEs)
  return found
}

function isInVesList(base: string): boolean {
  return endsLikeFToV(base) || pluralsInTwoSpellings().has(base)
}
