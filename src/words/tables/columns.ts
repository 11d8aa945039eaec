/** The kinds of columns that a table of words may have, and what a field of each must be. */
import { consonants, vowels } from '../alignment/arpabet.js'
import { partsOfSpeech, soundBytes } from '../lexicon/file-format.js'

export interface Column {
  /** As the table's head calls it. */
  readonly name: string
  readonly problemWith: (field: string) => FieldProblem | undefined
  /** By which rows are ordered and told apart, where it is the first column. */
  readonly keyOf: (field: string) => string
}

export interface FieldProblem {
  /** Follows the field in quotes: `is no word in small letters`. */
  readonly what: string
  readonly advice: string
}

type Check = (field: string) => FieldProblem | undefined

interface Kind {
  readonly check: Check
  readonly keyOf?: (field: string) => string
}

const smallWord = /^[a-z]+(?:['-][a-z]+)*'?$/
const anyWord = /^[A-Za-z]+(?:['-][A-Za-z]+)*'?$/

function fits(pattern: RegExp, what: string, advice: string): Check {
  return field => (pattern.test(field) ? undefined : { what, advice })
}

function each(separator: string, check: Check): Check {
  return field => {
    for (const part of field.split(separator)) {
      const problem = check(part)
      if (problem !== undefined)
        return part === field ? problem : { ...problem, what: `: "${part}" ${problem.what}` }
    }
    return undefined
  }
}

const word = fits(smallWord, 'is no word in small letters', "Write letters a to z, with - or ' between them.")
const capitalsKept = fits(anyWord, 'is no word', "Write letters, with - or ' between them.")
const soundSet: ReadonlySet<string> = new Set(soundBytes)

const pronunciation: Check = each(' ', sound =>
  soundSet.has(sound)
    ? undefined
    : {
        what: 'is no sound',
        advice:
          'Write ARPABET with a space between sounds and the stress 0, 1 or 2 behind each vowel: M AA1 R SH.',
      },
)

const plainSoundSet: ReadonlySet<string> = new Set([...consonants, ...vowels])

const plainSounds: Check = field =>
  field === '-' || field.split(' ').every(sound => plainSoundSet.has(sound))
    ? undefined
    : {
        what: 'is no sound, nor several',
        advice:
          'Write ARPABET without stress and with a space between sounds, or - where there is none: K S.',
      }

/** Each division gives the letters of the first; a word may have one for each number of syllables. */
const divisions: Check = field => {
  const written = field.split(' ')
  const [letters] = written.map(lettersOf)
  const other = written.find(division => lettersOf(division) !== letters)
  if (other !== undefined)
    return {
      what: `: "${other}" does not add up to "${letters}"`,
      advice: 'Write each letter of the word once in every division.',
    }
  return written.every(division => /^[A-Za-z]+(?:·[a-z]+)*$/.test(division))
    ? undefined
    : {
        what: 'is no division',
        advice: 'Write letters with · between syllables, and a space between two divisions: ev·ery ev·er·y.',
      }
}

function lettersOf(division: string): string {
  return division.replaceAll(/[·+]/g, '').toLowerCase()
}

const kinds: Readonly<Record<string, Kind>> = {
  word: { check: word },
  words: { check: each(' ', word) },
  'word, capitals kept': { check: capitalsKept },
  'words, capitals kept': { check: each(' ', capitalsKept) },
  'word, or its beginning and *': {
    check: fits(
      /^[a-z]+\*?$/,
      'is no word, nor a beginning with a *',
      'Write letters a to z, and * for any letters that follow.',
    ),
  },
  divisions: { check: divisions, keyOf: field => lettersOf(field.split(' ')[0]!) },
  'word+word': {
    check: fits(
      /^[a-z]+\+[a-z]+$/,
      'is not made of two words',
      'Write the two words with + between them: cup+board.',
    ),
    keyOf: lettersOf,
  },
  pronunciation: { check: pronunciation },
  'sounds without stress, or -': { check: plainSounds },
  number: {
    check: fits(/^\d+(?:\.\d+)?$/, 'is no number', 'Write digits, with a point before parts of one.'),
  },
  'parts of speech': { check: someOf(partsOfSpeech, ', ') },
  text: {
    check: fits(
      /^\S(?:.*\S)?$/,
      'begins or ends with a space, or is empty',
      'Write the text without spaces around it.',
    ),
  },
}

export const columnKinds: readonly string[] = [...Object.keys(kinds), 'one of: …; …', 'some of: …; …']

/** `plurals (words)`; undefined where the kind is not known. */
export function readColumn(written: string): Column | undefined {
  const [, name = '', kindName = ''] = /^([^()]+) \((.+)\)$/.exec(written) ?? []
  const [, list, choices] = /^(one|some) of: (.+)$/.exec(kindName) ?? []
  const kind =
    choices === undefined
      ? kinds[kindName]
      : { check: someOf(choices.split('; '), list === 'one' ? undefined : ', ') }
  if (kind === undefined) return undefined
  return { name, problemWith: kind.check, keyOf: kind.keyOf ?? (field => field.toLowerCase()) }
}

/** One of the choices, or several parted by the separator. */
function someOf(choices: readonly string[], separator: string | undefined): Check {
  const check: Check = field =>
    choices.includes(field)
      ? undefined
      : {
          what: 'is none of those that the column may have',
          advice: `Write ${separator === undefined ? 'one' : 'one or several'} of: ${choices.join(', ')}.`,
        }
  if (separator === undefined) return check
  return field => {
    const parts = field.split(separator)
    if (new Set(parts).size < parts.length)
      return { what: 'says the same twice', advice: 'Leave out one of them.' }
    return each(separator, check)(field)
  }
}
