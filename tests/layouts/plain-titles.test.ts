import { describe, expect, it } from 'vitest'
import { layouts } from '../../layouts/index.js'
import type { PrintedItem } from '../../src/files/printed-plan.js'
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

async function printed(items: readonly string[]): Promise<readonly PrintedItem[]> {
  const made = await printAll(items, withHerons)
  if (!made.ok) throw new Error(made.problems.map(problem => problem.message).join('\n'))
  return made.value
}

const names = layouts.map(layout => layout.name).filter(name => name.includes('-'))

describe('the sheets of a plan of everything', () => {
  let everything: Promise<readonly PrintedItem[]> | undefined

  it.each(layouts.map(({ name }) => name))(
    'say what they are in plain words, never by the name of a layout or a file: %s',
    async layout => {
      // For the group alone: its titles hold those of the class.
      everything ??= printed(layouts.flatMap(exampleItems).map(item => withKeys(item, 'groups: Herons')))
      const sheets = (await everything).filter(item => item.layout === layout).flatMap(item => item.sheets)
      const lines = sheets.flatMap(said)
      expect(lines.length).toBeGreaterThan(3)
      expect(lines.filter(text => names.some(name => text.includes(name)))).toEqual([])
    },
  )
})

describe('a name that the teacher gave', () => {
  const item = withKeys('{layout: word-cards}', 'name: Our own MARSH cards')

  it('stands as she wrote it, with the group behind it', async () => {
    const sheets = (await printed([item])).flatMap(each => each.sheets)
    const text = sheets.flatMap(said).join('\n')
    expect(text).toContain('Our own MARSH cards, Herons')
    expect(text).not.toContain('Our-own-MARSH')
  })
})
