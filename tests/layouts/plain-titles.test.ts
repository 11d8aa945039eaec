import { describe, expect, it } from 'vitest'
import { layouts } from '../../layouts/index.js'
import type { Sheet } from '../../src/sheets/sheet.js'
import { exampleItems, withKeys } from './example-items.js'
import { marshWithClues, printAll } from './print-item.js'

const withHerons = marshWithClues.replace(
  'print:\n',
  'groups:\n  - {name: Herons, words: [reed, marsh, leaf, perch, moth, thrush, frog, spring, gnat, wren]}\nprint:\n',
)

/** Everything that can be read on a sheet or is read aloud of it. */
function said({ title, pieces, furniture }: Sheet): readonly string[] {
  const arts = [...pieces.flatMap(({ piece }) => piece.art), ...furniture]
  return [title, ...arts.flatMap(({ art }) => art.text.map(run => run.text))]
}

async function sheetsOf(item: string): Promise<readonly Sheet[]> {
  const printed = await printAll(['{layout: word-cards, name: told of}', item], withHerons)
  if (!printed.ok) throw new Error(printed.problems.map(problem => problem.message).join('\n'))
  return printed.value.flatMap(({ sheets }) => sheets)
}

const names = layouts.map(layout => layout.name).filter(name => name.includes('-'))

describe.each(layouts.flatMap(exampleItems))('the sheets of %s', item => {
  it('say what they are in plain words, never by the name of a layout or a file', async () => {
    const found = (await sheetsOf(item)).flatMap(said).filter(text => names.some(name => text.includes(name)))
    expect(found).toEqual([])
  })
})

describe('a name that the teacher gave', () => {
  const item = withKeys('{layout: word-cards}', 'name: Our own MARSH cards')

  it('stands as she wrote it, with the group behind it', async () => {
    const text = (await sheetsOf(item)).flatMap(said).join('\n')
    expect(text).toContain('Our own MARSH cards, Herons')
    expect(text).not.toContain('Our-own-MARSH')
  })
})
