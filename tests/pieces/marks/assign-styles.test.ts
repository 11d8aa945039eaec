import { describe, expect, it } from 'vitest'
import { assignStyles } from '../../../src/pieces/marks/assign-styles.js'
import { contrastProblems } from '../../../src/pieces/marks/mark-problems.js'
import { lineNames, outlineNames } from '../../../src/pieces/marks/styles.js'
import type { PlanMark } from '../../../src/plan/plan.js'

const mark = (letters: string, looks: Partial<PlanMark> = {}): PlanMark => ({
  place: { file: 'plan.yaml', line: 4 },
  target: { kind: 'letters', letters },
  ...looks,
})
const looksOf = (marks: readonly PlanMark[]) =>
  assignStyles(marks).marks.map(({ line, outline }) => [line, outline].filter(Boolean).join(' in '))
const warnings = (marks: readonly PlanMark[]) => assignStyles(marks).problems.map(({ message }) => message)

describe('styles for marks that the teacher left open', () => {
  it('take turns under and around the letters', () => {
    expect(looksOf(['sh', 'ee', 'ar', 'mb'].map(letters => mark(letters)))).toEqual([
      'double',
      'box',
      'dotted',
      'oval',
    ])
  })

  it('never repeat one that another mark has, before or after, whatever its colour', () => {
    const looks = looksOf([
      mark('sh'),
      mark('ee', { line: 'single', color: '#00618a' }),
      mark('ar', { outline: 'box' }),
      mark('mb'),
    ])
    expect(looks).toEqual(['double', 'single', 'box', 'dotted'])
  })

  it('are all different for as many marks as there are letters twice over', () => {
    const marks = Array.from({ length: 52 }, (_, index) => mark(`x${index}`))
    const looks = looksOf(marks)
    expect(new Set(looks).size).toBe(52)
    expect(warnings(marks)).toEqual([])
  })

  it('are black', () => {
    expect(assignStyles([mark('sh')]).marks[0]).not.toHaveProperty('color')
  })

  it('leave what the teacher chose as it is', () => {
    for (const line of lineNames) expect(looksOf([mark('sh', { line })])).toEqual([line])
    for (const outline of outlineNames) expect(looksOf([mark('sh', { outline })])).toEqual([outline])
    expect(assignStyles([mark('sh', { line: 'wavy', tag: 's', color: '#00618a' })]).marks[0]).toMatchObject({
      line: 'wavy',
      tag: 's',
      color: '#00618a',
      assigned: false,
    })
  })
})

describe('warnings', () => {
  it('two marks that look the same', () => {
    expect(warnings([mark('sh', { line: 'wavy' }), mark('ee', { line: 'wavy' })])).toEqual([
      '"sh" and "ee" look the same',
    ])
  })

  it('two marks that differ by colour alone, even far apart ones', () => {
    const marks = [mark('sh', { line: 'wavy' }), mark('ee', { line: 'wavy', color: '#b00020' })]
    expect(warnings(marks)).toEqual(['"sh" and "ee" differ by colour alone'])
  })

  it('two colours that a child without green or red vision, or a grey copy, shows as one, with who', () => {
    const marks = [
      mark('sh', { line: 'wavy', color: '#8a4b00' }),
      mark('ee', { line: 'double', color: '#4a6000' }),
    ]
    const [problem, ...rest] = assignStyles(marks).problems
    expect(rest).toEqual([])
    expect(problem!.message).toContain('"sh" and "ee" fall together')
    expect(problem!.message).toContain('protan')
    expect(problem!.message).toContain('grey copy')
  })

  it('no warning for two colours that all can tell apart and a grey copy too', () => {
    const marks = [
      mark('sh', { line: 'wavy', color: '#00205b' }),
      mark('ee', { line: 'double', color: '#b35900' }),
    ]
    expect(warnings(marks)).toEqual([])
  })

  it('a colour too pale on the paper, with its contrast never rounded up', () => {
    const [message] = warnings([mark('sh', { line: 'wavy', color: '#777777' })])
    expect(message).toBe('the colour #777777 of "sh" has a contrast of 4.47 to 1 with the paper')
    expect(warnings([mark('sh', { line: 'wavy', color: '#767676' })])).toEqual([])
  })

  it('goes by the paper that is printed on', () => {
    const marks = [mark('sh', { line: 'wavy', color: '#767676' })]
    expect(assignStyles(marks, '#fff6d5').problems).toHaveLength(1)
    expect(assignStyles([mark('sh', { color: '#ffe08a' })], '#000000').problems).toEqual([])
  })

  it('calls a mark by the label the teacher gave it, at its place in the plan', () => {
    const marks = [mark('sh', { label: 'quiet sound' }), mark('ee', { line: 'single' })]
    const { problems } = assignStyles([{ ...marks[0]!, line: 'single' }, marks[1]!])
    expect(problems[0]).toMatchObject({
      severity: 'warning',
      place: { line: 4 },
      message: '"quiet sound" and "ee" look the same',
    })
  })
})

describe('type and marks on the colours that a plan asks for', () => {
  const place = { file: 'plan.yaml', line: 9 }

  it('is warned of below 7 to 1 for type', () => {
    const [problem, ...rest] = contrastProblems({ ink: '#767676', ground: '#ffffff' }, [], place)
    expect(rest).toEqual([])
    expect(problem).toMatchObject({
      place,
      message: 'type in #767676 on #ffffff has a contrast of 4.54 to 1',
    })
    expect(contrastProblems({ ink: '#595959', ground: '#ffffff' }, [], place)).toEqual([])
  })

  it('is warned of where a mark in its own colour fades into the ground', () => {
    const { marks } = assignStyles([mark('sh', { color: '#00205b' })])
    expect(contrastProblems({ ink: '#000000', ground: '#fff6d5' }, marks, place)).toEqual([])
    const [problem] = contrastProblems({ ink: '#ffffff', ground: '#000000' }, marks, place)
    expect(problem!.message).toContain('"sh"')
  })
})
