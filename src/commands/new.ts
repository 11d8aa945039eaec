import { writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { SCHEMA_FILE, starterPlan } from '../door/plan-keys.js'
import { errorAt } from '../door/problems.js'
import { type CommandResult, resultOf } from './command-result.js'
import { schemaText } from './schema.js'

/** `oaktag new`: a commented starter plan, never over a file that is there, and beside it the schema for editors. */
export async function newCommand({
  file,
  text = starterPlan,
}: {
  readonly file: string
  readonly text?: string
}): Promise<CommandResult> {
  const failure = await write(file, text)
  if (failure !== undefined) return resultOf('', [cannotWrite(file, failure)])
  const schema = join(dirname(file), SCHEMA_FILE)
  // One that is there serves as well: it is another plan's, or hers.
  const isThere = (await write(schema, `${schemaText('plan')}\n`)) === undefined
  return resultOf(
    [
      `Wrote ${file}${isThere ? ` (and ${schema}, by which editors check it)` : ''}.`,
      `Change the words, then run: oaktag make ${file.includes(' ') ? `"${file}"` : file}`,
    ].join('\n'),
  )
}

/** The system's code for what went wrong; undefined where the file was written. */
async function write(file: string, text: string): Promise<string | undefined> {
  try {
    await writeFile(file, text, { flag: 'wx' })
    return undefined
  } catch (error) {
    return error instanceof Error && 'code' in error ? String(error.code) : 'unknown reason'
  }
}

function cannotWrite(file: string, code: string) {
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
      return errorAt(place, `cannot be written (${code})`, 'Give a name in a folder of your own.')
  }
}
