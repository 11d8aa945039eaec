import { expect, it } from 'vitest'
import { type ItemControl, itemControls } from '../../src/oaktag.js'

const { ofAll, ofLayout } = itemControls()
const control = (list: readonly ItemControl[] | undefined, name: string) =>
  list?.find(each => each.name === name)

it('gives each key of an item the control for what it takes', () => {
  expect(control(ofAll, 'copies')).toMatchObject({ takes: 'number', least: 1, most: 500, usual: '1' })
  expect(control(ofAll, 'gap')).toMatchObject({ takes: 'length' })
  expect(control(ofAll, 'cover')).toMatchObject({ takes: 'yes or no' })
  expect(control(ofAll, 'back')).toMatchObject({ takes: 'choice', choices: expect.arrayContaining(['clue']) })
  expect(control(ofLayout.bingo, 'grid')).toMatchObject({ takes: 'grid', least: 2, most: 9 })
  expect(control(ofLayout.bingo, 'sheets')).toMatchObject({ takes: 'choice', choices: ['1', '2', '4'] })
})

it('leaves few of them to be written', () => {
  const written = [...ofAll, ...Object.values(ofLayout).flat()].filter(({ takes }) => takes === 'text')
  expect([...new Set(written.map(({ name }) => name))].sort()).toEqual([
    'card',
    'contrast',
    'font',
    'from',
    'groups',
    'name',
    'paper',
    'size',
    'sort',
    'to',
    'words',
  ])
})
