/** Pictures that a word may be given: those beside the plan, and in the folders there. */
import { readdirSync } from 'node:fs'
import { dirname, join } from 'node:path'

const mostListed = 500

export function picturesBeside(plan: string): readonly string[] {
  const folder = dirname(plan)
  const entries = entriesOf(folder)
  const below = entries
    .filter(entry => entry.isDirectory() && !entry.name.startsWith('.') && entry.name !== 'node_modules')
    .slice(0, 20)
    .flatMap(({ name }) => picturesIn(join(folder, name)).map(picture => `${name}/${picture}`))
  return [...picturesIn(folder), ...below].slice(0, mostListed)
}

function picturesIn(folder: string): readonly string[] {
  return entriesOf(folder)
    .filter(entry => entry.isFile() && /\.(?:png|jpe?g|svg)$/i.test(entry.name))
    .map(({ name }) => name)
    .sort()
}

function entriesOf(folder: string) {
  try {
    return readdirSync(folder, { withFileTypes: true }).slice(0, 5000)
  } catch {
    return []
  }
}
