import { cpus } from 'node:os'
import type { Format } from './files/folder/item-paths.js'
import type { PrintedPlan } from './files/printed-plan.js'
import { type WrittenPlan, writePlan } from './files/write-plan.js'
import { version } from './installation.js'
import { failWith, inReadingOrder, succeed } from './outcomes.js'
import { assignStyles } from './pieces/marks/assign-styles.js'
import { type DrawnItem, drawItem } from './pipeline/draw-item.js'
import { chooseJobs, type ItemJob, itemJobs } from './pipeline/item-jobs.js'
import { prepareItem, type StudiedPlan } from './pipeline/prepare-item.js'
import { settlePictures } from './pipeline/settle-pictures.js'
import { studyPlanWords } from './pipeline/study-plan.js'
import { planVocabulary } from './pipeline/vocabulary.js'
import { loadPlan, loadReadablePart } from './plan/load-plan.js'
import type { Plan } from './plan/plan.js'
import { eachOnce, hasErrors, type Outcome, type Problem } from './problems.js'
import { openLexicon } from './words/lexicon/lexicon.js'

export interface PlanRequest {
  readonly planFile: string
  /** Instead of the plan's own seed. */
  readonly seed?: number
  /** Items to make, by name; the others of the last set stay as they are. */
  readonly only?: readonly string[]
}

export interface MakeRequest extends PlanRequest {
  readonly outFolder: string
  readonly formats: readonly Format[]
  readonly dpi: number
  /** How many files may be under way at once; the bytes do not depend on it. */
  readonly jobs?: number
}

/** The whole flow for one plan: plan → words → sets → pieces → sheets → files. */
export async function makePlan(request: MakeRequest): Promise<Outcome<WrittenPlan>> {
  const drawn = await drawPlan(request)
  if (!drawn.ok) return drawn
  const { outFolder, formats, dpi, only, jobs = cpus().length } = request
  const { plan, items } = drawn.value
  const written = await writePlan({
    printed: printedPlan(plan, items),
    outFolder,
    formats,
    dpi,
    jobs,
    version,
    ...(only === undefined ? {} : { only: items.map(item => item.printed.name) }),
  })
  return { ...written, problems: [...drawn.problems, ...written.problems] }
}

/** A plan with its items on their sheets, nothing written. */
export interface DrawnPlan {
  readonly plan: Plan
  readonly items: readonly DrawnItem[]
}

/** plan → words → sets → pieces → sheets. A plan that cannot be read is drawn as far as it can, for its problems. */
export async function drawPlan({ planFile, seed, only }: PlanRequest): Promise<Outcome<DrawnPlan>> {
  const studied = readPlan(planFile, seed)
  if (!studied.ok) {
    const problems = [...studied.problems, ...(await laterProblems(planFile))]
    return failWith(inReadingOrder(problems, planFile))
  }
  const { plan } = studied.value
  const jobs = chooseJobs(plan, only)
  if (!jobs.ok) return failWith([...studied.problems, ...jobs.problems])
  const drawn = await drawItems(studied.value, jobs.value)
  const problems = [...studied.problems, ...jobs.problems, ...drawn.problems]
  return drawn.ok ? succeed({ plan, items: drawn.value }, problems) : failWith(problems)
}

/** plan → words: reads a plan, studies its words, gives each mark its style. */
export function readPlan(planFile: string, seed?: number): Outcome<StudiedPlan> {
  const loaded = loadPlan(planFile, planVocabulary())
  if (!loaded.ok) return loaded
  const studied = studyPlan(seed === undefined ? loaded.value : { ...loaded.value, seed })
  return { ...studied, problems: [...loaded.problems, ...studied.problems] }
}

function studyPlan(plan: Plan): Outcome<StudiedPlan> {
  const words = studyPlanWords(plan, openLexicon())
  const styled = assignStyles(plan.marks, plan.contrast?.stock ? plan.contrast.ground : undefined)
  const problems = [...words.problems, ...styled.problems]
  if (!words.ok) return failWith(problems)
  return succeed({ plan, words: words.value, marks: styled.marks }, problems)
}

/** Errors of sets, pieces and sheets in what can be read of a plan that has problems already. */
async function laterProblems(planFile: string): Promise<readonly Problem[]> {
  const plan = loadReadablePart(planFile, planVocabulary())
  const studied = plan && studyPlan(plan)
  if (!studied?.ok) return []
  const drawn = await drawItems(studied.value, itemJobs(studied.value.plan).jobs)
  return drawn.problems.filter(problem => problem.severity === 'error')
}

/** words → sets → pieces → sheets: items on their sheets, nothing written; the problems of all of them. */
export async function drawItems(
  studied: StudiedPlan,
  jobs: readonly ItemJob[],
): Promise<Outcome<readonly DrawnItem[]>> {
  const problems: Problem[] = []
  const items: DrawnItem[] = []
  for (const job of jobs) {
    const prepared = prepareItem(studied, job)
    const drawn = prepared.ok ? await drawItem(prepared.value) : prepared
    const settled = drawn.ok && drawn.value !== null ? await settlePictures(drawn.value) : undefined
    problems.push(
      ...(prepared.ok ? prepared.problems : []),
      ...drawn.problems,
      ...(settled === undefined ? [] : settled.problems),
    )
    if (settled?.ok) items.push(settled.value)
  }
  const told = eachOnce(problems)
  return hasErrors(told) ? failWith(told) : succeed(items, told)
}

function printedPlan(plan: Plan, drawn: readonly DrawnItem[]): PrintedPlan {
  const { stem, title, className, seed } = plan
  const itemNames = itemJobs(plan).jobs.map(job => job.name)
  return { stem, title, className, seed, itemNames, items: drawn.map(item => item.printed) }
}
