/** The teacher's own division of a word into sounds or syllables. */

import { fail, succeed, together } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import { type Entry, misfit } from '../yaml/entry.js'
import { lettersOf, straightened } from './word-text.js'

/** Between parts: spaces, middle dots and bullets, upright lines, slashes; hyphens where the word has none. */
const dividers = /[\s\u00B7\u2022\u2027|/]+/
const dividersAndHyphens = /[\s\u00B7\u2022\u2027|/-]+/

const kinds = {
  sounds: { key: 'sounds', example: 'Divide the letters by spaces, every letter once: sounds: m ar sh.' },
  syllables: {
    key: 'syllables',
    example: 'Divide the word by spaces, every letter once: syllables: mar ket.',
  },
} as const

/** The parts of `word`; an error where their letters do not add up to it. */
export function readDivision(
  key: keyof typeof kinds,
  entry: Entry,
  word: string,
): Outcome<readonly string[]> {
  const { example } = kinds[key]
  const typed = partsOf(entry, word, example)
  if (!typed.ok) return typed
  const parts = typed.value.map(straightened).filter(part => part !== '')
  const spelled = key === 'sounds' ? unfolded(parts) : parts.join('')
  if (spelled !== null && lettersOf(spelled) === lettersOf(word)) return succeed(parts)
  const found = spelled === null ? '' : `, but to "${lettersOf(spelled)}"`
  return fail(
    errorAt(entry.place, `the ${key} "${parts.join(' ')}" do not add up to "${word}"${found}`, example),
  )
}

function partsOf(entry: Entry, word: string, example: string): Outcome<readonly string[]> {
  if (entry.kind === 'text')
    return succeed(entry.text.split(word.includes('-') ? dividers : dividersAndHyphens))
  if (entry.kind !== 'list') return misfit(entry, 'a division of the word', example)
  return together(
    entry.items.map(item => (item.kind === 'text' ? succeed(item.text) : misfit(item, 'letters', example))),
  )
}

/** `l a_e k` → `lake`: what stands behind the low line comes after the next sound. `null` where nothing comes next. */
function unfolded(parts: readonly string[]): string | null {
  let spelled = ''
  let waiting = ''
  for (const part of parts) {
    const [head = '', tail = '', ...more] = part.split('_')
    if (more.length > 0 || (part.includes('_') && (head === '' || tail === '' || waiting !== ''))) return null
    spelled += head + waiting
    waiting = tail
  }
  return waiting === '' ? spelled : null
}
