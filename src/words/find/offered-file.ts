/**
 * The words that `find` may offer, studied once when oaktag is built: choosing among them all takes no longer than
 * reading this file, however little fits. ASCII; a line a word, the most familiar first: two digits each for sounds (as
 * taught) and syllables, then the text, and parted by tabs familiarity, the stressed grapheme, graphemes (`th:TH r:R e:`), findings
 * (`6:0-3`, the pattern by its number; `~` behind those with a gap, as `a_e`); then what sorts alone ask for: syllables,
 * pronunciation, part of speech, rule of the plural, what findings are made of, `~` for a word said in different ways.
 */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { buildFolder } from '../../installation.js'
import { lazily } from '../../lazily.js'
import { present } from '../../outcomes.js'
import { partsOfSpeech } from '../lexicon/file-format.js'
import { patternNames } from '../patterns/index.js'
import { placeOf } from '../patterns/spelled-sounds.js'
import { noteOfDifferentWays, type SortableFinding, type SortableWord } from '../sortable-word.js'
import type { Grapheme } from '../word.js'
import type { OfferedFinding, OfferedWord } from './offered-word.js'

export const offeredPath = join(buildFolder, 'offered-words.txt')

const mark = 'OAKTAG OFFERED WORDS 2'

/**
 * Those that came with this build: opened once, as far as they were read before.
 * @throws Error with what to do, when the file is missing or made by another version
 */
export const openOfferedWords: () => readonly OfferedWord[] = lazily(() => offeredWordsAt(offeredPath))

/** @throws Error with what to do, when the file is missing or made by another version */
export function offeredWordsAt(path: string): readonly OfferedWord[] {
  if (!existsSync(path))
    throw new Error(`The words to offer are missing (${path}). Run "npm run build" to make them.`)
  return offeredWordsIn(readFileSync(path, 'latin1'))
}

/** The same words, to ask for one of them. */
export const offeredTexts: () => ReadonlySet<string> = lazily(
  () => new Set(openOfferedWords().map(({ text }) => text)),
)

export function offeredWordsIn(text: string): readonly OfferedWord[] {
  const [head, ...lines] = text.split('\n')
  if (head !== mark)
    throw new Error('The words to offer were made by another version. Run "npm run build" to make them anew.')
  return lines.filter(line => line !== '').map(line => new OfferedLine(line))
}

export function writeOfferedWords(words: readonly OfferedWord[]): string {
  return `${[mark, ...words.map(writeLine)].join('\n')}\n`
}

const patternNumbers = new Map(patternNames.map((name, index) => [name, index]))

function writeLine({ findings, graphemes, ...word }: OfferedWord): string {
  const spelled = graphemes.map(({ letters, sounds }) => `${letters}:${sounds.join('+')}`)
  const found = findings.map(
    ({ pattern, letters, start, end }) =>
      `${patternNumbers.get(pattern)}:${start}-${end}${letters.includes('_') ? '~' : ''}`,
  )
  const { text, familiarity, soundCount, syllableCount, stressed } = word
  const begins = [soundCount, syllableCount].map(number => String(number).padStart(2, '0')).join('')
  return [
    `${begins}${text}`,
    familiarity,
    stressed,
    spelled.join(' '),
    found.join(' '),
    ...writeSortable(word.sortable),
  ].join('\t')
}

function writeSortable({
  syllables,
  pronunciations,
  partsOfSpeech: parts,
  plural,
  patterns,
  notes,
}: SortableWord): readonly string[] {
  const made = patterns.flatMap(({ madeOf, rule }, index) =>
    madeOf === undefined ? [] : [[index, ...madeOf, ...(rule === undefined ? [] : [rule])].join('|')],
  )
  return [
    syllables.join('.'),
    pronunciations[0] ?? '',
    parts[0] ?? '',
    plural?.rule ?? '',
    made.join(';'),
    notes === undefined ? '' : '~',
  ]
}

