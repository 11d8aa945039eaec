import { bundledTypefaces, defaultTypeface } from '../../fonts/index.js'
import { layouts } from '../../layouts/index.js'
import { saySize } from '../geometry.js'
import { lineStyles, outlineStyles } from '../pieces/marks/styles.js'
import { borderNames } from '../pieces/parts/card-border.js'
import { takenInWords } from '../plan/keys/taken-in-words.js'
import { papers } from '../sheets/papers.js'
import { patterns } from '../words/patterns/index.js'

/** A name that a plan may use, with a line that says what it is. */
export interface NamedThing {
  readonly name: string
  readonly summary: string
  /** Of a layout: its own keys, in brackets. */
  readonly options?: string
}

export type PlanNames = ReturnType<typeof namesWith>

/** Everything that may be named in a plan, with these fonts of the teacher's own, for `oaktag list`. */
export function namesWith(ownFonts: readonly NamedThing[]) {
  return {
    papers: papers.map(({ screen, ...paper }) => ({
      name: paper.name,
      summary: screen === true ? screenSummary(paper.name) : saySize(paper),
    })),
    fonts: [...bundledTypefaces.map(describeBundled), ...ownFonts],
    patterns: patterns.map(({ name, definition }) => ({ name, summary: definition })),
    layouts: layouts.map(({ name, summary, options }) => ({
      name,
      summary,
      ...optionsNote(options),
    })),
    lines: lineStyles.map(({ name, summary }) => ({ name, summary: `${summary}${bordersNote(name)}` })),
    outlines: outlineStyles.map(({ name, summary }) => ({ name, summary })),
    borders: [
      { name: 'none', summary: 'no border' },
      ...borderNames.map(name => ({ name: name.replaceAll('-', ' '), summary: borderSummary(name) })),
    ],
  } satisfies Record<string, readonly NamedThing[]>
}

function screenSummary(name: string): string {
  const shape = name.replace('screen ', '')
  return `a picture for the board, ${shape === '16:9' ? '1920 × 1080' : '1440 × 1080'} pixels`
}

function describeBundled({
  name,
  summary,
  letterShapes,
  xHeight,
}: (typeof bundledTypefaces)[number]): NamedThing {
  const standard = name === defaultTypeface ? 'the default; ' : ''
  const shapes = `a ${letterShapes.a}, g ${letterShapes.g}`
  return { name, summary: `${standard}${summary} (${xHeightNote(xHeight)}${shapes})` }
}

export function xHeightNote(xHeight: number): string {
  return `x-height ${xHeight.toFixed(2)} of its size; `
}

/** The lines that go round a card too, so that sets are told apart. */
function bordersNote(line: string): string {
  const names = borderNames.filter(name => name.split('-')[0] === line)
  return names.length === 0
    ? ''
    : ` (also a border: ${names.map(name => name.replaceAll('-', ' ')).join(', ')})`
}

function optionsNote(options: (typeof layouts)[number]['options']): Pick<NamedThing, 'options'> {
  const notes = Object.entries(options).map(([key, reader]) => `${key}: ${takenInWords(reader.takes)}`)
  return notes.length === 0 ? {} : { options: `(${notes.join('; ')})` }
}

/** `dashed round` */
function borderSummary(name: string): string {
  const [line = '', corners] = name.split('-')
  const drawn = lineStyles.find(style => style.name === line)?.summary ?? line
  return `${drawn} round the card${corners === undefined ? '' : `; ${cornerSummaries[corners]}`}`
}

const cornerSummaries: Readonly<Record<string, string>> = {
  round: 'round corners',
  cut: 'corners cut off straight',
  ticket: 'corners that curve inwards',
}
