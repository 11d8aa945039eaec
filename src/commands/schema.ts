import { writeFile } from 'node:fs/promises'
import { jsonSchema } from '../door/plan-keys.js'
import { errorAt } from '../door/problems.js'
import { type CommandResult, resultOf } from './command-result.js'

export interface SchemaOptions {
  readonly of: 'plan' | 'class'
  /** Where it is written; to standard output where left out. */
  readonly out?: string | undefined
}

/** `oaktag schema`: the JSON Schema of a plan, for editors. */
export async function schemaCommand({ of, out }: SchemaOptions): Promise<CommandResult> {
  const text = schemaText(of)
  if (out === undefined) return resultOf(text)
  try {
    await writeFile(out, `${text}\n`)
    return resultOf(`Wrote ${out}.`)
  } catch (error) {
    const reason = error instanceof Error && 'code' in error ? String(error.code) : 'unknown reason'
    const advice = 'Give a file in a folder of your own that is there.'
    return resultOf('', [errorAt({ file: out }, `the schema cannot be written (${reason})`, advice)])
  }
}

export function schemaText(of: SchemaOptions['of']): string {
  return JSON.stringify(jsonSchema(of === 'class' ? 'class file' : 'plan'))
}
