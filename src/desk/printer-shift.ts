/** How far backs are moved, as a plan writes it: `1.2 mm right, 0.8 mm down`. */
import type { Data } from './messages.js'
import { isKeys, textOf } from './plan-values.js'

export interface BackShift {
  readonly rightMm: number
  readonly downMm: number
}

const mmIn: Readonly<Record<string, number>> = { '': 1, mm: 1, cm: 10, in: 25.4, pt: 25.4 / 72 }

/** Between braces YAML cuts it off at the comma: what follows stands as a key with nothing behind it. */
export function readShift(printer: Data | undefined): {
  readonly shift: BackShift
  readonly isCutOff: boolean
} {
  const form = /([\d.]+)\s*(mm|cm|in|pt|)\s*(?:to the )?(right|left|up|down)/gi
  const cut = isKeys(printer)
    ? Object.entries(printer).flatMap(([key, value]) => (value === '' ? [key] : []))
    : []
  const shift = { rightMm: 0, downMm: 0 }
  for (const [, amount, unit = '', to = ''] of [textOf(printer, 'back shift'), ...cut]
    .join(', ')
    .matchAll(form)) {
    const mm = Math.round(Number(amount) * (mmIn[unit.toLowerCase()] ?? 1) * 100) / 100
    const way = to.toLowerCase()
    if (way === 'right' || way === 'left') shift.rightMm = way === 'left' ? -mm : mm
    else shift.downMm = way === 'up' ? -mm : mm
  }
  return { shift, isCutOff: cut.length > 0 }
}

export function writtenShift({ rightMm, downMm }: BackShift): string {
  const part = (mm: number, ahead: string, back: string) =>
    mm === 0 ? [] : [`${Math.abs(mm)} mm ${mm > 0 ? ahead : back}`]
  return [...part(rightMm, 'right', 'left'), ...part(downMm, 'down', 'up')].join(', ')
}
