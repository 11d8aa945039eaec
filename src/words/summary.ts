/** What a list of studied words holds: patterns and how often, what stands alone, what is missing for a sort. */
import { patterns } from './patterns/index.js'
import type { Word } from './word.js'

export interface PatternCount {
  readonly pattern: string
  /** Words that show it, each once, in list order. */
  readonly words: readonly string[]
  /** The same by letters (lower case), the commonest first. */
  readonly byLetters: readonly { readonly letters: string; readonly words: readonly string[] }[]
}

export interface ListSummary {
  /** In teaching order. */
  readonly patterns: readonly PatternCount[]
  /** Words that share no pattern with another word of the list. */
  readonly alone: readonly string[]
  /** Sorts that a few more words would make work, in plain sentences. */
  readonly missing: readonly string[]
}

/** Fewer words in a column show no pattern. Common practice, no source. */
const fullColumn = 3
/** What a teacher might still add; beyond that, the list is about something else. */
const mostToAdd = 3

export function summaryOf(words: readonly Word[]): ListSummary {
  const counts = patterns.map(({ name }) => countOf(name, words)).filter(count => count.words.length > 0)
  const shared = new Set(counts.filter(count => count.words.length > 1).flatMap(count => count.words))
  return {
    patterns: counts,
    alone: words.map(word => word.text).filter(text => !shared.has(text)),
    missing: contrasts.flatMap(contrast => missingIn(columnsOf(contrast, counts))),
  }
}

/** The summary as lines to print. */
export function listSummary(words: readonly Word[]): readonly string[] {
  const { patterns: counts, alone, missing } = summaryOf(words)
  return [
    `${words.length} words hold these patterns:`,
    ...counts.map(count => `  ${count.pattern} ${count.words.length}: ${lettersInWords(count)}`),
    ...(alone.length === 0 ? [] : [`Shares no pattern with another word: ${alone.join(', ')}`]),
    ...(missing.length === 0 ? [] : ['A few more words would make these sorts work:']),
    ...missing.map(sentence => `  ${sentence}`),
  ]
}

function lettersInWords({ byLetters }: PatternCount): string {
  return byLetters.map(({ letters, words }) => `${letters} (${words.join(', ')})`).join(', ')
}

function countOf(pattern: string, words: readonly Word[]): PatternCount {
  const byLetters = new Map<string, string[]>()
  const holders: string[] = []
  for (const word of words) {
    const own = word.patterns.filter(finding => finding.pattern === pattern)
    if (own.length > 0) holders.push(word.text)
    for (const letters of new Set(own.map(finding => finding.letters.toLowerCase()))) {
      byLetters.set(letters, [...(byLetters.get(letters) ?? []), word.text])
    }
  }
  const groups = [...byLetters].map(([letters, group]) => ({ letters, words: group }))
  return { pattern, words: holders, byLetters: groups.toSorted((a, b) => b.words.length - a.words.length) }
}

/** Patterns that are sorted against each other, and patterns whose letters are. */
type Contrast =
  | { readonly kind: 'patterns'; readonly names: readonly string[] }
  | { readonly kind: 'letters'; readonly name: string }

const contrasts: readonly Contrast[] = [
  { kind: 'letters', name: 'short-vowel' },
  { kind: 'letters', name: 'consonant-digraph' },
  { kind: 'letters', name: 'beginning-blend' },
  { kind: 'letters', name: 'ending-blend' },
  { kind: 'letters', name: 'three-letter-blend' },
  { kind: 'letters', name: 'digraph-blend' },
  { kind: 'letters', name: 'silent-e' },
  { kind: 'letters', name: 'vowel-team' },
  { kind: 'letters', name: 'diphthong' },
  { kind: 'letters', name: 'r-controlled' },
  { kind: 'letters', name: 'silent-letters' },
  { kind: 'patterns', names: ['short-vowel', 'silent-e', 'vowel-team', 'diphthong', 'r-controlled'] },
  { kind: 'patterns', names: ['hard-c', 'soft-c'] },
  { kind: 'patterns', names: ['hard-g', 'soft-g'] },
  { kind: 'patterns', names: ['consonant-digraph', 'digraph-blend', 'trigraph'] },
  { kind: 'patterns', names: ['beginning-blend', 'three-letter-blend', 'digraph-blend'] },
  { kind: 'patterns', names: ['ending-s', 'ending-es'] },
  { kind: 'patterns', names: ['ending-ed', 'ending-ing'] },
  { kind: 'patterns', names: ['ending-er', 'ending-est'] },
]

interface Column {
  readonly label: string
  readonly count: number
}

/** An e that lengthens nothing (have) makes no column beside a_e, i_e, o_e. */
function columnsOf(contrast: Contrast, counts: readonly PatternCount[]): readonly Column[] {
  const named = (name: string) => counts.find(count => count.pattern === name)
  const columns =
    contrast.kind === 'letters'
      ? (named(contrast.name)?.byLetters ?? [])
          .filter(({ letters }) => letters !== 'e' || contrast.name !== 'silent-e')
          .map(({ letters, words }) => ({ label: `${letters} (${contrast.name})`, count: words.length }))
      : contrast.names.map(name => ({ label: name, count: named(name)?.words.length ?? 0 }))
  return columns.filter(column => column.count > 0).toSorted((a, b) => b.count - a.count)
}

/** A sort needs two full columns. The two fullest are the nearest to it. */
function missingIn([first, second]: readonly Column[]): readonly string[] {
  if (first === undefined || second === undefined) return []
  const wanted = [first, second].map(({ label, count }) => ({
    label,
    lacking: Math.max(0, fullColumn - count),
  }))
  const lacking = wanted.filter(column => column.lacking > 0)
  const all = lacking.reduce((sum, column) => sum + column.lacking, 0)
  if (all === 0 || all > mostToAdd) return []
  const more = lacking.map(column => `${column.lacking} more with ${column.label}`).join(' and ')
  return [`${first.label} against ${second.label}: ${more}`]
}
