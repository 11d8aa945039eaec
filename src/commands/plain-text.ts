/**
 * Signs that steer a terminal or turn the direction of writing (Unicode Standard Annex 9), as a file's name or a plan's
 * title may hold them; a line break and a tab are none.
 */
const steering = /(?![\n\t])[\p{Cc}\p{Zl}\p{Zp}\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]/gu

/** The text with such signs written out, `\u202e`, which is also how JSON writes them. */
export function withoutSteering(text: string): string {
  return text.replaceAll(steering, sign => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`)
}
