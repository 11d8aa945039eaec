import type { Manifest } from '../manifest.js'

/**
 * The manifest that the text holds; undefined where it is none of ours, or not as we write it: its paths are followed,
 * so none may lead out of the folder.
 */
export function parseManifest(text: string): Manifest | undefined {
  try {
    const value: unknown = JSON.parse(text)
    return isManifest(value) ? value : undefined
  } catch {
    return undefined
  }
}

function isManifest(value: unknown): value is Manifest {
  return (
    isRecord(value) &&
    [value.oaktag, value.title].every(isText) &&
    isPathIfThere(value.pdf) &&
    isListOf(value.prints ?? [], print => isRecord(print) && isPath(print.pdf)) &&
    isListOf(value.items, isItem)
  )
}

function isItem(value: unknown): boolean {
  return (
    isRecord(value) &&
    [value.name, value.layout].every(isText) &&
    isPath(value.name) &&
    isPathIfThere(value.pdf) &&
    (value.week === undefined || isWeekUse(value.week)) &&
    isListOf(value.pages, isPage)
  )
}

function isWeekUse(value: unknown): boolean {
  return isRecord(value) && [value.day, value.title, value.print].every(isText)
}

function isPage(value: unknown): boolean {
  return (
    isRecord(value) &&
    [value.side, value.kind, value.title].every(isText) &&
    [value.svg, value.png].every(isPathIfThere) &&
    isListOf(value.pieces, piece => isRecord(piece) && isListOf(piece.text, isText))
  )
}

function isRecord(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null
}

function isText(value: unknown): value is string {
  return typeof value === 'string'
}

function isListOf(value: unknown, isEntry: (entry: unknown) => boolean): boolean {
  return Array.isArray(value) && value.every(isEntry)
}

function isPathIfThere(value: unknown): boolean {
  return value === undefined || isPath(value)
}

/** Below the folder, as `sheetPath` writes it: `bingo/bingo-01.svg`. */
function isPath(value: unknown): boolean {
  return isText(value) && value.split('/').every(part => part !== '' && !/^\.\.?$|[\\:\0]/.test(part))
}
