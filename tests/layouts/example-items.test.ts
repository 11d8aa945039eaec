import { describe, expect, it } from 'vitest'
import { layouts } from '../../layouts/index.js'
import { examples } from './example-items.js'

describe('the example items that tests of every layout print', () => {
  it('hold some of every layout', () => {
    const without = layouts.map(layout => layout.name).filter(name => examples[name] === undefined)
    expect(
      without.map(
        name => `add "${name}" to tests/layouts/example-items.ts, with the keys that change it most`,
      ),
    ).toEqual([])
  })

  it('hold none of a layout that is not in the index', () => {
    expect(Object.keys(examples).filter(name => !layouts.some(layout => layout.name === name))).toEqual([])
  })
})
