import { readdirSync, readFileSync } from 'node:fs'
import { dirname, join, relative, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'

const root = resolve(import.meta.dirname, '..')

/** Left to right: a stage may import itself and what stands left of it. */
const stages = [
  ['installation', 'geometry', 'problems', 'outcomes'],
  ['plan'],
  ['words'],
  ['sets'],
  ['pieces'],
  ['sheets'],
  ['files'],
  ['layouts', 'fonts'],
  ['pipeline'],
  ['cli', 'commands', 'demo'],
]

/** `src/words/word.ts` → `words`; `layouts/bingo.tsx` → `layouts`; `src/geometry.ts` → `geometry`. */
function stageOf(file: string): string {
  const parts = relative(root, file).split('/')
  const name = parts[0] === 'src' ? parts[1]! : parts[0]!
  return name.replace(/\.tsx?$/, '')
}

function sourceFiles(folder: string): string[] {
  return readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map(entry => join(entry.parentPath, entry.name))
}

function relativeImports(file: string): string[] {
  const source = readFileSync(file, 'utf8')
  return [...source.matchAll(/(?:from|import)\s*\(?\s*'(\.[^']+)'/g)].map(match =>
    resolve(dirname(file), match[1]!),
  )
}

const files = ['src', 'layouts', 'fonts'].flatMap(sourceFiles)
const rank = (stage: string): number => stages.findIndex(names => names.includes(stage))

describe('imports point one way', () => {
  it('knows the stage of every source file', () => {
    expect(files.filter(file => rank(stageOf(file)) < 0)).toEqual([])
  })

  it('lets a stage import only what stands left of it', () => {
    const wrong = files.flatMap(file =>
      relativeImports(file)
        .filter(target => rank(stageOf(target)) > rank(stageOf(file)))
        .map(target => `${relative(root, file)} imports ${relative(root, target)}`),
    )
    expect(wrong).toEqual([])
  })

  it('keeps layouts and fonts apart from each other, and from every stage but the pipeline', () => {
    const wrong = files.flatMap(file =>
      relativeImports(file)
        .filter(target => ['layouts', 'fonts'].includes(stageOf(target)))
        .filter(target => stageOf(file) !== stageOf(target) && stageOf(file) !== 'pipeline')
        .map(target => `${relative(root, file)} imports ${relative(root, target)}`),
    )
    expect(wrong).toEqual([])
  })
})
