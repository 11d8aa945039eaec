import type { CountSounds } from '../plan.js'
import { choiceReader } from '../values/names.js'

/** For the plan and the class file; what each way counts is said in words/sound-pieces.ts. */
export const readCountSounds = choiceReader<CountSounds>('a way to count sounds', [
  'as taught',
  'every phoneme',
])
