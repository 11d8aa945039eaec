import { copyFileSync, mkdtempSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { loadTypeface } from '../../../fonts/load-typeface.js'

const place = { file: 'plan.yaml', line: 3, column: 7 }
const folder = mkdtempSync(join(tmpdir(), 'oaktag-font-'))
copyFileSync(
  createRequire(import.meta.url).resolve('@fontsource/lexend/files/lexend-latin-400-normal.woff'),
  join(folder, 'Reedbed-Regular.woff'),
)
writeFileSync(join(folder, 'broken.ttf'), 'no font at all')

describe('the face that a plan names', () => {
  it('is found by its name, capitals or not', () => {
    const loaded = loadTypeface({ name: 'Andika', place })
    expect(loaded.ok && loaded.value.family).toBe('Andika')
  })

  it('may be a path beside the plan', () => {
    const loaded = loadTypeface({ name: 'Reedbed-Regular.woff', place, folder })
    expect(loaded.ok && loaded.value.family).toBe('Reedbed')
  })

  it('is opened once', () => {
    const [first, second] = [loadTypeface({ name: 'andika', place }), loadTypeface({ name: 'andika', place })]
    expect(first.ok && second.ok && first.value === second.value).toBe(true)
  })

  it('is an error where there is none of that name, with the nearest one', () => {
    const loaded = loadTypeface({ name: 'andica', place })
    expect(loaded).toMatchObject({ ok: false, problems: [{ severity: 'error', place }] })
    expect(loaded.problems[0]!.advice).toContain('andika')
  })

  it('is an error where the file is not there', () => {
    const loaded = loadTypeface({ name: 'fonts/Reedmace.ttf', place, folder })
    expect(loaded.problems.map(({ message }) => message)).toEqual([
      'the font file "fonts/Reedmace.ttf" is not there',
    ])
  })

  it('is an error where the file cannot be read as a font', () => {
    const loaded = loadTypeface({ name: 'broken.ttf', place, folder })
    expect(loaded).toMatchObject({ ok: false, problems: [{ severity: 'error', place }] })
    expect(loaded.problems[0]!.message).toContain('broken.ttf')
  })
})
