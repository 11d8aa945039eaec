/** The files of weeks with the sort that a teacher would choose. */
import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { parse } from 'yaml'

export interface TeachersSort {
  readonly week: string
  /** Words by the title of their column. */
  readonly sort: Readonly<Record<string, string>>
  readonly oddballs?: string
}

export function teachersSorts(file: string): readonly TeachersSort[] {
  return parse(readFileSync(join(import.meta.dirname, file), 'utf8'))
}

/** All words of the week, in the order of the alphabet, which no teacher's columns have. */
export function listOf({ sort, oddballs }: TeachersSort): string {
  const words = [...Object.values(sort), ...(oddballs === undefined ? [] : [oddballs])].join(', ').split(', ')
  return words.toSorted().join(', ')
}

/** The columns without their titles, in a fixed order. */
export function pilesOf(columns: readonly (readonly string[])[]): readonly string[] {
  return columns.map(words => words.toSorted().join(', ')).toSorted()
}
