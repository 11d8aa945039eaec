/**
 * All that is asked of every sheet of the demo weeks. One file of tests, so that one process draws the weeks, and once:
 * drawing them takes longer than most of what is asked.
 */
import { afterAll } from 'vitest'
import { keepClearOfWords } from './clear-of-words.js'
import { forgetDemoWeeks } from './demo-sheets.js'
import { keepInkInsidePieces } from './ink-inside-pieces.js'
import { markTheirLetters } from './marks-on-their-letters.js'
import { leaveNoRemnants } from './no-remnants.js'
import { keepProofPagesSmall } from './proof-size.js'
import { readBack } from './read-back.js'

afterAll(forgetDemoWeeks)

leaveNoRemnants()
keepInkInsidePieces()
keepClearOfWords()
markTheirLetters()
keepProofPagesSmall()
readBack()
