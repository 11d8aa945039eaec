/** How far a run is, and whether it is to stop: asked between two items, never within one. */

export interface Progress {
  readonly step: 'laid out' | 'written'
  /** The item's name. */
  readonly item: string
  readonly done: number
  /** Over both steps. */
  readonly of: number
}

export interface Watching {
  readonly onProgress?: (progress: Progress) => void
  /** Aborted where the run is to stop and leave all as it was. */
  readonly signal?: AbortSignal
  /** Awaited before what was made takes the place of the last set, which stays where this is rejected. */
  readonly beforeInPlace?: () => Promise<void>
}

/** Tells of an item, and lets the rest of the program (a key that is pressed) have its turn. */
export async function tellAndTakeTurns(watching: Watching, progress: Progress): Promise<void> {
  watching.onProgress?.(progress)
  await new Promise(resolve => setImmediate(resolve))
  watching.signal?.throwIfAborted()
}
