import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it, onTestFinished } from 'vitest'
import { type MakeAgain, watchPlans } from '../../../src/commands/watch/watch-plans.js'
import { folderWith } from '../../pipeline/plan-folder.js'

const LIMIT = 1e6

/** Watches a plan whose runs are these, and gives what was told of them; the last one ends the watching. */
async function toldOf(file: string, runs: readonly MakeAgain[]): Promise<readonly string[]> {
  const told: string[] = []
  const controller = new AbortController()
  onTestFinished(() => controller.abort())
  const left = [...runs]
  await watchPlans({
    plans: [{ file, stem: 'week', folder: join(file, '../out/week') }],
    make: (...given) => left.shift()!(...given),
    tell: async ({ output, problems }) => {
      told.push(output + problems)
      if (output.startsWith('Watching')) writeFileSync(file, 'words: [reed, ')
      if (left.length === 0) controller.abort()
    },
    signal: controller.signal,
  })
  return told.filter(each => !each.startsWith('Watching'))
}

const gives =
  (output: string, exitCode: 0 | 1 = 0): MakeAgain =>
  async ({ file }, _kept, files) => {
    files.read(file, LIMIT)
    return { output, problems: '', exitCode }
  }

describe('a plan that is saved in two goes', () => {
  it('is not put in place as it was between them, nor told', async () => {
    const file = join(folderWith({ 'week.yaml': 'words: [reed]' }), 'week.yaml')
    let wasPutInPlace = false
    const half: MakeAgain = async (_plan, _kept, files, { signal, beforeInPlace }) => {
      files.read(file, LIMIT)
      writeFileSync(file, 'words: [reed, marsh]')
      wasPutInPlace = await beforeInPlace!().then(
        () => true,
        () => false,
      )
      return { output: `half, ${signal!.aborted ? 'stopped' : 'not stopped'}`, problems: '', exitCode: 0 }
    }
    expect(await toldOf(file, [gives('first'), half, gives('whole')])).toEqual(['first', 'whole'])
    expect(wasPutInPlace).toBe(false)
  })

  it('is not called broken for what it was between them', async () => {
    const file = join(folderWith({ 'week.yaml': 'words: [reed]' }), 'week.yaml')
    const half: MakeAgain = async (...given) => {
      const result = await gives('a bracket is never closed', 1)(...given)
      writeFileSync(file, 'words: [reed, marsh]')
      return result
    }
    expect(await toldOf(file, [gives('first'), half, gives('whole')])).toEqual(['first', 'whole'])
  })

  it('that is at rest is put in place', async () => {
    const file = join(folderWith({ 'week.yaml': 'words: [reed]' }), 'week.yaml')
    const whole: MakeAgain = async (...given) => {
      const result = await gives('whole')(...given)
      await given[3].beforeInPlace!()
      return result
    }
    expect(await toldOf(file, [gives('first'), whole])).toEqual(['first', 'whole'])
  })
})
