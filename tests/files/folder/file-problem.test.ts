import { describe, expect, it } from 'vitest'
import { fileProblem } from '../../../src/files/folder/file-problem.js'

/** As Node's file system reports it. */
function systemError(code: string): Error {
  return Object.assign(new Error(`${code}: no luck`), { code, syscall: 'write' })
}

describe('what the system says about a file, in plain words', () => {
  it.each([
    ['ENOSPC', 'the disk is full'],
    ['EDQUOT', 'the disk is full'],
    ['EROFS', 'this folder cannot be written to'],
    ['EACCES', 'this folder cannot be written to'],
    ['EBUSY', 'a file of the last set is open in another program'],
    ['EMFILE', 'too many files are open at once'],
    ['EIO', 'the files could not be written (EIO)'],
  ])('%s: %s', (code, message) => {
    const problem = fileProblem(systemError(code), 'out/marsh', 'posix')
    expect(problem).toMatchObject({ severity: 'error', place: { file: 'out/marsh' }, message })
    expect(problem.advice).toMatch(/\.$/)
  })

  it('never hides a fault of our own', () => {
    expect(() => fileProblem(new TypeError('x is undefined'), 'out', 'posix')).toThrow(TypeError)
  })
})
