import { bundledTypefaces as registered } from '../../fonts/index.js'
import { loadTypeface } from '../../fonts/load-typeface.js'
import type { Typeface } from '../../src/pieces/typeface/typeface.js'

export function bundledTypeface(name: string): Typeface {
  const loaded = loadTypeface({ name, place: { file: 'plan.yaml' } })
  if (!loaded.ok) throw new Error(`the bundled typeface ${name} does not load`)
  return loaded.value
}

export const bundledTypefaces: readonly Typeface[] = registered.map(({ name }) => bundledTypeface(name))
