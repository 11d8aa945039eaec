import { lazily } from '../../lazily.js'
import { rowsOf, wordsOf } from '../tables/installed-tables.js'
import { join } from './adding.js'
import { inTheCaseOf } from './letter-case.js'
import { type BuiltForm, ruleBefore } from './verb-endings.js'

const irregular = lazily(
  () =>
    new Map(
      rowsOf('endings/irregular-comparing').map(([word = '', er = '', est = '']) => [word, { er, est }]),
    ),
)
const comparedWithEr = lazily(() => new Set(wordsOf('endings/compared-with-er')))

export interface AdjectiveQuestion {
  readonly text: string
  /** ARPABET with stress; tells one syllable from several. */
  readonly pronunciation?: string
}

/** bigger, happier; null where English says `more` instead (more careful). */
export function comparativeOf(question: AdjectiveQuestion): BuiltForm | null {
  return compared(question, 'er')
}

/** biggest, happiest; null where English says `most` instead. */
export function superlativeOf(question: AdjectiveQuestion): BuiltForm | null {
  return compared(question, 'est')
}

function compared({ text, pronunciation }: AdjectiveQuestion, ending: 'er' | 'est'): BuiltForm | null {
  const base = text.toLowerCase()
  const special = irregular().get(base)
  if (special) return { form: inTheCaseOf(text, special[ending]), rule: 'irregular ending' }
  if (!takesAnEnding(base, pronunciation)) return null
  const joined = join(base, ending, pronunciation)
  return { form: inTheCaseOf(text, joined.form), rule: `${ruleBefore(joined.rule)}add ${ending}` }
}

/** One syllable, or two of which the last is -y, -le, -ow, -er; not -ful, -less, -ed, -ing (common practice, no source). */
function takesAnEnding(base: string, pronunciation: string | undefined): boolean {
  if (/(?:ful|less|ous|ing|ish|ive|al)$/.test(base) && base.length > 5) return false
  const syllables =
    pronunciation?.match(/\d/g)?.length ?? base.match(/[aeiouy]+(?=[^aeiouy]|$)(?!e$)/g)?.length ?? 1
  if (syllables <= 1) return true
  return syllables === 2 && (/(?:[^aeiou]y|ey|le|ow|er)$/.test(base) || comparedWithEr().has(base))
}
