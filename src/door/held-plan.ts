/** A plan that a program holds open while it is written: looked at as far as it can be read, put on sheets, drawn by pieces. */
import { drawnSheet, type PlacedItem } from '../files/printed-plan.js'
import { present } from '../outcomes.js'
import { keepWork } from '../pipeline/kept-work.js'
import { openMaterials } from '../pipeline/study/materials.js'
import { type StudiedPlan, studyPlan } from '../pipeline/study/study-plan.js'
import { markPicture, stylePicture, wordPicture } from '../pipeline/study/word-pictures.js'
import { planVocabulary } from '../pipeline/vocabulary.js'
import type { WantedSoon } from '../pipeline/wanted-soon.js'
import { putEachOnSheets, studyPlanFile } from '../pipeline.js'
import { disk } from '../plan/disk/disk.js'
import { loadReadablePart } from '../plan/load-plan.js'
import type { PlanWord } from '../plan/plan.js'
import type { Outcome, Place, Problem } from '../problems.js'
import type { Word } from '../words/word.js'
import type { Making } from './make.js'

/** What of a plan can be seen before it is put on sheets. */
export interface LookedAtPlan {
  /**
   * Of the class and then of the groups, each with the place where it is written and as it will be printed there: an SVG;
   * without what is no word.
   */
  readonly words: readonly LookedAtWord[]
  /** A word with the plan's marks as it will be printed: an SVG. */
  readonly pictureOf: (word: Word) => string | undefined
  /** Each mark of the plan on the first word that shows it, or on letters of ours: SVGs. */
  readonly picturesOfMarks: () => readonly (string | undefined)[]
  readonly groups: readonly LookedAtGroup[]
  /** The looks of a mark under letters, in the plan's typeface: an SVG. */
  readonly pictureOfLooks: (looks: Looks) => string | undefined
}

/** A group with marks of its own. */
export interface LookedAtGroup {
  readonly place: Place
  readonly picturesOfMarks: () => readonly (string | undefined)[]
  /** With these marks. */
  readonly pictureOf: (word: Word) => string | undefined
}

export interface LookedAtWord {
  readonly word: Word
  readonly place: Place
  readonly picture: () => string | undefined
}

export interface Looks {
  readonly line?: string
  readonly outline?: string
  readonly color?: string
  readonly tag?: string
}

/** Studies a plan's words, without what is wrong in it; undefined where too little is left. */
export function lookAtPlan({
  plan: planFile,
  files = disk,
  kept = keepWork(),
}: Pick<Making, 'plan' | 'files' | 'kept'>): {
  readonly value: LookedAtPlan | undefined
  readonly problems: readonly Problem[]
} {
  const studied = studyPlanFile({ planFile, files, kept })
  if (studied.ok) return { value: lookedAt(studied.value), problems: studied.problems }
  const part = loadReadablePart(planFile, planVocabulary(), files)
  const found =
    part && studyPlan(part.plan, { ...kept, materials: openMaterials(planFile, files, kept.knownPictures) })
  const value = found?.ok ? lookedAt(found.value, part?.standIns) : undefined
  return { value, problems: studied.problems }
}

function lookedAt(
  { plan, words, marks, groupMarks, materials }: StudiedPlan,
  standIns: ReadonlySet<Place> = new Set(),
): LookedAtPlan {
  const typeface = materials.typeface(plan.font, { file: plan.file })
  const picture = (word: Word, marked: typeof marks) =>
    typeface.ok ? wordPicture(word, marked, typeface.value) : undefined
  const pictures = (marked: typeof marks, shown: readonly Word[]) => () =>
    marked.map(mark => (typeface.ok ? markPicture(mark, shown, typeface.value) : undefined))
  const studied = (list: readonly PlanWord[]) => list.flatMap(word => words.get(word) ?? [])
  const lists = [
    { words: plan.words, marks },
    ...plan.groups.map(group => ({ words: group.words, marks: groupMarks.get(group) ?? marks })),
  ]
  return {
    words: lists.flatMap(list =>
      list.words.flatMap(({ place }, index) => {
        const word = words.get(list.words[index]!)
        return word === undefined || standIns.has(place)
          ? []
          : [{ word, place, picture: () => picture(word, list.marks) }]
      }),
    ),
    pictureOf: word => picture(word, marks),
    picturesOfMarks: pictures(marks, [...words.values()]),
    groups: [...groupMarks].map(([group, own]) => ({
      place: group.place,
      picturesOfMarks: pictures(own, studied(group.words.length === 0 ? plan.words : group.words)),
      pictureOf: word => picture(word, own),
    })),
    pictureOfLooks: looks => (typeface.ok ? stylePicture(looks, typeface.value) : undefined),
  }
}

export interface Placing extends Pick<Making, 'plan' | 'files' | 'kept' | 'only' | 'watching'> {
  /** Items that are looked at, which come first and are told one by one. */
  readonly soon?: WantedSoon
}

/** Everything on its sheets and nothing drawn yet; the problems are those that `make` tells. */
export async function placePlan({
  plan: planFile,
  files,
  kept = keepWork(),
  only,
  watching,
  soon,
}: Placing): Promise<Outcome<readonly PlacedItem[]>> {
  const request = { planFile, kept, ...present({ files, only, watching, soon }) }
  const placed = await putEachOnSheets(request, ({ printed }) => printed)
  return placed.ok ? { ...placed, value: placed.value.items } : placed
}

export { collectSoonerWhileOpen } from '../pipeline/collect-sooner.js'
export { pageFonts } from '../pipeline/fonts-of-pages.js'
export { fileState } from '../plan/disk/file-state.js'
export type { PlacedItem, WantedSoon }
export { disk, drawnSheet }
