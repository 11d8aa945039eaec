import { bundledTypefaces, defaultTypeface } from '../../fonts/index.js'
import { droppedInTypefaces, loadTypeface } from '../../fonts/load-typeface.js'
import { layouts } from '../../layouts/index.js'
import { saySize } from '../geometry.js'
import { lineStyles, outlineStyles } from '../pieces/marks/styles.js'
import { borderNames } from '../pieces/parts/card-border.js'
import { letterShapesOf } from '../pieces/typeface/letter-shapes.js'
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

/** Everything that may be named in a plan, for `oaktag list`. */
export function planNames() {
  return {
    papers: papers.map(({ name, widthMm, heightMm }) => ({ name, summary: saySize({ widthMm, heightMm }) })),
    fonts: [...bundledTypefaces.map(describeBundled), ...droppedInTypefaces().map(describeDropped)],
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

function describeBundled({ name, summary, letterShapes }: (typeof bundledTypefaces)[number]): NamedThing {
  const standard = name === defaultTypeface ? 'the default; ' : ''
  const shapes = `a ${letterShapes.a}, g ${letterShapes.g}`
  return { name, summary: `${standard}${summary} (${xHeight(name)}${shapes})` }
}

function describeDropped(name: string): NamedThing {
  const typeface = loadTypeface({ name, place: { file: name } })
  if (!typeface.ok) return { name, summary: 'a font of your own in fonts/, which cannot be read' }
  const { a, g } = letterShapesOf(typeface.value)
  return {
    name,
    summary: `a font of your own in fonts/ (${xHeight(name)}a ${a}, g ${g}, told from its outlines)`,
  }
}

/** The share of the type size that the letter x is high: what makes one typeface look larger than another. */
function xHeight(name: string): string {
  const typeface = loadTypeface({ name, place: { file: name } })
  return typeface.ok ? `x-height ${typeface.value.metrics.xHeight.toFixed(2)} of its size; ` : ''
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
