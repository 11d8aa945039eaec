/** A PDF file as qpdf reads it: its objects, resolved, and its pages' decoded content. */
import { runProgram } from '../system-program.js'

export type PdfObject = string | number | boolean | null | readonly PdfObject[] | PdfDictionary
export interface PdfDictionary {
  readonly [key: string]: PdfObject
}

export interface PdfFile {
  readonly catalog: PdfDictionary
  readonly pages: readonly { readonly dictionary: PdfDictionary; readonly content: string }[]
  readonly fonts: readonly PdfDictionary[]
  /** The XMP packet of the catalog. */
  readonly metadata: string
  readonly resolve: (object: PdfObject | undefined) => PdfObject
}

interface QpdfObject {
  readonly value?: PdfObject
  readonly stream?: { readonly dict: PdfDictionary; readonly data: string }
}

export function readPdf(file: string): PdfFile {
  const args = ['--json=2', '--json-stream-data=inline', '--decode-level=all', file]
  const { qpdf } = JSON.parse(runProgram('qpdf', args)) as {
    qpdf: [unknown, Readonly<Record<string, QpdfObject>>]
  }
  const objects = qpdf[1]
  const held = (reference: PdfObject | undefined) =>
    typeof reference === 'string' ? objects[`obj:${reference}`] : undefined
  const resolve = (object: PdfObject | undefined): PdfObject => {
    const found = held(object)
    return found === undefined ? (object ?? null) : (found.stream?.dict ?? found.value ?? null)
  }
  const text = (reference: PdfObject | undefined) =>
    Buffer.from(held(reference)?.stream?.data ?? '', 'base64').toString('latin1')
  const all = Object.values(objects).flatMap(({ value }) => (value === undefined ? [] : [value]))
  const catalog = dictionaryOf(resolve(dictionaryOf(objects.trailer?.value ?? null)['/Root']))
  const ofType = (type: string) => all.map(dictionaryOf).filter(object => object['/Type'] === type)
  return {
    catalog,
    pages: ofType('/Page').map(dictionary => ({
      dictionary,
      content: [dictionary['/Contents'] ?? null]
        .flat()
        .map(part => text(part as PdfObject))
        .join('\n'),
    })),
    fonts: ofType('/Font'),
    metadata: text(catalog['/Metadata']),
    resolve,
  }
}

export function dictionaryOf(object: PdfObject): PdfDictionary {
  return object !== null && typeof object === 'object' && !Array.isArray(object)
    ? (object as PdfDictionary)
    : {}
}

/** An element of the tree of tags with the elements in it. */
export interface Tag {
  readonly type: string
  readonly dictionary: PdfDictionary
  readonly tags: readonly Tag[]
  /** Pieces of content that it holds itself. */
  readonly contents: number
}

export function tagTree({ catalog, resolve }: PdfFile): readonly Tag[] {
  const root = dictionaryOf(resolve(catalog['/StructTreeRoot']))
  const kids = (of: PdfDictionary) => [resolve(of['/K'])].flat().map(kid => resolve(kid as PdfObject))
  const tagOf = (object: PdfObject): Tag => {
    const dictionary = dictionaryOf(object)
    const elements = kids(dictionary).filter(kid => dictionaryOf(kid)['/S'] !== undefined)
    return {
      type: String(dictionary['/S']).slice(1),
      dictionary,
      tags: elements.map(tagOf),
      contents: kids(dictionary).length - elements.length,
    }
  }
  return kids(root).map(tagOf)
}

export function everyTag(tags: readonly Tag[]): readonly Tag[] {
  return tags.flatMap(tag => [tag, ...everyTag(tag.tags)])
}
