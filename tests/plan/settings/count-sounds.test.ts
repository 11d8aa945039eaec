import { describe, expect, it } from 'vitest'
import { adviceFor, filesInMemory, planOf, problemsOf, weekOf } from '../reading.js'

const counting = (way: string) => weekOf(['reed'], `count sounds: ${way}\n`)
const fromClass = (more: string) => weekOf(['reed'], `class file: room-7.yaml\n${more}`)
const classFile = (text: string) => filesInMemory({ 'room-7.yaml': text })

describe('what a class counts as a sound', () => {
  it.each([
    ['as taught', 'as taught'],
    ['every phoneme', 'every phoneme'],
    ['Every_Phoneme', 'every phoneme'],
  ])('count sounds: %s', (written, meant) => {
    expect(planOf(counting(written)).countSounds).toBe(meant)
  })

  it('is as taught where nothing is said', () => {
    expect(planOf(weekOf(['reed'])).countSounds).toBe('as taught')
  })

  it('may stand in the class file, and gives way to the plan', () => {
    const files = classFile('count sounds: every phoneme\n')
    expect(planOf(fromClass(''), files).countSounds).toBe('every phoneme')
    expect(planOf(fromClass('count sounds: as taught\n'), files).countSounds).toBe('as taught')
  })

  it('is refused where it is no such way, with its place and the two ways', () => {
    expect(problemsOf(counting('letters'))).toEqual([
      'week.yaml:5:15: error: unknown way to count sounds "letters"',
    ])
    expect(adviceFor(counting('letters'))).toEqual([
      expect.stringContaining('It can be as taught or every phoneme.'),
    ])
    expect(problemsOf(counting('[as taught]'))).toEqual([
      'week.yaml:5:15: error: expected the name of a way to count sounds, found a list',
    ])
  })

  it('is refused in the class file at its place there', () => {
    expect(problemsOf(fromClass(''), classFile('count sounds: letters\n'))).toEqual([
      'room-7.yaml:1:15: error: unknown way to count sounds "letters"',
    ])
  })
})
