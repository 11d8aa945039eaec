import { createRequire } from 'node:module'
import { expect, test } from 'vitest'
import { packageFile } from '../../../fonts/package-file.js'

test('a file of a package is the one that Node finds', () => {
  const [name, file] = ['@fontsource/andika', 'files/andika-latin-400-normal.woff']
  expect(packageFile(name, file)).toBe(createRequire(import.meta.url).resolve(`${name}/${file}`))
})

test('a file that is not there is told as Node tells it', () => {
  expect(() => packageFile('@fontsource/andika', 'files/none.woff')).toThrow(/files\/none\.woff/)
})
