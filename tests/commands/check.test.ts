import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { checkCommand } from '../../src/commands/check.js'
import { folderWith } from '../pipeline/plan-folder.js'

const plan = `words: [reed, marsh, moth, frog]
print:
  - {layout: word-cards, size: large}
  - {layout: call-cards, size: large}
`

describe('what check tells of a plan', () => {
  it('says once what holds of several sets, and of each what is its own', async () => {
    const { output: out } = await checkCommand({
      plan: [join(folderWith({ 'week.yaml': plan }), 'week.yaml')],
      json: false,
    })
    expect(out.match(/The print size is a starting point/g)).toHaveLength(1)
    expect(out).toMatch(/word-cards: Words are [\d.]+ pt/)
    expect(out).toMatch(/call-cards: Words are [\d.]+ pt/)
  })
})
