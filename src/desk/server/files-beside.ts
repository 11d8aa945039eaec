/** Files that a plan may name: those beside it, and in the folders there. */
import { readdirSync } from 'node:fs'
import { basename, dirname, join } from 'node:path'

const mostListed = 500

export function picturesBeside(plan: string): readonly string[] {
  return filesBeside(plan, /\.(?:png|jpe?g|svg)$/i)
}

/** Other plans and lists of words. */
export function weeksBeside(plan: string): readonly string[] {
  return filesBeside(plan, /\.(?:ya?ml|txt|csv)$/i).filter(name => name !== basename(plan))
}

function filesBeside(plan: string, form: RegExp): readonly string[] {
  const folder = dirname(plan)
  const below = entriesOf(folder)
    .filter(entry => entry.isDirectory() && !entry.name.startsWith('.') && entry.name !== 'node_modules')
    .slice(0, 20)
    .flatMap(({ name }) => filesIn(join(folder, name), form).map(file => `${name}/${file}`))
  return [...filesIn(folder, form), ...below].slice(0, mostListed)
}

function filesIn(folder: string, form: RegExp): readonly string[] {
  return entriesOf(folder)
    .filter(entry => entry.isFile() && !entry.name.startsWith('.') && form.test(entry.name))
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
