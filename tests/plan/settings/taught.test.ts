import { describe, expect, it } from 'vitest'
import { readTaughtFile } from '../../../src/plan/settings/taught.js'
import { filesInMemory, planOf, problemsOf } from '../reading.js'

const plan = 'class file: room-7.yaml\nwords: [reed]\nprint: [key]\n'
const taughtBy = (list: string) => planOf(plan, filesInMemory({ 'room-7.yaml': `taught:${list}\n` })).taught
const shown = (list: string) =>
  taughtBy(list)?.map(entry =>
    entry.kind === 'pattern' ? entry.pattern : [entry.letters, entry.asIn].filter(Boolean).join(' as in '),
  )

describe('what a class file says is taught', () => {
  it('is patterns in any spelling, letters, and letters as in a word', () => {
    expect(shown(' [Silent_E, sh, a_e, ea as in Sea, -nch, ship]')).toEqual([
      'silent-e',
      'sh',
      'a_e',
      'ea as in sea',
      'nch',
      'ship',
    ])
  })

  it('may be one thing, or several with commas between', () => {
    expect(shown(' silent e')).toEqual(['silent-e'])
    expect(shown('\n  - sh, th, ch\n  - vowel team')).toEqual(['sh', 'th', 'ch', 'vowel-team'])
    expect(shown('')).toEqual([])
  })

  it.each([
    ['vowel-teem', '"vowel-teem" is no pattern, no letters and no word'],
    ['vowel teams', '"vowel teams" is no pattern, no letters and no word'],
    ['s3', '"s3" is no pattern, no letters and no word'],
    ['a_b_c', '"a_b_c" is no pattern, no letters and no word'],
  ])('"%s" is refused, at its place', (line, message) => {
    expect(problemsOf(plan, filesInMemory({ 'room-7.yaml': `taught:\n  - ${line}\n` }))).toEqual([
      `room-7.yaml:2:5: error: ${message}`,
    ])
  })
})

describe('a file of what is taught', () => {
  const read = (text: string) =>
    readTaughtFile({
      path: 'taught.txt',
      files: filesInMemory({ 'taught.txt': text }),
      patterns: ['vowel-team'],
    })

  it('has one thing a line, notes behind a #', () => {
    expect(read('# so far\nvowel team\n\nsh  # week 2\n')).toMatchObject({
      value: [
        { kind: 'pattern', pattern: 'vowel-team', place: { file: 'taught.txt', line: 2 } },
        { kind: 'letters', letters: 'sh', place: { file: 'taught.txt', line: 4 } },
      ],
    })
  })

  it('that holds nothing is refused', () => {
    expect(read('# nothing yet\n')).toMatchObject({
      ok: false,
      problems: [{ message: 'the list of what is taught is empty' }],
    })
  })
})
