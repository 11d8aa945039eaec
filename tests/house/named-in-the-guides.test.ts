import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { glob } from 'tinyglobby'
import { describe, expect, it } from 'vitest'
import { installationFolder } from '../../src/installation.js'

/** What the build writes, and what stands for any name. */
const notInTheRepository = /^\.build\/|^out\/|^offered-words\.txt$|[<>*{]/
const files = await glob('**', {
  cwd: installationFolder,
  dot: true,
  ignore: ['**/node_modules/**', '.git/**', '.build/**', 'out/**'],
})
const code = files
  .filter(file => /^(src|layouts|fonts|tests|\.config)\/.*\.(ts|tsx|cts|mjs)$/.test(file))
  .map(file => readFileSync(join(installationFolder, file), 'utf8'))
  .join('\n')

/** Everything that stands between backticks in a guide, outside of blocks of code. */
function quoted(guide: string): readonly string[] {
  const text = readFileSync(join(installationFolder, guide), 'utf8').replaceAll(/```[\s\S]*?```/g, '')
  return [...text.matchAll(/`([^`\n]+)`/g)].map(([, part]) => part!)
}

function stands(path: string): boolean {
  return path.endsWith('/')
    ? files.some(file => `/${file}`.includes(`/${path}`))
    : files.some(file => file === path || file.endsWith(`/${path}`))
}

describe.each(['DEVELOPERS.md', 'README.md'])('%s', guide => {
  it('names no file or folder that is not there', () => {
    const paths = quoted(guide)
      .flatMap(part => part.split(/[\s,]+/))
      .filter(part => /^[\w./-]*\w(\.(ts|tsx|cts|mjs|tsv|txt|json|md)|\/)$/.test(part))
      .filter(part => !notInTheRepository.test(part))
    expect(paths.filter(path => !stands(path))).toEqual([])
  })
})

describe('DEVELOPERS.md', () => {
  it('names nothing in the code that is not there', () => {
    const names = quoted('DEVELOPERS.md').flatMap(part => part.match(/\b[a-z]+[A-Z]\w*\b/g) ?? [])
    // Node's own, of a version that is not asked for.
    expect(names.filter(name => !code.includes(name) && name !== 'enableCompileCache')).toEqual([])
  })
})
