import type { LayoutRequest } from '../../../layouts/layout.js'
import { failWith, succeed, type WithProblems, withProblems } from '../../outcomes.js'
import type { Outcome, Problem } from '../../problems.js'
import type { CardSet } from '../../sets/card-set.js'
import type { KeptStore } from '../kept-store.js'
import type { StudiedPlan } from '../study/study-plan.js'
import { askedAlready } from './asked-already.js'
import { jobWithFilledSheets } from './filled-sheet.js'
import { ignoredCopies } from './ignored-copies.js'
import type { ChosenJobs, ItemJob } from './item-jobs.js'
import { piecesMadeFrom, placesOf, withoutColours } from './made-from.js'
import { moreThanAWeek } from './more-than-a-week.js'
import { type PreparedItem, prepareItem } from './prepare-item.js'
import { blankKeys, groupsWithoutMarks, isBlankKey, unshownMarks } from './unshown-marks.js'
import { foundMarksNote, sameAsked, weekWithout } from './week-without.js'

/** An item with its cards, as the plan asks for it: whether they fit their paper is not known yet. */
export interface DealtItem {
  readonly prepared: PreparedItem
  /** No cards where the layout has no loose pieces. */
  readonly set: CardSet
  /** Whether it is to be made, or only told of on labels and checklists. */
  readonly wanted: boolean
  /** What a teacher should know of its words, in plain sentences. */
  readonly ofWords?: readonly string[]
}

/** What the deal step gives. */
export interface DealtPlan {
  readonly studied: StudiedPlan
  readonly items: readonly DealtItem[]
}

/** words → sets: which words are on which card of each item, in which order they are called. */
export function dealPlan(
  studied: StudiedPlan,
  { wanted, told }: ChosenJobs,
  sets: KeptStore<Outcome<CardSet>>,
): WithProblems<DealtPlan> {
  const tooMuch = moreThanAWeek(wanted)
  if (tooMuch.length > 0) return withProblems({ studied, items: [] }, tooMuch)
  const problems: Problem[] = []
  const blank: PreparedItem[] = []
  const all = [...wanted, ...told].flatMap((job, index): DealtItem[] => {
    const isWanted = index < wanted.length
    const dealt = dealItem(studied, job, sets)
    // What is only told of tells its own problems when it is made.
    if (isWanted) for (const problem of dealt.problems) problems.push(problem)
    if (!dealt.ok || dealt.value === null) return []
    if (!isBlankKey(dealt.value.prepared)) return [{ ...dealt.value, wanted: isWanted }]
    if (isWanted) blank.push(dealt.value.prepared)
    return []
  })
  const repeated = askedAlready(all)
  const items = all.filter(item => !repeated.has(item))
  const made = items.flatMap(item => (item.wanted ? [item.prepared] : []))
  // Marks that were found are shown by some list; that others do without them asks nothing of the teacher.
  const found = studied.plan.week?.findsMarks === true
  problems.push(...blankKeys(blank), ...(found ? [] : unshownMarks(made)), ...ignoredCopies(wanted))
  const notes: ReadonlyMap<ItemJob, string> = found ? new Map() : groupsWithoutMarks(made)
  const toldFirst = foundMarksNote(made)
  const withNotes = items.map(item => {
    const note = notes.get(item.prepared.job)
    const left = [...repeated].flatMap(([other, asked]) =>
      asked === item ? sameAsked(other.prepared.job) : [],
    )
    const ofWords = [item.prepared === made[0] ? toldFirst : [], note ?? [], left].flat()
    return ofWords.length === 0 ? item : { ...item, ofWords }
  })
  return withProblems({ studied, items: withNotes }, problems)
}

function dealItem(
  studied: StudiedPlan,
  job: ItemJob,
  sets: KeptStore<Outcome<CardSet>>,
): Outcome<Omit<DealtItem, 'wanted'> | null> {
  const prepared = prepareItem(studied, job)
  if (!prepared.ok) return prepared
  const set = dealSet(prepared.value, sets)
  const problems = [...prepared.problems, ...set.problems]
  if (set.ok)
    return succeed({ prepared: onFilledSheets(prepared.value, set.value), set: set.value }, problems)
  return leftOut(job, set.problems) ?? failWith(problems)
}

function onFilledSheets(prepared: PreparedItem, set: CardSet): PreparedItem {
  const job = jobWithFilledSheets(prepared, set)
  const filled = job && prepareItem(prepared.studied, job)
  return filled?.ok ? filled.value : prepared
}

/** The set of a layout without loose pieces, always the same one. */
const noCards: CardSet = { cards: [] }

/** The cards of an item, dealt once for the same words and options. */
export function dealSet(prepared: PreparedItem, sets: KeptStore<Outcome<CardSet>>): Outcome<CardSet> {
  const { layout } = prepared
  if (layout.kind === 'sheets') return succeed(noCards)
  const { set } = layout
  if (set === undefined) return succeed(noCards)
  const request: LayoutRequest = withoutColours(prepared.request)
  return sets.once({ parts: piecesMadeFrom(prepared), places: placesOf(prepared) }, () => set(request))
}

/**
 * What the class's words are enough for, a group's few words may not be: then nothing is made for that group, with a
 * warning. A group that the item names stays an error.
 */
function leftOut(job: ItemJob, problems: readonly Problem[]): Outcome<null> | undefined {
  const { item, group, sides } = job
  if (item.ofWeek) return succeed(null, weekWithout(job, problems))
  if (group === null || group.words.length === 0 || item.groups !== undefined) return undefined
  // One game is made for all of them or for none.
  if (sides !== undefined) return undefined
  const warnings = problems.map(problem => ({
    ...problem,
    severity: 'warning' as const,
    message: `nothing is made for ${group.name}: ${problem.message}`,
  }))
  return succeed(null, warnings)
}
