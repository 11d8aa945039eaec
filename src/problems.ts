/** Something in the teacher's input that she should know of: where it is, what it is, what to do about it. */
export interface Problem {
  readonly severity: 'error' | 'warning'
  readonly place: Place
  /** What is wrong, in one sentence without a full stop, naming the word or key concerned. */
  readonly message: string
  /** What to do about it, in one plain sentence. */
  readonly advice: string
}

/** A place in a file; line and column count from 1. Line and column are left out where a problem concerns the whole file. */
export interface Place {
  readonly file: string
  readonly line?: number
  readonly column?: number
}

/** For `JSON.stringify`: leaves out where something stands in the plan's text, which changes nothing in what is made of it. */
export function withoutPlaces(key: string, value: unknown): unknown {
  // Where in a word a mark stands is called its place too: a text, and no place in the plan.
  const isPlace = key === 'overridePlaces' || (key === 'place' && typeof value === 'object')
  return isPlace ? undefined : value
}

/** A value, or the problems that kept it from being made. Warnings may come with a value. */
export type Outcome<T> = Success<T> | { readonly ok: false; readonly problems: readonly Problem[] }

export interface Success<T> {
  readonly ok: true
  readonly value: T
  readonly problems: readonly Problem[]
}

export function errorAt(place: Place, message: string, advice: string): Problem {
  return { severity: 'error', place, message, advice }
}

export function warningAt(place: Place, message: string, advice: string): Problem {
  return { severity: 'warning', place, message, advice }
}

export function hasErrors(problems: readonly Problem[]): boolean {
  return problems.some(problem => problem.severity === 'error')
}

/** Each problem once: what is wrong with an item is found again for every group that it is printed for. */
export function eachOnce(problems: readonly Problem[]): readonly Problem[] {
  const told = new Set<string>()
  return problems.filter(problem => {
    const text = formatProblem(problem)
    return !told.has(text) && told.add(text)
  })
}

/** So many of one kind are told one by one. */
const mostOfAKind = 100

/** A hundred problems of each kind, and how many more there are of it: no one mends sixty thousand lines one by one. */
export function aHundredOfAKind(problems: readonly Problem[]): readonly Problem[] {
  const kinds = new Map<string, Problem[]>()
  for (const problem of problems) {
    const same = kinds.get(kindOf(problem))
    if (same === undefined) kinds.set(kindOf(problem), [problem])
    else same.push(problem)
  }
  const more = new Map(
    [...kinds.values()]
      .filter(same => same.length > mostOfAKind + 1)
      .map(same => [same[mostOfAKind]!, same.length - mostOfAKind] as const),
  )
  const left = new Set(
    [...kinds.values()].flatMap(same => same.slice(mostOfAKind + (more.has(same[mostOfAKind]!) ? 1 : 2))),
  )
  return problems
    .filter(problem => !left.has(problem))
    .map(problem => {
      const count = more.get(problem)
      return count === undefined
        ? problem
        : { ...problem, message: `and ${count.toLocaleString('en-US')} more of this kind from here on` }
    })
}

/** What is said, whatever word, number or name it is said of. */
function kindOf({ severity, place, message }: Problem): string {
  return `${severity} ${place.file} ${message.replaceAll(/"[^"]*"|“[^”]*”|\d[\d.,]*/g, '…')}`
}

/** `FILE:LINE:COLUMN: error: MESSAGE`, then an indented line that says what to do. */
export function formatProblem(problem: Problem): string {
  const { file, line, column } = problem.place
  const place = [file, line, line === undefined ? undefined : column].filter(part => part !== undefined)
  return `${onOneLine(place.join(':'))}: ${problem.severity}: ${onOneLine(problem.message)}\n  ${onOneLine(problem.advice)}`
}

/** Signs that turn the direction of what follows, so that it reads as something else (Unicode Standard Annex 9, 2.1 to 2.6). */
export const directionMarks = /[\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu

/** What is quoted from a plan may hold line breaks, signs that steer a terminal, or half a page. */
function onOneLine(text: string): string {
  return text
    .replaceAll(/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' ')
    .replaceAll(directionMarks, mark => `U+${mark.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}`)
    .replaceAll(/"([^"]{100})[^"]{50,}"/g, (_, beginning: string) => `"${beginning}…"`)
}
