import { describe, expect, it } from 'vitest'
import { linesOn, printItem } from '../print-item.js'

/** Six lists of our own, of different patterns; what the notes say of each was read by eye, sentence by sentence. */
const weeks: Readonly<Record<string, { readonly words: string; readonly marks: readonly string[] }>> = {
  digraphs: {
    words: 'reed, marsh, shrub, thrush, stream, spring, gnat, wren, leaf, moth, frog, perch',
    marks: ['consonant-digraph', 'digraph-blend', 'silent-letters'],
  },
  'long a': {
    words: 'train, snail, tray, stay, lake, crane, snake, plate, wait, clay, trail, said',
    marks: ['vowel-team', 'silent-e'],
  },
  'what was done': {
    words: 'hopped, jumped, baked, landed, waited, sailed, hugged, tried, carried, fished, waved, skated',
    marks: ['ending-ed'],
  },
  'c and g': {
    words: 'city, cave, cell, crab, gem, goat, giant, gull, ice, page, circus, frog',
    marks: ['hard-c', 'soft-c', 'hard-g', 'soft-g'],
  },
  plurals: {
    words: 'fox, leaf, knife, berry, sheep, child, deer, dish, monkey, potato, tooth, scissors',
    marks: [],
  },
  syllables: {
    words: 'tiger, rabbit, basket, music, garden, table, robot, napkin, turtle, planet, open, read',
    marks: ['open-syllable', 'closed-syllable', 'consonant-le'],
  },
}

describe('the notes on six weeks', () => {
  it.each(Object.entries(weeks))('say of %s what was read and found true', async (week, { words, marks }) => {
    const marked = marks.length === 0 ? '' : `marks:\n${marks.map(mark => `  - pattern: ${mark}\n`).join('')}`
    const printed = await printItem(
      '{layout: lesson-notes}',
      `title: Week\nwords: [${words}]\n${marked}print:\n`,
    )
    const notes = linesOn(printed, 'notes').join('\n')
    await expect(`${notes}\n`).toMatchFileSnapshot(`six-weeks/${week.replaceAll(' ', '-')}.txt`)
  })
})
