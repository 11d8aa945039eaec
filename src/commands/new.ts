import { writeFile } from 'node:fs/promises'
import { starterPlan } from '../door/plans.js'
import { errorAt } from '../door/problems.js'
import { type CommandResult, resultOf } from './command-result.js'

/** `oaktag new`: a commented starter plan, never over a file that is there. */
export async function newCommand({ file }: { readonly file: string }): Promise<CommandResult> {
  try {
    await writeFile(file, starterPlan, { flag: 'wx' })
  } catch (error) {
    return resultOf('', [cannotWrite(file, (error as NodeJS.ErrnoException).code)])
  }
  return resultOf(`Wrote ${file}. Change the words, then run: oaktag make ${file}`)
}

function cannotWrite(file: string, code: string | undefined) {
  const place = { file }
  switch (code) {
    case 'EEXIST':
      return errorAt(
        place,
        'this file is there already, and is left as it is',
        'Give another name: oaktag new FILE.',
      )
    case 'ENOENT':
      return errorAt(place, 'its folder does not exist', 'Make the folder first, or give another name.')
    default:
      return errorAt(
        place,
        `cannot be written (${code ?? 'unknown reason'})`,
        'Give a name in a folder of your own.',
      )
  }
}
