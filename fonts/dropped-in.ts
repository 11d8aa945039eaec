/** The fonts that a teacher has dropped into `fonts/`, by their files' names alone: none is opened. */
import { existsSync, readdirSync } from 'node:fs'
import { join } from 'node:path'
import { installationFolder } from '../src/installation.js'

export const droppedInFolder = join(installationFolder, 'fonts')
export const fontEnding = /\.(ttf|otf|woff)$/i

/** Their names, without their endings. */
export function droppedInTypefaces(): readonly string[] {
  return droppedInFiles().map(file => file.replace(fontEnding, ''))
}

export function droppedInFiles(): readonly string[] {
  if (!existsSync(droppedInFolder)) return []
  return readdirSync(droppedInFolder)
    .filter(file => fontEnding.test(file))
    .sort()
}
