import { layouts } from '../../../layouts/index.js'
import type { Layout, LayoutRequest, PieceLayout } from '../../../layouts/layout.js'
import type { ColumnsAndRows } from '../../geometry.js'
import { fail, failWith, present, succeed } from '../../outcomes.js'
import { contrastProblems } from '../../pieces/marks/mark-problems.js'
import { fittingSetTitle } from '../../pieces/parts/set-mark.js'
import { measureTextLine } from '../../pieces/text/text-line.js'
import { boardTypeScale, type TypeScale, typeScale } from '../../pieces/text/type-scale.js'
import type { Typeface } from '../../pieces/typeface/typeface.js'
import { itemTitle } from '../../plan/items/item-title.js'
import type { Contrast, Division, PrintItem } from '../../plan/plan.js'
import { errorAt, type Outcome, type Problem } from '../../problems.js'
import { divideSheet, type Grid, type GridRequest, sheetSizeOf } from '../../sheets/grid.js'
import { papers } from '../../sheets/papers.js'
import type { StudiedPlan } from '../study/study-plan.js'
import { type ItemJob, sizeAsked } from './item-jobs.js'
import { stripHeightMm } from './item-strip.js'

/** An item with all that is decided before anything is drawn. */
export interface PreparedItem {
  readonly studied: StudiedPlan
  readonly job: ItemJob
  readonly layout: Layout
  readonly request: LayoutRequest
  readonly grid: Grid
  /** How the sheet was divided, for advice on other ways. */
  readonly gridRequest: GridRequest
}

export function prepareItem(studied: StudiedPlan, job: ItemJob): Outcome<PreparedItem> {
  const { plan, words, materials } = studied
  const { item, group } = job
  const marks = marksFor(studied, group)
  const layout = layouts.find(each => each.name === item.layout)!
  const opened = materials.typeface(item.font ?? group?.font ?? plan.font, item.place)
  if (!opened.ok) return opened
  const typeface = opened.value
  const missing = missingGlyphs(job, { plan, marks, typeface })
  if (missing.length > 0) return failWith(missing)
  const isOnScreen = item.paper.screen === true
  const isForScreen = papers.some(({ name, screen }) => screen === true && name === layout.paper)
  if (isOnScreen && (!isForScreen || item.orientation === 'portrait'))
    return fail(notOnScreen(item, isForScreen))
  const type = isOnScreen
    ? boardTypeScale(sizeAsked(job), typeface)
    : typeScale(sizeAsked(job), typeface, job.floorXHeightMm)
  const setTitle = group === null ? plan.title : `${plan.title} · ${group.name}`
  const wanted: LayoutRequest = {
    plan: {
      title: plan.title,
      className: plan.className,
      seed: plan.seed,
      ...present({ accent: plan.accent, taught: plan.taught }),
    },
    item,
    options: item.options,
    group: group === null ? null : { name: group.name, hasOwnWords: group.words.length > 0 },
    ...present({ earlierWords: group?.earlierWords ?? plan.earlierWords }),
    ...present({ children: group === null ? plan.children : group.children }),
    itemName: job.name,
    itemTitle: group === null ? itemTitle(item) : `${itemTitle(item)}, ${group.name}`,
    setTitle,
    shortSetTitle: setTitle,
    subtitle: [plan.title, plan.className].filter(part => part !== '').join(' · '),
    words: job.words.map(word => words.get(word)!),
    sides: (job.sides ?? []).map(side => ({ ...side, words: side.words.map(word => words.get(word)!) })),
    marks,
    marked: (item.marks ?? layout.marks) === 'all' || layout.marksSome(item.options),
    shownWithWords: layout.shownWithWords(item.options),
    typeface,
    type,
    measure: (text, sizeMm, weight) =>
      measureTextLine({ typeface, text, sizeMm, weight: weight === 700 ? 'bold' : 'regular' }),
    pictureOf: word => (word.picture === undefined ? undefined : materials.picture(word.picture)),
  }
  const gridRequest = gridRequestFor(job, layout, wanted)
  const grid = divideSheet(gridRequest)
  if (!grid.ok) return grid
  const { measure } = wanted
  const { widthMm } = grid.value.pieceSize
  const titles = job.shortSetTitles
  const shortSetTitle = fittingSetTitle({
    titles,
    copies: item.copies,
    widthMm,
    border: item.border,
    type,
    measure,
  })
  const told = layout.kind === 'pieces' ? [`set mark: ${shortSetTitle}`] : []
  const subtitle = [wanted.subtitle, ...told].filter(part => part !== '').join(' · ')
  const request = { ...wanted, shortSetTitle, subtitle }
  const value = { studied, job, layout, request, grid: grid.value, gridRequest }
  return succeed(value, [...grid.problems, ...tooFaint(value)])
}

/** About 60 pixels: a projector's edge is often cut off (our own judgement, no source). */
const SCREEN_MARGIN_MM = 16

