/** `npm run bench`: every table of figures, each from one run of its own on this machine. */
import { benchColdStarts } from './cold-start.bench.js'
import { benchCounts } from './counts.bench.js'
import { benchDesk } from './desk.bench.js'
import { benchFiles } from './files.bench.js'
import { benchPairSpread, benchSingleWinner } from './games.bench.js'
import { benchGoals } from './goals.bench.js'
import { benchLayouts } from './layouts.bench.js'
import { benchMemory } from './memory.bench.js'
import { benchRooms } from './rooms.bench.js'
import { benchSlope } from './slope.bench.js'
import { benchWeeks } from './weeks.bench.js'
import { benchColdLookUp, benchGuesses, benchWordSpeed } from './words.bench.js'

const print = (title: string, rows: readonly object[]): void => {
  process.stdout.write(`\n${title}\n`)
  console.table(rows)
}

print('The goals, measured in one run', await benchGoals())
print('The reference job, room by room: what the process does at a few thousand looks', benchRooms())
print('The reference job, counted', await benchCounts())
print('A board more', benchSlope())
print('Cold starts, whole processes', benchColdStarts())
print('Words, looked up cold', benchColdLookUp())
print('Words, one core', benchWordSpeed())
print('Guesses of words held out of the lessons', benchGuesses())
print('Layouts, warm, SVG and PNG at 300 DPI', await benchLayouts())
print('Bingo: how evenly pairs of words meet', benchPairSpread())
print('Bingo: one winner of thirty boards, at each call', benchSingleWinner())
print('Files: thirty boards and their cards', await benchFiles())
print('Memory: the most that a process held', benchMemory())
print('A class of three groups', benchWeeks())
print('The desk', await benchDesk())
