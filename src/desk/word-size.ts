/** How large words are, as a plan writes it and as its parts: `24 pt`, `exactly x-height 6 mm`, `{ for: … }`. */
import type { Data } from './messages.js'
import { isKeys, textOf, valueAt } from './plan-values.js'

export type WordSize =
  | { readonly kind: 'normal' | 'large' }
  | { readonly kind: 'points' | 'x-height'; readonly amount: string; readonly exactly: boolean }
  | { readonly kind: 'acuity'; readonly acuity: string; readonly distance: string; readonly reserve: string }
  /** Written in another way, which stays as it is. */
  | { readonly kind: 'other'; readonly text: string }

export function readSize(value: Data | undefined): WordSize {
  if (value === undefined || value === '') return { kind: 'normal' }
  if (typeof value === 'string') return sizeInText(value)
  const child = valueAt(value, 'for')
  if (isKeys(child)) {
    const [acuity, distance, reserve] = ['acuity', 'distance', 'reserve'].map(key => textOf(child, key))
    return { kind: 'acuity', acuity: acuity ?? '', distance: distance ?? '', reserve: reserve ?? '' }
  }
  return sizeInText(`x-height ${textOf(value, 'x-height')}`)
}

function sizeInText(text: string): WordSize {
  const own = text.trim().toLowerCase()
  if (own === 'normal' || own === 'large') return { kind: own }
  const [, exactly, xHeight, amount = '', unit] =
    /^(exactly\s+)?(x[\s_-]*height\s*:?\s*)?([\d.]+)\s*(pt|points?|mm|)$/.exec(own) ?? []
  const isPoints = xHeight === undefined && /^p/.test(unit ?? '')
  const isXHeight = xHeight !== undefined && (unit === 'mm' || unit === '')
  if (!isPoints && !isXHeight) return { kind: 'other', text }
  return { kind: isPoints ? 'points' : 'x-height', amount, exactly: exactly !== undefined }
}

/** What the plan is to say; undefined where it says nothing. */
export function writtenSize(size: WordSize): Data | undefined {
  switch (size.kind) {
    case 'normal':
      return undefined
    case 'large':
      return 'large'
    case 'points':
      return `${size.exactly ? 'exactly ' : ''}${size.amount} pt`
    case 'x-height':
      return `${size.exactly ? 'exactly ' : ''}x-height ${size.amount} mm`
    case 'acuity': {
      const { acuity, distance, reserve } = size
      return { for: { acuity, distance, ...(reserve === '' ? {} : { reserve }) } }
    }
    case 'other':
      return size.text
  }
}

/** A length in centimetres, as `25 cm` or `250 mm` or `250`; undefined where it is written otherwise. */
export function centimetres(text: string): string | undefined {
  const [, amount, unit] = /^([\d.]+)\s*(cm|mm|)$/i.exec(text.trim()) ?? []
  if (amount === undefined) return text.trim() === '' ? '' : undefined
  return unit?.toLowerCase() === 'cm' ? amount : String(Math.round(Number(amount)) / 10)
}
