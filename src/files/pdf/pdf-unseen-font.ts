/** A piece of text in one font: its codes in hexadecimal, and how wide it is in ems before stretching. */
export interface EncodedText {
  readonly fontName: string
  readonly hex: string
  readonly widthEm: number
}

export interface UnseenFont {
  /** By name, for a page's or form's resources; grows while text is encoded. */
  readonly references: Readonly<Record<string, PDFKit.PDFKitReference>>
  encode(text: string): readonly EncodedText[]
  end(): void
}

/** Every letter is as wide as this; a run is then stretched to its true width. */
const widthEm = 0.6
/** A simple font has one byte a code; code 0 is left out, since some readers take it for the end. */
const codesInFont = 255

/**
 * A font whose letters have a width and a meaning but no shape (Type 3, ISO 32000-1 §9.6.5, with a ToUnicode map,
 * §9.10.3): the drawn outlines show the word, and this says which word it is. It holds any character of
 * Unicode; a standard font would lose those that are not Latin.
 */
export function createUnseenFont(doc: PDFKit.PDFDocument): UnseenFont {
  const codes = new Map<string, number>()
  const references: Record<string, PDFKit.PDFKitReference> = {}

  function codeOf(character: string): number {
    const known = codes.get(character)
    if (known !== undefined) return known
    const code = codes.size
    codes.set(character, code)
    references[fontName(code)] ??= doc.ref({})
    return code
  }

  return {
    references,
    encode(text) {
      const strings: EncodedText[] = []
      for (const character of text) {
        const code = codeOf(character)
        const hex = hexadecimal((code % codesInFont) + 1, 2)
        const last = strings.at(-1)
        if (last?.fontName === fontName(code))
          strings[strings.length - 1] = { ...last, hex: last.hex + hex, widthEm: last.widthEm + widthEm }
        else strings.push({ fontName: fontName(code), hex, widthEm })
      }
      return strings
    },
    end() {
      const characters = [...codes.keys()]
      for (const [index, name] of Object.keys(references).entries()) {
        const held = characters.slice(index * codesInFont, (index + 1) * codesInFont)
        writeFont(doc, references[name]!, held)
      }
    },
  }
}

function fontName(code: number): string {
  return `Unseen${Math.floor(code / codesInFont) + 1}`
}

function writeFont(
  doc: PDFKit.PDFDocument,
  reference: PDFKit.PDFKitReference,
  characters: readonly string[],
): void {
  const blank = doc.ref({})
  blank.end(Buffer.from(`${widthEm * 1000} 0 d0`))
  const toUnicode = doc.ref({})
  toUnicode.end(Buffer.from(unicodeMap(characters)))
  Object.assign(reference.data, {
    Type: 'Font',
    Subtype: 'Type3',
    FontBBox: [0, -250, 1000, 900],
    FontMatrix: [0.001, 0, 0, 0.001, 0, 0],
    CharProcs: { blank },
    Encoding: { Type: 'Encoding', Differences: [1, ...characters.map(() => 'blank')] },
    FirstChar: 1,
    LastChar: characters.length,
    Widths: characters.map(() => widthEm * 1000),
    Resources: {},
    ToUnicode: toUnicode,
  })
  reference.finalize()
}

/** A ToUnicode map; at most 100 entries a block are allowed (Adobe Technical Note 5014). */
function unicodeMap(characters: readonly string[]): string {
  const lines = characters.map((character, index) => `<${hexadecimal(index + 1, 2)}> <${utf16(character)}>`)
  const blocks: string[] = []
  for (let at = 0; at < lines.length; at += 100) {
    const block = lines.slice(at, at + 100)
    blocks.push(`${block.length} beginbfchar`, ...block, 'endbfchar')
  }
  return [
    '/CIDInit /ProcSet findresource begin',
    '12 dict begin',
    'begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def',
    '/CMapType 2 def',
    '1 begincodespacerange',
    '<00> <FF>',
    'endcodespacerange',
    ...blocks,
    'endcmap',
    'CMapName currentdict /CMap defineresource pop',
    'end',
    'end',
  ].join('\n')
}

function utf16(character: string): string {
  return [...character.split('')].map(unit => hexadecimal(unit.charCodeAt(0), 4)).join('')
}

function hexadecimal(value: number, digits: number): string {
  return value.toString(16).toUpperCase().padStart(digits, '0')
}
