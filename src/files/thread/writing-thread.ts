import type { Discarding } from '../folder/discard-set.js'
import type { PictureToDraw, SetFiles } from '../folder/set-files.js'

/**
 * Another thread for a program that writes sets again and again: it draws pictures of pages, and does the disk's work, files that come to
 * be, come over and go. A step by itself takes less than to hand it over and to hear of it, so steps are handed over some at a time,
 * and nobody waits for each. For a run that ends with its set it does not pay to start a thread.
 */
export interface WritingThread {
  /** Starts it: it is ready some hundredths of a second later. */
  readonly start: () => void
  /** Until it is ready, and when it has ended, whoever has work for it does it. */
  readonly isReady: () => boolean
  /** For the files of one run. */
  readonly setFiles: () => SetFiles
  /**
   * Draws pages that are to be written soon, as far as there is room for them and it is ready: nothing is told of it, and what goes
   * wrong is told when they are written.
   */
  readonly drawAhead: (pictures: readonly PictureToDraw[]) => void
  /** A run has ended well: what was drawn or coded for earlier ones alone is held no longer. */
  readonly letGo: () => void
  /** The same for a run that has ended without its set, where pages were drawn ahead for it: run after run they would pile up. */
  readonly letGoAhead: () => void
  /** As `setAside`. */
  readonly setAside: (discarding: Discarding) => Promise<readonly string[]>
  /** As `removeFolder` of the file system. */
  readonly removeFolder: (path: string) => Promise<void>
  /** Ends it when all is done that was asked for; pages drawn ahead are waited for by nobody then. */
  readonly end: () => Promise<void>
}

/** The thread is gone, and it is not known what it has done. */
export class WritingThreadEnded extends Error {}
