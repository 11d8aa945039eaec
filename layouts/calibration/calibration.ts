import { succeed } from '../../src/outcomes.js'
import { pageRoom } from '../../src/sheets/grid.js'
import { defineLayout } from '../layout.js'
import { calibrationSheets } from './calibration-sheets.js'

/** A sheet to print on both sides, from which a teacher reads how far her printer misses on backs. */
export const calibration = defineLayout({
  kind: 'sheets',
  name: 'calibration',
  summary: 'a sheet to print on both sides, to see how far backs miss their fronts on your printer',
  inWeek: { day: 'storing', given: 'once' },
  options: {},
  marks: 'none',
  sheets: (_request, { grid, lettering }) =>
    succeed(calibrationSheets({ lettering, sheetSize: grid.sheetSize, room: pageRoom(grid) })),
})
