import { PIXELS_PER_SCREEN_INCH } from '../../geometry.js'
import type { Paper } from '../../plan/plan.js'

/** Pixels an inch in which a page is drawn: a screen's page has as many as its shape says, however fine is printed. */
export function dpiOf({ screen }: Paper, printedDpi: number): number {
  return screen === true ? PIXELS_PER_SCREEN_INCH : printedDpi
}