function notOnScreen({ place, paper, layout: name }: PrintItem, isForScreen: boolean): Problem {
  return isForScreen
    ? errorAt(place, `${paper.name} lies: it cannot be turned`, 'Take "orientation" out.')
    : errorAt(
        place,
        `${paper.name} is no paper for ${name}, which children are given on paper`,
        'Choose a paper, such as letter or a4; board-pages are what is shown on a screen.',
      )
}

/** The group's own marks, or those of the plan. */
function marksFor({ marks, groupMarks }: StudiedPlan, group: ItemJob['group']): StudiedPlan['marks'] {
  return (group === null ? undefined : groupMarks.get(group)) ?? marks
}

/** Ink and ground of the item's pieces, where any are named. */
export function contrastOf({ job, studied }: Pick<PreparedItem, 'job' | 'studied'>): Contrast | undefined {
  return job.item.contrast ?? job.group?.contrast ?? studied.plan.contrast
}

/** Type and marks too faint on the colours that the item, its group or the plan asks for, told where these stand. */
function tooFaint({ job, request, studied }: PreparedItem): readonly Problem[] {
  const contrast = contrastOf({ job, studied })
  if (contrast === undefined) return []
  const { item, group } = job
  const place =
    item.contrast !== undefined
      ? item.place
      : group?.contrast !== undefined
        ? group.place
        : { file: studied.plan.file }
  return contrastProblems(contrast, request.marked ? request.marks : [], place)
}

function gridRequestFor(job: ItemJob, layout: Layout, request: LayoutRequest): GridRequest {
  const { item } = job
  const { large } = request.type
  const { paper } = item
  const orientation = paper.screen === true ? 'landscape' : item.orientation
  const marginMm = item.marginMm ?? (paper.screen === true ? SCREEN_MARGIN_MM : undefined)
  const perSheet = layout.kind !== 'pieces' ? { columns: 1, rows: 1 } : perSheetFor(layout, request.type)
  return {
    paper: item.paper,
    ...present({ orientation, marginMm }),
    gapMm: item.gapMm,
    division: layout.kind !== 'pieces' ? { kind: 'layout' } : divisionFor(job, perSheet, large),
    preferred: job.perSheet ?? perSheet,
    // Measured on the narrow side where the way the paper lies is still open: there the strip is highest.
    stripMm:
      layout.kind !== 'pieces'
        ? 0
        : stripHeightMm(request, sheetSizeOf(paper, orientation ?? 'portrait').widthMm),
    place: item.place,
  }
}

/**
 * Large print has fewer and larger pieces, on which words grow. Words of a size that the teacher names do not grow:
 * these begin with the layout's usual count, and `settleItem` finds the first that gives them room.
 */
function perSheetFor(layout: PieceLayout, { large, named }: TypeScale): ColumnsAndRows {
  return large && !named ? layout.perSheetLarge : layout.perSheet
}

/**
 * A group's large print is laid out anew: the class's count of cards a sheet holds for it only while it is no more
 * than the layout's own count for large print.
 */
function divisionFor({ item, group }: ItemJob, perSheet: ColumnsAndRows, large: boolean): Division {
  const { division } = item
  const fromGroup = large && item.size === undefined && group?.size !== undefined
  if (!fromGroup || division.kind !== 'count') return division
  const { across = 1, down = 1 } = division
  return across * down > perSheet.columns * perSheet.rows ? { kind: 'layout' } : division
}

/** A character that the face cannot draw would leave a hole in a word; better said than printed. */
function missingGlyphs(
  { words, item, group }: ItemJob,
  { plan, marks, typeface }: Pick<StudiedPlan, 'plan' | 'marks'> & { readonly typeface: Typeface },
): readonly Problem[] {
  const texts = [
    ...words.map(word => ({ text: word.text, place: word.place })),
    ...words.flatMap(({ clue, sentence, place }) =>
      [clue, sentence].flatMap(text => (text === undefined ? [] : [{ text, place }])),
    ),
    { text: itemTitle(item), place: item.place },
    ...(group === null ? [] : [{ text: group.name, place: group.place }]),
    ...[plan.title, plan.className].map(text => ({ text, place: { file: plan.file } })),
    ...marks.flatMap(({ mark: { label, tag, place } }) =>
      [label, tag].map(text => ({ text: text ?? '', place })),
    ),
  ]
  return texts.flatMap(({ text, place }) => {
    const missing = typeface.missing(text.replaceAll(/\s/g, ''))
    if (missing.length === 0) return []
    const [which, it] = missing.length === 1 ? ['which stands', 'that character'] : ['which stand', 'them']
    const named = missing.map(character => `"${character}"`).join(', ')
    return errorAt(
      place,
      `the font ${typeface.family} has no ${named}, ${which} in "${text}"`,
      `Choose another font for it, or write it without ${it}.`,
    )
  })
}
