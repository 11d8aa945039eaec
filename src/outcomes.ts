/** Putting outcomes together, so that every problem of a plan is told in one go. */
import { hasErrors, type Outcome, type Place, type Problem, type Success } from './problems.js'

/** The type of the value that an outcome gives. */
export type ValueOf<O> = O extends { readonly ok: true; readonly value: infer V } ? V : never

export function succeed<T>(value: T, problems: readonly Problem[] = []): Success<T> {
  return { ok: true, value, problems }
}

export function fail<T>(...problems: readonly Problem[]): Outcome<T> {
  return failWith(problems)
}

export function failWith<T>(problems: readonly Problem[]): Outcome<T> {
  return { ok: false, problems }
}

/** The value where no problem is an error; the problems either way. */
export function outcomeOf<T>(value: T, problems: readonly Problem[]): Outcome<T> {
  return hasErrors(problems) ? failWith(problems) : succeed(value, problems)
}

/** A value as far as it could be made, with the problems of the rest: so that all of them are told in one go. */
export interface WithProblems<T> {
  readonly value: T
  readonly problems: readonly Problem[]
}

export function withProblems<T>(value: T, problems: readonly Problem[]): WithProblems<T> {
  return { value, problems }
}

/** What follows from a value; its problems come after those of the value. */
export function andThen<T, U>(outcome: Outcome<T>, next: (value: T) => Outcome<U>): Outcome<U> {
  if (!outcome.ok) return outcome
  const following = next(outcome.value)
  return { ...following, problems: [...outcome.problems, ...following.problems] }
}

/** All values, or every problem of every outcome. */
export function together<T>(outcomes: readonly Outcome<T>[]): Outcome<readonly T[]> {
  const problems = outcomes.flatMap(outcome => outcome.problems)
  const values = outcomes.flatMap(outcome => (outcome.ok ? [outcome.value] : []))
  return values.length === outcomes.length ? succeed(values, problems) : failWith(problems)
}

/** A record of values out of a record of outcomes, or every problem of every outcome. */
export function record<R extends Readonly<Record<string, Outcome<unknown>>>>(
  outcomes: R,
): Outcome<{ readonly [K in keyof R]: ValueOf<R[K]> }> {
  const entries = Object.entries(outcomes)
  const problems = entries.flatMap(([, outcome]) => outcome.problems)
  if (entries.some(([, outcome]) => !outcome.ok)) return failWith(problems)
  const values = Object.fromEntries(entries.map(([key, outcome]) => [key, outcome.ok && outcome.value]))
  return succeed(values as { readonly [K in keyof R]: ValueOf<R[K]> }, problems)
}

/** The keys whose values are there: an optional key is left out, never set to `undefined`. */
export function present<T extends object>(values: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  return Object.fromEntries(Object.entries(values).filter(([, value]) => value !== undefined)) as {
    [K in keyof T]?: Exclude<T[K], undefined>
  }
}

/** By line and column, the problems of the plan file itself first; the same problem is told once. */
export function inReadingOrder(problems: readonly Problem[], firstFile: string): readonly Problem[] {
  const rank = ({ file }: Place): number => (file === firstFile ? 0 : 1)
  const sorted = [...problems].sort(
    (a, b) =>
      rank(a.place) - rank(b.place) ||
      (a.place.file < b.place.file ? -1 : a.place.file > b.place.file ? 1 : 0) ||
      (a.place.line ?? 0) - (b.place.line ?? 0) ||
      (a.place.column ?? 0) - (b.place.column ?? 0),
  )
  const seen = new Set<string>()
  return sorted.filter(problem => {
    const identity = JSON.stringify(problem)
    return !seen.has(identity) && seen.add(identity)
  })
}
