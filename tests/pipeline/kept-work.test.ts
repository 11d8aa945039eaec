import sharp from 'sharp'
import { describe, expect, it } from 'vitest'
import { type KeptWork, keepWork, type WorkDone } from '../../src/pipeline/kept-work.js'
import { putPlanOnSheets } from '../../src/pipeline.js'
import { formatProblem } from '../../src/problems.js'
import { filesInMemory } from '../plan/reading.js'

const week = `title: Along the marsh
seed: 12
words: [reed, marsh, gnat, wren, leaf, moth, frog, perch, otter, heron, newt, toad]
marks:
  - {pattern: consonant-digraph, line: wavy}
  - {pattern: vowel-team, outline: rounded}
print:
  - {layout: word-cards, back: name}
  - {layout: bingo, boards: 4, grid: 3x3}
  - {layout: open-sort}
  - {layout: marked-list}
  - {layout: bag-labels}
groups:
  - {name: Otters, words: [mud, pond, frog, reed, newt, toad, wren, moth, leaf]}
`

/** A plan held open: each text in turn, with what had to be done for it. */
function heldOpen() {
  const kept: KeptWork = keepWork()
  let before = kept.done()
  return async (text: string): Promise<WorkDone> => {
    const files = filesInMemory({ 'week.yaml': text })
    const made = await putPlanOnSheets({ planFile: 'week.yaml', files, kept })
    if (!made.ok) throw new Error(made.problems.map(formatProblem).join('\n'))
    const now = kept.done()
    const since = Object.fromEntries(
      Object.entries(now).map(([step, count]) => [step, count - before[step as keyof WorkDone]]),
    )
    before = now
    return { ...now, ...since }
  }
}

const nothing: WorkDone = {
  words: 0,
  sets: 0,
  layouts: 0,
  pieces: 0,
  pages: 0,
  faces: 0,
  printed: 0,
  decoded: 0,
}
/**
 * Twelve words and two of the group's own; three sets for the class, three for the group; a list for each; labels for
 * all. Cards and the open sort's are of one shape, for class and group; so are backs. Boards are not, because the class's
 * have no free space; nor are pages.
 */
const everything: WorkDone = {
  words: 14,
  sets: 6,
  layouts: 13,
  pieces: 6,
  pages: 8,
  faces: 9,
  printed: 9,
  decoded: 0,
}

