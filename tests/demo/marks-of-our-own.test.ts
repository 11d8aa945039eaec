/**
 * Which line stands for which pattern is the teacher's choice. No plan that comes with oaktag, and no style that it gives
 * out by itself, draws one line under digraphs, strikes silent letters out, or joins split spellings by a curve.
 */
import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Plan, readPlan, starterPlan } from '../../src/door/plans.js'
import { assignStyles, styleOrder } from '../../src/pieces/marks/assign-styles.js'

const demoFolder = 'src/demo/plans'
const inReadme = /```yaml\n(title: .*?)```/s.exec(readFileSync('README.md', 'utf8'))![1]!
const plans = [
  ['the starter plan', starterPlan, '.'],
  ['the plan of the README', inReadme, '.'],
  ...readdirSync(demoFolder)
    .filter(name => name.endsWith('.yaml'))
    .map(name => [name, readFileSync(`${demoFolder}/${name}`, 'utf8'), demoFolder] as const),
] as const

function planIn(text: string, folder: string): Plan {
  const plan = readPlan(text, { file: `${folder}/plan.yaml` })
  if (!plan.ok) throw new Error(plan.problems.map(({ message }) => message).join('; '))
  return plan.value
}

describe.each(plans)('%s', (_, text, folder) => {
  const plan = planIn(text, folder)
  const { marks } = assignStyles(plan.marks)

  it('has marks of its own choice', () => {
    // A week's own marks are given the default styles, which are held to it below.
    if (plan.week?.findsMarks !== true) expect(marks.length).toBeGreaterThan(1)
    const onDigraphs = marks.filter(
      ({ mark: { target } }) => target.kind === 'pattern' && target.pattern === 'consonant-digraph',
    )
    expect(onDigraphs.map(({ line }) => line)).not.toContain('single')
    expect(marks.map(({ line }) => line)).not.toContain('slash')
    expect(marks.map(({ link }) => link)).not.toContain('arc')
  })
})

describe('the styles that marks take by themselves', () => {
  it('begin elsewhere than with a single line, and hold neither a slash nor an arc', () => {
    expect(styleOrder.slice(0, 9).map(({ line }) => line)).not.toContain('single')
    expect(styleOrder.filter(({ line }) => line === 'slash' || line === 'arc')).toEqual([])
  })
})
