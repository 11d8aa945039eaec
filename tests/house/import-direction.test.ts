import { readdirSync, readFileSync } from 'node:fs'
import { join, relative, resolve } from 'node:path'
import { describe, expect, it } from 'vitest'
import { brokenRules, importsOf, rankOf, stageOf, stages } from './import-rules.js'

const root = resolve(import.meta.dirname, '../..')

const files = ['src', 'layouts', 'fonts'].flatMap(folder =>
  readdirSync(join(root, folder), { recursive: true, withFileTypes: true })
    .filter(entry => entry.isFile() && /\.tsx?$/.test(entry.name))
    .map(entry => relative(root, join(entry.parentPath, entry.name))),
)
const sources = new Map(files.map(file => [file, readFileSync(join(root, file), 'utf8')]))
const { dependencies, devDependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
const packages = [...Object.keys(dependencies), ...Object.keys(devDependencies)]

describe('the map of the sources', () => {
  it('is kept by every import', () => {
    expect(brokenRules(sources, packages)).toEqual([])
  })

  it('has files in every stage that it names, so that no rule is about nothing', () => {
    const found = new Set(files.map(stageOf))
    expect(stages.flat().filter(stage => !found.has(stage))).toEqual([])
  })

  it('sees the imports that there are', () => {
    const imports = files.flatMap(file => importsOf(file, sources))
    expect(imports.length).toBeGreaterThan(1000)
    expect(
      imports.filter(({ target }) => target !== undefined && rankOf(target) >= 0).length,
    ).toBeGreaterThan(900)
  })
})
