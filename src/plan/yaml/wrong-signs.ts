/** Signs that a word processor or a slip puts where YAML wants another: each with the line as it was meant. */

export interface MendedContent {
  /** The line's content without the slip. */
  readonly content: string
  /** Where the wrong sign stands in the content, from 0. */
  readonly at: number
  readonly message: string
  readonly advice: string
}

/** The first slip in what follows a line's indentation, or nothing. */
export function wrongSign(content: string): MendedContent | undefined {
  return (
    dashOfAnotherKind(content) ?? dashWithoutSpace(content) ?? signBeforeText(content) ?? signsOfPair(content)
  )
}

const dashNames: Readonly<Record<string, string>> = {
  '\u2010': 'another hyphen (‐)',
  '\u2011': 'another hyphen (‑)',
  '\u2012': 'a long dash (‒)',
  '\u2013': 'an en dash (–)',
  '\u2014': 'an em dash (—)',
  '\u2015': 'a long dash (―)',
  '\u2212': 'a minus sign (−)',
  '\u2022': 'a bullet (•)',
  '\u2023': 'a bullet (‣)',
  '\u2043': 'a bullet (⁃)',
  '\u25AA': 'a bullet (▪)',
  '\u25CF': 'a bullet (●)',
  '\u25E6': 'a bullet (◦)',
  '\u00B7': 'a dot (·)',
  '*': 'a star (*)',
}

function dashOfAnotherKind(content: string): MendedContent | undefined {
  const [whole, sign = '', text = ''] = /^([^\s\p{L}\p{N}])[\s\u00A0]*(\S.*)$/u.exec(content) ?? []
  const name = dashNames[sign]
  if (whole === undefined || name === undefined) return undefined
  return {
    content: `- ${text}`,
    at: 0,
    message: `${name} stands where a list has its dash`,
    advice: `Type a plain hyphen and a space: - ${shortened(text)}`,
  }
}

function dashWithoutSpace(content: string): MendedContent | undefined {
  const [whole, text = ''] = /^-\u00A0*([\p{L}"'].*)$/u.exec(content) ?? []
  if (whole === undefined) return undefined
  return {
    content: `- ${text}`,
    at: 0,
    message: 'there is no space behind the dash',
    advice: `Type a space behind it: - ${shortened(text)}`,
  }
}

/** `!`, `?` and `*` mean something to YAML where a value begins. */
function signBeforeText(content: string): MendedContent | undefined {
  const [whole, before = '', sign = '', text = ''] =
    /^((?:-\s+)*(?:[A-Za-z][A-Za-z _-]*:\s+)?)(!+|\?(?=\s)|\*(?=\s))\s*([\p{L}"'].*)$/u.exec(content) ?? []
  if (whole === undefined) return undefined
  const name = { '!': 'an exclamation mark', '?': 'a question mark', '*': 'a star' }[sign[0]!]
  const written = `${content.slice(before.length)}`
  const isListed = !before.includes(':')
  return {
    content: `${before}${text}`,
    at: before.length,
    message: `${name} (${sign[0]}) cannot begin a ${isListed ? 'word of a list' : 'text'}`,
    advice:
      isListed && text !== ''
        ? `Take it out: ${before}${shortened(text)}`
        : `Put the text in quotes: ${before}"${shortened(written.replaceAll('"', "'"))}"`,
  }
}

function signsOfPair(content: string): MendedContent | undefined {
  return colonWithoutSpace(content) ?? curlyQuotes(content)
}

/** `layout:bingo`. A second colon or a slash behind it is no key's. */
function colonWithoutSpace(content: string): MendedContent | undefined {
  const form = /^((?:-\s+)*)([A-Za-z][A-Za-z _-]+):(?:\u00A0+)?([^\s:/\\\u00A0][^:]*(?::\s.*)?)$/
  const [whole, dashes = '', key = '', value = ''] = form.exec(content) ?? []
  if (whole === undefined) return undefined
  return {
    content: `${dashes}${key}: ${value}`,
    at: dashes.length + key.length,
    message: 'there is no space behind the colon',
    advice: `Type a space behind it: ${key}: ${shortened(value)}`,
  }
}

/** Round a colour; in a text they may be meant. */
function curlyQuotes(content: string): MendedContent | undefined {
  const form =
    /^((?:-\s+)*colou?r:\s+)[\u201C-\u201F\u2018-\u201B\u00AB]\s*([^\u201C-\u201F]*?)\s*[\u201C-\u201F\u2018-\u201B\u00BB"']?$/i
  const [whole, before = '', value = ''] = form.exec(content) ?? []
  if (whole === undefined) return undefined
  return {
    content: `${before}"${value}"`,
    at: before.length,
    message: 'curly quote marks stand round the colour',
    advice: `Type straight ones: ${before.replace(/^(?:-\s+)*/, '')}"${shortened(value)}"`,
  }
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 39)}…` : text
}
