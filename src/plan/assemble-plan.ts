/** What was read, with the defaults filled in and earlier decisions carried over. */
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
  SpreadWish,
} from './plan.js'
import { lexiconAccent } from './settings/accent.js'
import type { ClassFile } from './settings/class-file.js'
import { taughtUntil } from './settings/weeks.js'
import { stemOf } from './stem.js'
import { paperAlone } from './values/papers.js'
import type { WeekWish } from './week/week-key.js'

export interface ReadValues {
  readonly title?: string
  readonly class?: string
  readonly seed?: number
  readonly font?: string
  readonly words: readonly PlanWord[]
  readonly marks?: readonly PlanMark[]
  readonly print: readonly PrintItem[]
  readonly groups: readonly PlanGroup[]
  readonly accent?: Accent
  readonly 'count sounds'?: CountSounds
  readonly clues?: CluesFrom
  readonly 'class file'?: ClassFile
  readonly printer?: PrinterSetting
  readonly contrast?: Contrast
  readonly spread?: SpreadWish
  readonly week?: WeekWish | undefined
  readonly children?: number
  readonly earlierWords?: readonly string[]
}

export function assembled(values: ReadValues, file: string): Plan {
  const classFile = values['class file']
  const stem = stemOf(file)
  return {
    file,
    stem,
    title: values.title ?? titleFrom(stem),
    className: values.class ?? '',
    seed: values.seed ?? 1,
    font: values.font ?? 'andika',
    words: values.words,
    marks: values.marks ?? [],
    print: values.print,
    groups: values.groups,
    accent: values.accent ?? classFile?.accent ?? lexiconAccent,
    countSounds: values['count sounds'] ?? classFile?.countSounds ?? 'as taught',
    ...present({
      classFile: classFile?.path,
      taught: classFile && taughtUntil(classFile, file),
      printer: values.printer ?? classFile?.printer,
      contrast: values.contrast,
      spread: values.spread,
      cluesFrom: values.clues,
      week: values.week && { place: values.week.place, findsMarks: values.marks === undefined },
      earlierWords: values.earlierWords,
      children: values.children ?? classFile?.children,
    }),
  }
}

/** US Letter (ANSI/ASME Y14.1, 8.5 × 11 in), where the plan and the vocabulary say nothing else. */
export function usualPaper(papers: readonly Paper[]): Paper {
  const letter = papers.find(({ name }) => name === 'letter')
  return letter ? paperAlone(letter) : { name: 'letter', widthMm: 215.9, heightMm: 279.4 }
}

/** `along-the-marsh` → `Along the marsh` */
function titleFrom(stem: string): string {
  const spaced = stem.replaceAll(/[-_\s]+/g, ' ').trim()
  return spaced === '' ? stem : spaced[0]!.toUpperCase() + spaced.slice(1)
}
