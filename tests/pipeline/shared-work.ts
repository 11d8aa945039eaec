import { keepWork } from '../../src/pipeline/kept-work.js'

/**
 * For tests that look at what comes out of a plan: typefaces are opened, words studied and measured once for all of
 * them. A test of what is kept, or one that holds two runs against each other, makes its own with `keepWork()`.
 */
export const sharedWork = keepWork()
