/**
 * Slips of typing that YAML takes for something else, or tells of at the wrong place: a line that is a space out of its
 * column, a missing dash, a sign that looks like a dash. Looked for in a text that has problems, and mended for the
 * rest of the reading, so that one slip brings no second message and hides none.
 */
import { failWith } from '../../outcomes.js'
import { errorAt, type Outcome, type Problem } from '../../problems.js'
import { OpenColumns, type Slip } from './open-columns.js'
import { pairForm, structureLines } from './structure-lines.js'
import { wrongSign } from './wrong-signs.js'

export interface MendedText {
  readonly text: string
  /** One a slip, in the order of the text; none where nothing was mended. */
  readonly slips: readonly Problem[]
}

/** Reads the text; where it has errors, those of the text without its slips, and the slips. */
export function withSlipsMended<T>(
  file: string,
  text: string,
  read: (text: string) => Outcome<T>,
): Outcome<T> {
  const asTyped = read(text)
  if (asTyped.ok) return asTyped
  const mended = mendSlips(file, text)
  if (mended.slips.length === 0) return asTyped
  const later = read(mended.text).problems
  return failWith([...mended.slips, ...later.map(problem => inTextAsTyped(problem, { file, text, mended }))])
}

/** A line that was moved for the reading is told of where it was typed. */
function inTextAsTyped(
  problem: Problem,
  { file, text, mended }: { readonly file: string; readonly text: string; readonly mended: MendedText },
): Problem {
  const { line, column } = problem.place
  if (problem.place.file !== file || line === undefined || column === undefined) return problem
  const [typed = '', read = ''] = [linesOf(text)[line - 1], linesOf(mended.text)[line - 1]]
  const moved = Math.max(0, read.search(/\S/)) - Math.max(0, typed.search(/\S/))
  const within = Math.max(1, Math.min(column - moved, typed.length))
  return { ...problem, place: { ...problem.place, column: within } }
}

function linesOf(text: string): readonly string[] {
  return text
    .replace(/^\uFEFF/, '')
    .replaceAll(/\r\n?/g, '\n')
    .split('\n')
}

export function mendSlips(file: string, text: string): MendedText {
  const lines = linesOf(text)
  const structure = structureLines(lines)
  const keys = structure.filter(({ content }) => pairForm.test(content))
  const columns = new OpenColumns(
    keys.reduce((least, { lead }) => Math.min(least, lead.length), keys[0]?.lead.length ?? 0),
  )
  const slips: Problem[] = []
  const mended = [...lines]
  for (const { index, lead, content } of structure) {
    const tell = ({ column, message, advice }: Slip) => {
      // What is missing at the end of a line is told at its last sign.
      const within = Math.min(column + 1, lines[index]!.length)
      slips.push(errorAt({ file, line: index + 1, column: within }, message, advice))
    }
    const sign = wrongSign(content)
    if (sign !== undefined) tell({ ...sign, column: lead.length + sign.at })
    else if (lead.includes('\u00A0')) tell(hardSpaces(lead))
    const placed = columns.place({ index, column: lead.length, content: sign?.content ?? content })
    if (placed.slip !== undefined) tell(placed.slip)
    mended[index] = `${' '.repeat(placed.column)}${placed.content}`
  }
  return { text: mended.join('\n'), slips }
}

/** Copied from a web page or a word processor: it looks like a space and is none. */
function hardSpaces(lead: string): Slip {
  return {
    column: lead.indexOf('\u00A0'),
    message: 'the line begins with spaces that YAML does not know (non-breaking ones)',
    advice: 'Delete them and type spaces instead; they come along when text is copied from a page.',
  }
}