/** A line, read as far as it is asked: most wishes pass most words over by their letters or by a number. */
class OfferedLine implements OfferedWord {
  readonly #line: string
  #text: string | undefined
  #fields: readonly string[] | undefined
  #graphemes: readonly Grapheme[] | undefined
  #findings: readonly OfferedFinding[] | undefined
  #sortable: SortableWord | undefined

  constructor(line: string) {
    this.#line = line
  }

  get text(): string {
    this.#text ??= this.#line.slice(4, this.#line.indexOf('\t'))
    return this.#text
  }

  get familiarity(): number {
    return Number(this.#field(1))
  }

  get soundCount(): number {
    return twoDigits(this.#line, 0)
  }

  get syllableCount(): number {
    return twoDigits(this.#line, 2)
  }

  get stressed(): number {
    return Number(this.#field(2))
  }

  get graphemes(): readonly Grapheme[] {
    this.#graphemes ??= readGraphemes(this.#field(3))
    return this.#graphemes
  }

  get findings(): readonly OfferedFinding[] {
    this.#findings ??= readFindings(this.text, this.#field(4))
    return this.#findings
  }

  get sortable(): SortableWord {
    this.#sortable ??= this.#readSortable()
    return this.#sortable
  }

  #readSortable(): SortableWord {
    const { text, graphemes, soundCount } = this
    const [syllables = '', pronunciation = '', part = '', rule = '', made = '', ways] = this.#fieldsFrom(5)
    return {
      text,
      graphemes,
      soundCount,
      syllables: syllables.split('.'),
      pronunciations: [pronunciation],
      partsOfSpeech: partsOfSpeech.filter(each => each === part),
      plural: rule === '' ? null : { rule },
      patterns: withMaking(
        this.findings.filter(({ pattern }) => !pattern.endsWith('-syllable')),
        made,
      ),
      ...present({ firstSyllable: this.findings.find(isFirstSyllable)?.pattern }),
      ...(ways === '~' ? { notes: [noteOfDifferentWays(text)] } : {}),
    }
  }

  #fieldsFrom(index: number): readonly string[] {
    this.#field(index)
    return this.#fields?.slice(index) ?? []
  }

  #field(index: number): string {
    this.#fields ??= this.#line.split('\t')
    return this.#fields[index] ?? ''
  }
}

function isFirstSyllable({ pattern, start }: OfferedFinding): boolean {
  return start === 0 && pattern.endsWith('-syllable')
}

function withMaking(findings: readonly OfferedFinding[], made: string): readonly SortableFinding[] {
  if (made === '') return findings
  const making = new Map(
    made.split(';').map(each => {
      const [index = '', first = '', second = '', rule] = each.split('|')
      return [Number(index), { madeOf: [first, second] as const, ...present({ rule }) }]
    }),
  )
  return findings.map((finding, index) => ({ ...finding, ...making.get(index) }))
}

function twoDigits(line: string, at: number): number {
  return (line.charCodeAt(at) - zero) * 10 + line.charCodeAt(at + 1) - zero
}

const zero = '0'.charCodeAt(0)

function readGraphemes(spelled: string): readonly Grapheme[] {
  let start = 0
  return spelled.split(' ').map(part => {
    const [letters = '', sounds = ''] = part.split(':')
    const grapheme = { letters, start, sounds: sounds === '' ? [] : sounds.split('+') }
    start += letters.length
    return grapheme
  })
}

function readFindings(text: string, found: string): readonly OfferedFinding[] {
  if (found === '') return []
  return found.split(' ').map(part => {
    const [number = '', span = ''] = part.split(':')
    const [start = 0, end = 0] = span.replace('~', '').split('-').map(Number)
    const whole = text.slice(start, end)
    const letters = span.endsWith('~') ? `${whole.slice(0, 1)}_${whole.slice(-1)}` : whole
    return { pattern: patternNames[Number(number)]!, letters, start, end, place: placeOf(text, start, end) }
  })
}
