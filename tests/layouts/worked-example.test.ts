import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { installationFolder } from '../../src/installation.js'

describe('the worked example of a layout in DEVELOPERS.md', () => {
  it('is the one beside this test, which the types are held against', () => {
    const guide = readFileSync(join(installationFolder, 'DEVELOPERS.md'), 'utf8')
    const shown = /```tsx\n([\s\S]*?)```/.exec(guide)?.[1]
    const file = readFileSync(join(import.meta.dirname, 'tent-cards.tsx'), 'utf8')
    expect(shown).toBe(file.replaceAll("'../../layouts/", "'./").replaceAll("'../../src/", "'../src/"))
  })
})
