import type { Level, PlaceWished } from '../door/find.js'

export interface FindOptions {
  readonly pattern?: readonly string[] | undefined
  readonly letters?: string | undefined
  readonly place?: PlaceWished | undefined
  readonly sounds?: number | undefined
  readonly syllables?: number | undefined
  readonly level?: Level | undefined
  readonly like?: string | undefined
  readonly taught?: string | undefined
  readonly for?: string | undefined
  readonly count: number
  readonly json: boolean
}
