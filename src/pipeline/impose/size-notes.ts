import { mmToPoints, sayMm } from '../../geometry.js'
import type { DrawnFaces, GroupFit, WidenedWord } from '../../pieces/faces/draw-faces.js'
import type { Face } from '../../pieces/faces/face.js'
import type { TypeScale } from '../../pieces/text/type-scale.js'
import { largePrintCaution } from '../../sheets/furniture/cautions.js'

/** How large the words of a set came out and why, in plain sentences. */
export function sizeNotes(
  { fits, widened }: Pick<DrawnFaces<Face>, 'fits' | 'widened'>,
  { large }: TypeScale,
): readonly string[] {
  return [
    ...fits.filter(fit => fit.sizeGroup === 'main').map(sizeNote),
    ...(widened.length === 0 ? [] : [widenedNote(widened)]),
    ...(large ? [largePrintCaution] : []),
  ]
}

/** What decided the size of the words. */
function sizeNote(fit: GroupFit): string {
  const points = (mm: number) => `${Math.round(mmToPoints(mm) * 4) / 4} pt`
  const size = `Words are ${points(fit.sizeMm)}`
  const decider = fit.decider()
  if (decider === undefined) return `${size}.`
  const { word, sizeWithoutMm = fit.sizeMm } = decider
  const without =
    mmToPoints(sizeWithoutMm - fit.sizeMm) < 1 ? '' : `; without it they would be ${points(sizeWithoutMm)}`
  return `${size}: "${word}" decides${without}.`
}

/** Which words were opened, so that a word that looks wider than others is no surprise. */
function widenedNote(widened: readonly WidenedWord[]): string {
  const words = [...new Set(widened.map(({ word }) => `"${word}"`))]
  const said = words.length === 1 ? words[0]! : `${words.slice(0, -1).join(', ')} and ${words.at(-1)!}`
  const added = widened.map(({ addedMm }) => addedMm)
  const [least, most] = [sayMm(Math.min(...added)), sayMm(Math.max(...added))]
  const by = least === most ? `${most} mm` : `${least} to ${most} mm`
  return `${said} ${words.length === 1 ? 'is' : 'are'} opened by ${by} in all at the edges of outlines, so that these keep off the letters beside them.`
}
