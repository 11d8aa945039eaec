/** Texts of older spreadsheets of Western Europe and America. */

/** Characters 0x80 to 0x9F; a space where none is assigned. Unicode Consortium, MAPPINGS/VENDORS/MICSFT/WINDOWS/CP1252.TXT. */
const upper = '€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ'

/** Undefined where a byte stands for no character, or for one that no text has: then it is a file of another kind. */
export function decodeWindows1252(bytes: Uint8Array): string | undefined {
  const characters: string[] = []
  for (const byte of bytes) {
    const character = byte >= 0x80 && byte <= 0x9f ? upper[byte - 0x80]! : String.fromCharCode(byte)
    const isControl = byte < 0x20 && ![0x09, 0x0a, 0x0c, 0x0d].includes(byte)
    if (character === ' ' && byte !== 0x20) return undefined
    if (isControl) return undefined
    characters.push(character)
  }
  return characters.join('')
}
