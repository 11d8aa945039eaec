const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
}

/** What XML 1.0 (§2.2) has no way to write at all, not even escaped. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: the control characters are the ones looked for
const unwritable = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]|\p{Surrogate}/gu

/** Most texts have nothing to be escaped. */
const plain = /^[ !#-%(-;=?-~]*$/

/** Text made safe for element content and quoted attributes, in XML as in HTML. */
export function escapeXml(text: string): string {
  if (plain.test(text)) return text
  return text.replace(/[&<>"']/g, sign => entities[sign]!).replace(unwritable, '\ufffd')
}
