import { existsSync, readFileSync } from 'node:fs'
import { basename, dirname, extname, isAbsolute, join, resolve } from 'node:path'
import { closest } from 'fastest-levenshtein'
import { fail, succeed } from '../src/outcomes.js'
import { openTypeface, type Typeface, type TypefaceFiles } from '../src/pieces/typeface/typeface.js'
import { disk } from '../src/plan/disk/disk.js'
import type { FileAccess } from '../src/plan/disk/file-access.js'
import { errorAt, type Outcome, type Place, type Problem } from '../src/problems.js'
import { droppedInFiles, droppedInFolder, droppedInTypefaces, fontEnding } from './dropped-in.js'
import { bundledTypefaces } from './index.js'
import { packageFile } from './package-file.js'

export interface TypefaceRequest {
  /** A bundled typeface, a font file dropped into `fonts/` (with or without its ending), or a path. */
  readonly name: string
  /** Where the plan names it. */
  readonly place: Place
  /** The plan's folder, from which a path is read. */
  readonly folder?: string
  /** How a font file of the teacher's own is read; the machine's own files where left out. */
  readonly files?: FileAccess
}

/** More than any font of a school's needs; a larger file is hardly a font. */
const LARGEST_FONT_BYTES = 50_000_000

/** Typefaces opened before, by what is in their files: a file that has changed since is opened anew. */
const opened = new Map<string, { readonly files: TypefaceFiles; readonly typeface: Typeface }>()

/** The typeface of that name; opened once for the same files. */
export function loadTypeface(request: TypefaceRequest): Outcome<Typeface> {
  const found = findFiles(request)
  if (found === undefined) return fail(notFound(request))
  const typeface = openOnce(found)
  return 'unreadable' in typeface ? fail(cannotBeUsed(request, typeface.unreadable)) : succeed(typeface)
}

/** Why the font in that file cannot be used, a clause; undefined where it can. */
export function faultOfFont(path: string, files: FileAccess): string | undefined {
  const typeface = openOnce(singleFile(path, files))
  return 'unreadable' in typeface ? typeface.unreadable : undefined
}

function openOnce(found: FoundFiles): Typeface | Unreadable {
  const known = opened.get(found.key)
  if (known !== undefined && found.bundled) return known.typeface
  const read = readFiles(found)
  if ('unreadable' in read) return read
  if (known !== undefined && sameFiles(known.files, read)) return known.typeface
  const typeface = openFiles(read)
  if (!('unreadable' in typeface)) opened.set(found.key, { files: read, typeface })
  return typeface
}

interface Unreadable {
  readonly unreadable: string
}

function readFiles(found: FoundFiles): TypefaceFiles | Unreadable {
  try {
    return found.read()
  } catch (error) {
    return cannotBeRead(error)
  }
}

function openFiles(files: TypefaceFiles): Typeface | Unreadable {
  try {
    return openTypeface(files)
  } catch (error) {
    return cannotBeRead(error)
  }
}

function cannotBeRead(error: unknown): Unreadable {
  const reason = error instanceof Error ? error.message : String(error)
  return { unreadable: `its file cannot be read (${reason})` }
}

function cannotBeUsed({ name, place }: TypefaceRequest, reason: string): Problem {
  return errorAt(
    place,
    `the font "${name}" cannot be used: ${reason}`,
    'Give another font file, TTF or OTF, with the letters a to z.',
  )
}

function sameFiles(a: TypefaceFiles, b: TypefaceFiles): boolean {
  const same = (one: Uint8Array | undefined, other: Uint8Array | undefined) =>
    one === undefined || other === undefined ? one === other : Buffer.compare(one, other) === 0
  return same(a.regular, b.regular) && same(a.bold, b.bold)
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

interface FoundFiles {
  readonly key: string
  /** Whether it came with oaktag, and cannot change. */
  readonly bundled?: true
  readonly read: () => TypefaceFiles
}

function findFiles({ name, folder = '.', files = disk }: TypefaceRequest): FoundFiles | undefined {
  const bundled = bundledTypefaces.find(typeface => typeface.name === name.toLowerCase())
  if (bundled !== undefined) return { key: bundled.name, bundled: true, read: () => readBundled(bundled) }
  const dropped = droppedInFiles().find(file => [file, file.replace(fontEnding, '')].includes(name))
  if (dropped !== undefined) return singleFile(join(droppedInFolder, dropped), disk)
  if (!fontEnding.test(name)) return undefined
  const path = isAbsolute(name) ? name : resolve(folder, name)
  return files.beginning(path, 1).kind === 'missing' ? undefined : singleFile(path, files)
}

/** A bold weight is taken from a neighbour whose name says so: `Name-Regular.ttf` and `Name-Bold.ttf`. */
function singleFile(path: string, files: FileAccess): FoundFiles {
  const ending = extname(path)
  const stem = basename(path, ending)
  const boldPath = join(dirname(path), `${stem.replace(/-Regular$/i, '')}-Bold${ending}`)
  return {
    key: path,
    read: () => {
      const bold = boldPath === path ? undefined : contentsOf(boldPath, files)
      const regular = contentsOf(path, files)
      if (regular === undefined) throw new Error('it cannot be opened')
      return {
        name: stem,
        family: stem.replace(/-Regular$/i, ''),
        regular,
        ...(bold === undefined ? {} : { bold }),
      }
    },
  }
}

function contentsOf(path: string, files: FileAccess): Uint8Array | undefined {
  const found = files.read(path, LARGEST_FONT_BYTES)
  return found.kind === 'bytes' ? found.bytes : undefined
}

function readBundled({ name, family }: { readonly name: string; readonly family: string }): TypefaceFiles {
  const regular = packageFile(`@fontsource/${name}`, `files/${name}-latin-400-normal.woff`)
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
  return { name, family, regular: readFileSync(regular), ...present, bundled: true }
}
