/** How far backs are moved, as a plan writes it: `1.2 mm right, 0.8 mm down`. */
import type { Data } from './messages.js'
import { isKeys, textOf } from './plan-values.js'

export interface BackShift {
  readonly rightMm: number
  readonly downMm: number
}

export interface ReadShift {
  /** Undefined where it is written in another way, as in inches: that stays as it is. */
  readonly shift: BackShift | undefined
  /** As it is written. */
  readonly text: string
  /** Between braces YAML cuts it off at the comma: what follows stands as a key with nothing behind it. */
  readonly isCutOff: boolean
}

export function readShift(printer: Data | undefined): ReadShift {
  const cut = isKeys(printer)
    ? Object.entries(printer).flatMap(([key, value]) => (value === '' && /\d/.test(key) ? [key] : []))
    : []
  const text = [textOf(printer, 'back shift'), ...cut].filter(part => part !== '').join(', ')
  const shift = { rightMm: 0, downMm: 0 }
  const isRead = text.split(/\s*,\s*|\s+and\s+/).every(part => {
    if (part === '') return true
    const [, amount, unit, way = ''] =
      /^([\d.]+)\s*(mm|cm|)\s*(?:to the )?(right|left|up|down)$/i.exec(part) ?? []
    const mm = Math.round(Number(amount) * (unit?.toLowerCase() === 'cm' ? 10 : 1) * 100) / 100
    if (/^(?:right|left)$/i.test(way)) shift.rightMm = /left/i.test(way) ? -mm : mm
    else shift.downMm = /up/i.test(way) ? -mm : mm
    return Number.isFinite(mm)
  })
  return { shift: isRead ? shift : undefined, text, isCutOff: cut.length > 0 }
}

export function writtenShift({ rightMm, downMm }: BackShift): string {
  const part = (mm: number, ahead: string, back: string) =>
    mm === 0 ? [] : [`${Math.abs(mm)} mm ${mm > 0 ? ahead : back}`]
  return [...part(rightMm, 'right', 'left'), ...part(downMm, 'down', 'up')].join(', ')
}
