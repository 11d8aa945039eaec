import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { openTables } from '../../../src/words/tables/installed-tables.js'
import { packTables, tablesIn } from '../../../src/words/tables/packed-tables.js'

describe('packed tables', () => {
  test('give back the rows of each, letters of all kinds', () => {
    const field = fc.stringMatching(/^[^\t\n\r]{1,12}$/)
    const rows = fc.array(fc.array(field, { minLength: 1, maxLength: 3 }), { maxLength: 5 })
    const name = fc.stringMatching(/^[a-z]{1,6}\/[a-z-]{1,12}$/)
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.tuple(name, rows), { selector: ([each]) => each, maxLength: 6 }),
        tables => {
          const packed = tablesIn(packTables(new Map(tables)))
          expect(packed.names).toEqual(tables.map(([each]) => each))
          for (const [each, written] of tables) {
            expect(packed.rowsOf(each)).toEqual(written)
            expect(packed.wordsOf(each)).toEqual(written.map(([word]) => word))
            for (const [word = ''] of written) {
              const longer = written.find(([first, ...more]) => first === word && more.length > 0)
              expect(packed.rowBeginning(each, word)).toEqual(longer)
            }
          }
        },
      ),
    )
  })

  test('find a row by its first field as a whole', () => {
    const birds = [
      ['teal', 'a small duck'],
      ['swan', 'large, and white'],
      ['teal-like', 'none'],
    ]
    const packed = tablesIn(
      packTables(
        new Map([
          ['birds/ducks', birds],
          ['birds/geese', [['swan', 'no']]],
        ]),
      ),
    )
    expect(packed.rowBeginning('birds/ducks', 'swan')).toEqual(birds[1])
    expect(packed.rowBeginning('birds/ducks', 'teal-like')).toEqual(birds[2])
    expect(packed.rowBeginning('birds/ducks', 'tea')).toBeUndefined()
    expect(packed.rowBeginning('birds/ducks', 'wan')).toBeUndefined()
    expect(packed.rowBeginning('birds/geese', 'teal')).toBeUndefined()
  })

  test('a table that is not there says what to do', () => {
    const packed = tablesIn(packTables(new Map([['birds/ducks', [['teal']]]])))
    expect(() => packed.rowsOf('birds/geese')).toThrow(
      'There is no table "birds/geese". Run "npm run build" to pack it.',
    )
  })

  test('a missing file says what to do', () => {
    expect(() => openTables('/nowhere/tables.bin')).toThrow(/Run "npm run build"/)
  })

  test('a file of another version says what to do', () => {
    expect(() => tablesIn(Buffer.from('something else, and long enough'))).toThrow(/Run "npm run build"/)
  })
})
