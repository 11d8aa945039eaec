import { existsSync, readdirSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { basename, dirname, extname, isAbsolute, join, resolve } from 'node:path'
import { closest } from 'fastest-levenshtein'
import { installationFolder } from '../src/installation.js'
import { fail, succeed } from '../src/outcomes.js'
import { openTypeface, type Typeface, type TypefaceFiles } from '../src/pieces/typeface/typeface.js'
import { errorAt, type Outcome, type Place, type Problem } from '../src/problems.js'
import { bundledTypefaces } from './index.js'

export interface TypefaceRequest {
  /** A bundled typeface, a font file dropped into `fonts/` (with or without its ending), or a path. */
  readonly name: string
  /** Where the plan names it. */
  readonly place: Place
  /** The plan's folder, from which a path is read. */
  readonly folder?: string
}

const dropInFolder = join(installationFolder, 'fonts')
const fontEnding = /\.(ttf|otf|woff)$/i

const opened = new Map<string, Typeface>()

/** The typeface of that name, opened once a run. */
export function loadTypeface(request: TypefaceRequest): Outcome<Typeface> {
  const { name, place } = request
  const found = findFiles(request)
  if (found === undefined) return fail(notFound(request))
  const known = opened.get(found.key)
  if (known !== undefined) return succeed(known)
  let typeface: ReturnType<typeof openTypeface>
  try {
    typeface = openTypeface(found.read())
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error)
    typeface = { unreadable: `its file cannot be read (${reason})` }
  }
  if ('unreadable' in typeface) {
    const message = `the font "${name}" cannot be used: ${typeface.unreadable}`
    return fail(errorAt(place, message, 'Give another font file, TTF or OTF, with the letters a to z.'))
  }
  opened.set(found.key, typeface)
  return succeed(typeface)
}

function notFound({ name, place }: TypefaceRequest): Problem {
  if (fontEnding.test(name))
    return errorAt(
      place,
      `the font file "${name}" is not there`,
      'Give its path from the folder of the plan, or drop the file into the fonts folder.',
    )
  const near = closest(name.toLowerCase(), [
    ...bundledTypefaces.map(typeface => typeface.name),
    ...droppedInTypefaces(),
  ])
  return errorAt(
    place,
    `there is no font called "${name}"`,
    `Did you mean ${near}? "oaktag list fonts" shows all; a path to a TTF or OTF works too.`,
  )
}

/** Names of the fonts that a teacher dropped into `fonts/`, without their endings. */
export function droppedInTypefaces(): readonly string[] {
  return dropInFiles().map(file => file.replace(fontEnding, ''))
}

function dropInFiles(): readonly string[] {
  if (!existsSync(dropInFolder)) return []
  return readdirSync(dropInFolder)
    .filter(file => fontEnding.test(file))
    .sort()
}

interface FoundFiles {
  readonly key: string
  readonly read: () => TypefaceFiles
}

function findFiles({ name, folder = '.' }: TypefaceRequest): FoundFiles | undefined {
  const bundled = bundledTypefaces.find(typeface => typeface.name === name.toLowerCase())
  if (bundled !== undefined) return { key: bundled.name, read: () => readBundled(bundled) }
  const dropped = dropInFiles().find(file => [file, file.replace(fontEnding, '')].includes(name))
  if (dropped !== undefined) return singleFile(join(dropInFolder, dropped))
  if (!fontEnding.test(name)) return undefined
  const path = isAbsolute(name) ? name : resolve(folder, name)
  return existsSync(path) ? singleFile(path) : undefined
}

/** A bold weight is taken from a neighbour whose name says so: `Name-Regular.ttf` and `Name-Bold.ttf`. */
function singleFile(path: string): FoundFiles {
  const ending = extname(path)
  const stem = basename(path, ending)
  const boldPath = join(dirname(path), `${stem.replace(/-Regular$/i, '')}-Bold${ending}`)
  return {
    key: path,
    read: () => ({
      name: stem,
      family: stem.replace(/-Regular$/i, ''),
      regular: readFileSync(path),
      ...(boldPath !== path && existsSync(boldPath) ? { bold: readFileSync(boldPath) } : {}),
    }),
  }
}

function readBundled({ name, family }: { readonly name: string; readonly family: string }): TypefaceFiles {
  const find = createRequire(import.meta.url).resolve
  const regular = find(`@fontsource/${name}/files/${name}-latin-400-normal.woff`)
  const file = (subset: string, weight: number): string =>
    join(dirname(regular), `${name}-${subset}-${weight}-normal.woff`)
  const optional = (path: string): Uint8Array | undefined =>
    existsSync(path) ? readFileSync(path) : undefined
  const parts = {
    bold: optional(file('latin', 700)),
    extended: optional(file('latin-ext', 400)),
    extendedBold: optional(file('latin-ext', 700)),
  }
  const present = Object.fromEntries(Object.entries(parts).filter(([, bytes]) => bytes !== undefined))
  return { name, family, regular: readFileSync(regular), ...present }
}
