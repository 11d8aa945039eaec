import type { Plural } from '../word.js'
import { alreadyPlural } from './already-plural.js'
import { irregularPlurals, pluralsInTwoSpellings } from './irregular-plurals.js'
import { inTheCaseOf } from './letter-case.js'
import { endsLikeFToV, isInGroup } from './plural-groups.js'
import type { PluralQuestion } from './plural-question.js'

/** The plural with its rule in plain words; null when the word is no noun. */
export function pluralOf(question: PluralQuestion): Plural | null {
  if (!question.partsOfSpeech.includes('noun')) return null
  const lower = question.text.toLowerCase()
  if (question.guessed && isIngForm(lower)) return null
  const plural = wholeWord(lower, question) ?? lastPart(lower, question)
  const form = inTheCaseOf(question.text, plural.form)
  if (plural.alternatives === undefined) return { form, rule: plural.rule }
  return {
    form,
    rule: plural.rule,
    alternatives: plural.alternatives.map(other => inTheCaseOf(question.text, other)),
  }
}

function wholeWord(word: string, question: PluralQuestion): Plural | null {
  if (word.length === 1) return { form: `${word}'s`, rule: 'a letter: add an apostrophe and s' }
  if (isInGroup(word, 'always plural')) return { form: word, rule: 'always plural: stays the same' }
  if (isInGroup(word, 'not counted') || isDoing(word, question) || isFeltOrSeen(word))
    return { form: word, rule: 'not counted: stays the same' }
  return irregular(word) ?? illness(word) ?? headFirst(word) ?? alreadyPlural(word, question)
}

/** What one does (running, eating) is not counted; what comes of it (a reading, a drawing) is. */
function isDoing(word: string, { partsOfSpeech }: PluralQuestion): boolean {
  const isVerb = partsOfSpeech[0] !== 'noun' && partsOfSpeech.includes('verb')
  return isIngForm(word) && isVerb && !isInGroup(word, 'counted doing')
}

/** A base with a vowel and -ing: blorfing; not sting, not nose-ring. */
function isIngForm(word: string): boolean {
  return /[aeiouy].*ing$/.test(word.slice(word.lastIndexOf('-') + 1))
}

/** Goodness, sadness, but two illnesses. */
function isFeltOrSeen(word: string): boolean {
  return /.{3}ness$/.test(word) && !isInGroup(word, 'counted in ness')
}

/** Laryngitis, psoriasis: what one has is not counted, unlike the oases and crises of the table. */
function illness(word: string): Plural | null {
  return /.{3}(?:itis|sis)$/.test(word) ? { form: word, rule: 'not counted: stays the same' } : null
}

function irregular(word: string): Plural | null {
  const found = irregularPlurals().get(word)
  if (found === undefined) return null
  const [form = word, ...alternatives] = found.forms
  if (alternatives.length === 0) return { form, rule: found.kind }
  const rule = found.kind === 'irregular ending' ? 'two forms in use' : found.kind
  return { form, rule, alternatives }
}

/** mother-in-law, man-of-war, passer-by: the first word takes the ending. */
function headFirst(word: string): Plural | null {
  const found = /^([a-z]+)(-(?:in|of|at)-.+|-by|-on)$/.exec(word) ?? /^(runner)(-up)$/.exec(word)
  if (!found) return null
  const [, head = '', rest = ''] = found
  const plural = lastPart(head, { text: head, partsOfSpeech: ['noun'] })
  return { form: plural.form + rest, rule: `first word changes: ${plural.rule}` }
}

/** The rules proper, on a single word or on the last part of a hyphenated one. */
function lastPart(word: string, question: PluralQuestion): Plural {
  const cut = word.lastIndexOf('-') + 1
  if (cut > 0) {
    const last = lastPart(word.slice(cut), question)
    const before = word.slice(0, cut)
    return last.alternatives === undefined
      ? { form: before + last.form, rule: last.rule }
      : {
          form: before + last.form,
          rule: last.rule,
          alternatives: last.alternatives.map(other => before + other),
        }
  }
  return (
    irregular(word) ??
    compoundOfIrregular(word) ??
    inTwoSpellings(word) ??
    endingF(word) ??
    endingO(word) ??
    endingY(word, question) ??
    endingHiss(word, question) ?? { form: `${word}s`, rule: 'add s' }
  )
}

function compoundOfIrregular(word: string): Plural | null {
  if (word.endsWith('man') && !isInGroup(word, 'man adds s'))
    return { form: `${word.slice(0, -3)}men`, rule: 'changes inside' }
  if (word.endsWith('child')) return { form: `${word}ren`, rule: 'irregular ending' }
  if (/.person$/.test(word)) {
    const start = word.slice(0, -6)
    return { form: `${start}people`, rule: 'two forms in use', alternatives: [`${start}persons`] }
  }
  if (/.foot$/.test(word)) return { form: `${word.slice(0, -4)}feet`, rule: 'changes inside' }
  if (/.tooth$/.test(word)) return { form: `${word.slice(0, -5)}teeth`, rule: 'changes inside' }
  if (/.fish$/.test(word)) return { form: word, rule: 'stays the same', alternatives: [`${word}es`] }
  return null
}

function inTwoSpellings(word: string): Plural | null {
  const [form, ...alternatives] = pluralsInTwoSpellings().get(word) ?? []
  return form === undefined ? null : { form, rule: 'two forms in use', alternatives }
}

function endingF(word: string): Plural | null {
  if (isInGroup(word, 'keeps its f') || !endsLikeFToV(word)) return null
  return word.endsWith('fe')
    ? { form: `${word.slice(0, -2)}ves`, rule: 'fe to ve, add s' }
    : { form: `${word.slice(0, -1)}ves`, rule: 'f to v, add es' }
}

function endingO(word: string): Plural | null {
  return isInGroup(word, 'o adds es') ? { form: `${word}es`, rule: 'ends in o: add es' } : null
}

function endingY(word: string, { properName }: PluralQuestion): Plural | null {
  if (!/(?:[^aeiou]|qu)y$/.test(word)) return null
  if (properName) return { form: `${word}s`, rule: 'a name keeps its y: add s' }
  return { form: `${word.slice(0, -1)}ies`, rule: 'y to i, add es' }
}

function endingHiss(word: string, { pronunciation }: PluralQuestion): Plural | null {
  if (/(?:^|[^aeiou])(?:qu)?[aeiou]z$/.test(word) && word.length < 6 && word !== 'topaz')
    return { form: `${word}zes`, rule: 'double the z, add es' }
  if (!/(?:ch|sh|s|x|z)$/.test(word)) return null
  if (word.endsWith('ch') && endsInK(word, pronunciation))
    return { form: `${word}s`, rule: 'ch says k: add s' }
  if (word === 'bus' || word === 'gas')
    return { form: `${word}es`, rule: 'add es after ch, sh, s, x, z', alternatives: [`${word}ses`] }
  return { form: `${word}es`, rule: 'add es after ch, sh, s, x, z' }
}

function endsInK(word: string, pronunciation: string | undefined): boolean {
  return pronunciation === undefined ? isInGroup(word, 'ch says k') : /\bK$/.test(pronunciation.trim())
}
