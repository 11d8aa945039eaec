/** What the YAML reader finds wrong, in words for someone who never heard of YAML. */
import { type Document, type ErrorCode, isNode, isScalar, visit, type YAMLParseError } from 'yaml'
import { errorAt, type Place, type Problem } from '../../problems.js'

interface Wording {
  readonly message: string
  readonly advice: string
}

const indentation: Wording = {
  message: 'this line does not begin in the same column as its neighbours',
  advice: 'Begin the keys that belong together, and the dashes of one list, in the same column; use spaces.',
}
const colonInText: Wording = {
  message: 'a second colon on this line, or a line indented without need',
  advice: 'Put a text that holds a colon in quotes: clue: "a plant: tall and thin". Give each key a line.',
}
const stray: Wording = {
  message: 'a sign that does not belong here',
  advice: 'Put a text in quotes when it holds signs such as [ ] { } , : # & * ! | > @ % or a quote mark.',
}
const anchors: Wording = {
  message: 'an anchor (&) or an alias (*) stands where it cannot',
  advice: 'Put the text in quotes if it merely begins with & or *.',
}

/** By the codes of the `yaml` package. A code that is not here gets `stray`. */
const wordings: Partial<Record<ErrorCode, Wording>> = {
  TAB_AS_INDENT: {
    message: 'a tab at the beginning of the line',
    advice: 'Indent with spaces, two a level; a tab can look like any number of them.',
  },
  BAD_INDENT: indentation,
  BLOCK_AS_IMPLICIT_KEY: colonInText,
  MULTILINE_IMPLICIT_KEY: {
    message: 'a key without its colon, or a text that runs on into a key',
    advice: 'Write a colon and a space after the key; put a text of several lines in quotes.',
  },
  BAD_DQ_ESCAPE: {
    message: 'a backslash inside double quotes with no meaning',
    advice: "Use single quotes around the text: 'like this'.",
  },
  BAD_SCALAR_START: stray,
  MULTIPLE_DOCS: {
    message: 'a line of three dashes in the middle of the file',
    advice: 'Take the line out, or make two plans of it, a file each.',
  },
  BAD_ALIAS: anchors,
  ALIAS_PROPS: anchors,
  MULTIPLE_ANCHORS: anchors,
  BAD_PROP_ORDER: anchors,
}

const missing: readonly (readonly [RegExp, Wording])[] = [
  [
    /closing .quote/,
    {
      message: 'this quote mark has no partner',
      advice:
        'Close it with the same mark, or, for a word that begins with an apostrophe, put the word in double quotes.',
    },
  ],
  [
    /end with a [\]}]|closing [\]}]|flow (?:map|seq)/i,
    { message: 'a bracket opened here is never closed', advice: 'Close [ with ] and { with }.' },
  ],
  [
    /map value/,
    {
      message: 'a line that is neither a key with its colon nor an item of a list',
      advice: 'Write "key: value", or "- item".',
    },
  ],
]

/** After the first few, what trips the reader is its own confusion. */
const mostLines = 10

/** One problem a line, since one slip often trips the reader several times. */
export function yamlProblems(parsed: Document.Parsed, placeAt: (offset: number) => Place): Problem[] {
  const byLine = new Map<number | undefined, Problem>()
  for (const error of parsed.errors.slice(0, 10 * mostLines)) {
    if (byLine.size === mostLines) break
    const place = placeAt(startOf(error, parsed))
    if (byLine.has(place.line)) continue
    const { message, advice } = wordingOf(error)
    byLine.set(place.line, errorAt(place, message, advice))
  }
  return [...byLine.values()]
}

function wordingOf(error: YAMLParseError): Wording {
  if (error.code === 'BAD_INDENT' && !/end with a/.test(error.message)) return indentation
  const told = missing.find(([pattern]) => pattern.test(error.message))?.[1]
  return told ?? wordings[error.code] ?? stray
}

/** An unclosed quote or bracket is noticed at the text's end; the teacher looks where it opens. */
function startOf(error: YAMLParseError, parsed: Document.Parsed): number {
  const [noticed] = error.pos
  if (!/closing|end with a/.test(error.message)) return noticed
  let opening = noticed
  visit(parsed, (_key, node) => {
    if (!isNode(node) || !node.range) return
    const quoted = isScalar(node) && node.type?.startsWith('QUOTE')
    const flow = 'flow' in node && node.flow === true
    if ((quoted || flow) && node.range[0] < noticed && node.range[1] >= noticed) opening = node.range[0]
  })
  return opening
}
