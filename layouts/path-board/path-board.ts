import { succeed } from '../../src/outcomes.js'
import { pathBoards } from '../../src/sets/games/path-boards.js'
import { inParts, sheetsOf } from '../joined-sheets/joined-sheets.js'
import { defineLayout, type RoomierOptions } from '../layout.js'
import { lengthProblems } from './length-problems.js'
import { pathFaces } from './path-faces.js'
import { LEAST_SPACES, type PathRequest, pathOptions, spacesOf } from './path-options.js'
import { pathPages } from './path-pages.js'

/** A track of words from start to finish, for counters and a die. */
export const pathBoard = defineLayout({
  kind: 'pieces',
  name: 'path-board',
  summary: 'a track of words from start to finish, to move along with counters and a die',
  inWeek: { day: 'centres', given: 'once' },
  options: pathOptions,
  marks: 'none',
  perSheet: { columns: 1, rows: 1 },
  perSheetLarge: { columns: 1, rows: 1 },
  set: request => {
    const { words, item, options, itemName, plan } = request
    const spaces = spacesOf(request)
    const set = pathBoards({
      ...options,
      words,
      spaces,
      copies: item.copies,
      seed: plan.seed,
      label: itemName,
    })
    const cards = inParts(set.cards, sheetsOf(options))
    const value = { ...set, cards, notes: notesOn(words.length, spaces, sheetsOf(options)) }
    return succeed(value, lengthProblems(request, set.track))
  },
  roomier: shorterTracks,
  faces: pathFaces,
  pages: pathPages,
})

/** Tracks with fewer and larger spaces: one word less each time. */
function shorterTracks(request: PathRequest): readonly RoomierOptions<PathRequest['options']>[] {
  const { jumps, minutes } = request.options
  const now = spacesOf(request)
  const shorter = Array.from({ length: Math.max(0, now - LEAST_SPACES) }, (_, less) => now - less - 1)
  const tracks = shorter.map(spaces => ({
    options: { spaces },
    says: `spaces: ${spaces}`,
    open: request.options.spaces === undefined,
  }))
  if (jumps === undefined && minutes === undefined) return tracks
  // Where even few spaces are too small for what they say, they say nothing.
  const withoutJumps = [now, ...shorter].map(spaces => ({
    options: { spaces, jumps: 0 },
    says: spaces === now ? 'jumps: 0' : `spaces: ${spaces}, jumps: 0`,
    open: request.options.spaces === undefined && jumps === undefined,
  }))
  return [...tracks, ...withoutJumps]
}

const MOST_SHEETS = 4

function notesOn(words: number, spaces: number, sheets: number): readonly string[] {
  if (spaces >= words) return []
  const left = `The track has ${spaces} spaces, so each board leaves out ${words - spaces} of the ${words} words`
  return [
    sheets < MOST_SHEETS ? `${left}; joined over sheets: ${sheets * 2} it has room for more.` : `${left}.`,
  ]
}