describe('a plan that is held open', () => {
  // One for all: whatever a test left it with, each begins by bringing it back to the week.
  const run = heldOpen()

  it('is worked through once at first', async () => {
    expect(await heldOpen()(week)).toEqual(everything)
  })

  it('costs nothing where nothing has changed', async () => {
    await run(week)
    expect(await run(week)).toEqual(nothing)
  })

  it('costs nothing where only a comment was added above everything', async () => {
    await run(week)
    expect(await run(`# Monday\n\n${week}`)).toEqual(nothing)
  })

  it('costs nothing then for a word that the teacher divided herself, either', async () => {
    const divided = week.replace('[reed,', '[{word: reed, sounds: r ee d},')
    await run(divided)
    expect(await run(`# Monday\n\n${divided}`)).toEqual(nothing)
  })

  it('draws anew for a new colour of a mark, and studies, deals and fits no piece again', async () => {
    await run(week)
    const done = await run(week.replace('line: wavy', 'line: wavy, color: "#00618a"'))
    expect(done).toMatchObject({ words: 0, sets: 0, pieces: 0 })
    expect(done.faces).toBeGreaterThan(0)
  })

  it('studies one word for a new word, and leaves the group with words of its own alone', async () => {
    await run(week)
    const done = await run(week.replace('toad]\nmarks', 'toad, swan]\nmarks'))
    expect(done).toMatchObject({ words: 1, sets: 3, pieces: 3 })
  })

  it('deals and fits again what a changed item prints, and the labels that tell of it; boards keep their layout, their pages do not', async () => {
    await run(week)
    const done = await run(week.replace('boards: 4', 'boards: 5'))
    expect(done).toEqual({
      words: 0,
      sets: 2,
      layouts: 4,
      pieces: 2,
      pages: 2,
      faces: 2,
      printed: 3,
      decoded: 0,
    })
  })

  it('fits again, but deals nothing again, for a thing that bears on size alone', async () => {
    await run(week)
    const done = await run(week.replace('layout: word-cards', 'layout: word-cards, size: 20 pt'))
    expect(done).toMatchObject({ words: 0, pieces: 2 })
  })

  it('comes out as if it had been made alone, change after change', async () => {
    const kept = keepWork()
    const madeAlone = new Map<string, ReturnType<typeof putPlanOnSheets>>()
    const texts = [
      week,
      week.replace('line: wavy', 'line: dotted'),
      week.replace('rounded', 'rounded, color: "#7a2048"'),
      week.replace('toad]\nmarks', 'toad, swan]\nmarks'),
      `# A line more\n${week.replace('boards: 4', 'boards: 6')}`,
      week,
    ]
    for (const text of texts) {
      const files = filesInMemory({ 'week.yaml': text })
      const held = await putPlanOnSheets({ planFile: 'week.yaml', files, kept })
      const alone = await (madeAlone.get(text) ?? putPlanOnSheets({ planFile: 'week.yaml', files }))
      madeAlone.set(text, Promise.resolve(alone))
      if (!held.ok || !alone.ok) throw new Error('the week cannot be made')
      expect(held.value.items.map(item => item.printed)).toEqual(alone.value.items.map(item => item.printed))
    }
  })

  it('tells a warning at the line where its item stands now', async () => {
    const kept = keepWork()
    const short = week.replace(
      'words: [mud, pond, frog, reed, newt, toad, wren, moth, leaf]',
      'words: [mud, pond, frog, reed]',
    )
    const linesOf = async (text: string) => {
      const made = await putPlanOnSheets({
        planFile: 'week.yaml',
        files: filesInMemory({ 'week.yaml': text }),
        kept,
      })
      return made.problems.filter(({ message }) => message.includes('too few')).map(({ place }) => place.line)
    }
    expect([await linesOf(short), await linesOf(`\n\n${short}`)]).toEqual([[9], [11]])
  })
})

describe('the pictures of a plan', () => {
  it('are decoded once, wherever they are printed', async () => {
    const pictureOf = (background: string) =>
      sharp({ create: { width: 400, height: 300, channels: 3, background } })
        .jpeg()
        .toBuffer()
    const files = filesInMemory({
      'week.yaml': `words: [{word: reed, picture: reed.jpg}, {word: moth, picture: moth.jpg}]
print:
  - {layout: word-cards, picture: above, back: picture, across: 3, down: 4}
  - {layout: open-sort, picture: beside, across: 2, down: 5}
groups: [{name: Otters, size: large}]
`,
      'reed.jpg': await pictureOf('#2f6f3f'),
      'moth.jpg': await pictureOf('#705030'),
    })
    const kept = keepWork()
    expect((await putPlanOnSheets({ planFile: 'week.yaml', files, kept })).problems).toEqual([])
    expect(kept.done().decoded).toBe(2)
  })
})

it('draws again only the words that are other ones, though their whole set is fitted anew', async () => {
  const kept = keepWork()
  const artsWith = async (word: string) => {
    const files = filesInMemory({ 'week.yaml': `words: [marsh, ${word}]\nprint: [word-cards]\n` })
    const made = await putPlanOnSheets({ planFile: 'week.yaml', files, kept })
    if (!made.ok) throw new Error(made.problems.map(formatProblem).join('\n'))
    const pieces = made.value.items.flatMap(({ printed }) => printed.sheets.flatMap(sheet => sheet.pieces))
    return pieces.flatMap(({ piece }) => piece.art.map(({ art }) => art))
  }
  const [before, after] = [await artsWith('reed'), await artsWith('frog')]
  const marsh = before.find(({ text }) => text.some(run => run.text === 'marsh'))
  expect(marsh).toBeDefined()
  expect(after).toContain(marsh)
  expect(after.some(({ text }) => text.some(run => run.text === 'frog'))).toBe(true)
})
