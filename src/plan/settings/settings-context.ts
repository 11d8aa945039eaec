/** What the settings of a plan or a class file are read with. */
import type { FileAccess } from '../disk/file-access.js'
import type { ValueReader } from '../keys/key.js'
import { otherNames } from '../values/other-names.js'
import type { Vocabulary } from '../vocabulary.js'
import type { WordContext } from '../words/word-entry.js'
import { fontReader } from './fonts.js'

export interface SettingsContext extends WordContext {
  readonly font: ValueReader<string>
  readonly vocabulary: Vocabulary
}

export interface SettingsFile {
  /** What it names is relative to it. */
  readonly file: string
  readonly vocabulary: Vocabulary
  readonly files: FileAccess
}

export function settingsContext({ file, vocabulary, files }: SettingsFile): SettingsContext {
  const { patterns, fonts, faultOfFont } = vocabulary
  return {
    patterns,
    files,
    file,
    otherKeys: otherNames('key', vocabulary),
    font: fontReader({ known: fonts, faultOfFont, files, namedIn: file }),
    vocabulary,
  }
}
