/** What was read, with the defaults filled in and earlier decisions carried over. */
import { basename, extname } from 'node:path'
import { present } from '../outcomes.js'
import type {
  Accent,
  CluesFrom,
  Contrast,
  CountSounds,
  Paper,
  Plan,
  PlanGroup,
  PlanMark,
  PlanWord,
  PrinterSetting,
  PrintItem,
} from './plan.js'
import { lexiconAccent } from './settings/accent.js'
import { type ClassFile, withEarlier } from './settings/class-file.js'
import type { ReadGroup } from './settings/groups.js'
import { paperAlone } from './values/papers.js'
import { eachWordOnce, sameWord } from './words/word-text.js'

export interface ReadValues {
  readonly title?: string
  readonly class?: string
  readonly seed?: number
  readonly font?: string
  readonly words: readonly PlanWord[]
  readonly marks?: readonly PlanMark[]
  readonly print: readonly PrintItem[]
  readonly groups?: readonly ReadGroup[]
  readonly accent?: Accent
  readonly 'count sounds'?: CountSounds
  readonly clues?: CluesFrom
  readonly 'class file'?: ClassFile
  readonly printer?: PrinterSetting
  readonly contrast?: Contrast
}

export function assembled(values: ReadValues, file: string): Plan {
  const classFile = values['class file']
  const fromClass = classFile?.words ?? new Map<string, PlanWord>()
  const words = values.words.map(word => withEarlier(word, fromClass))
  // A group's plain word is the class's word: its clue and sounds need not be written twice.
  const fromPlan = new Map([...fromClass, ...words.map(word => [sameWord(word.text), word] as const)])
  const groups = (values.groups ?? []).map(({ moreWords, ...group }): PlanGroup => {
    const own = [...group.words, ...(moreWords ?? [])].map(word => withEarlier(word, fromPlan))
    return { ...group, words: moreWords === undefined ? own : eachWordOnce([...words, ...own]) }
  })
  const stem = stemOf(file)
  return {
    file,
    stem,
    title: values.title ?? titleFrom(stem),
    className: values.class ?? '',
    seed: values.seed ?? 1,
    font: values.font ?? 'andika',
    words,
    marks: values.marks ?? [],
    print: values.print,
    groups,
    accent: values.accent ?? classFile?.accent ?? lexiconAccent,
    countSounds: values['count sounds'] ?? classFile?.countSounds ?? 'as taught',
    ...present({
      classFile: classFile?.path,
      taught: classFile?.taught,
      printer: values.printer ?? classFile?.printer,
      contrast: values.contrast,
      cluesFrom: values.clues,
    }),
  }
}

/** US Letter (ANSI/ASME Y14.1, 8.5 × 11 in), where the plan and the vocabulary say nothing else. */
export function usualPaper(papers: readonly Paper[]): Paper {
  const letter = papers.find(({ name }) => name === 'letter')
  return letter ? paperAlone(letter) : { name: 'letter', widthMm: 215.9, heightMm: 279.4 }
}

/** Names the output folder: never empty, never `.` or `..`; of a plan on standard input it is `plan`. */
export function stemOf(file: string): string {
  const stem = basename(file, extname(file)).replace(/^\.+/, '').trim()
  return stem === '' || stem === 'standard input' ? 'plan' : stem
}

/** `along-the-marsh` → `Along the marsh` */
function titleFrom(stem: string): string {
  const spaced = stem.replaceAll(/[-_\s]+/g, ' ').trim()
  return spaced === '' ? stem : spaced[0]!.toUpperCase() + spaced.slice(1)
}
