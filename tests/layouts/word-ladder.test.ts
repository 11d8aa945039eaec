import { describe, expect, it } from 'vitest'
import { kindsOf, linesOn, piecesOf, printItem, problemsOf } from './print-item.js'

const fromReed = '{layout: word-ladder, from: reed, to: leaf}'

describe('word ladder', () => {
  it('shows its first and its last word, and what tells of the others', async () => {
    const [ladder] = piecesOf(await printItem(fromReed))
    expect(ladder!.text).toEqual(['reed', 'leaf'])
    const lines = ladder!.art.flatMap(({ art }) => art.text.map(({ text }) => text))
    expect(lines).toContain('Change one sound at each step.')
    expect(lines).toContain('it grows on a twig')
  })

  it('shows which sound changes and to what on the easier level, and not where a clue tells it on the harder', async () => {
    const drawn = async (item: string) => {
      const [ladder] = piecesOf(await printItem(item))
      return ladder!.art.flatMap(({ art }) => art.text.map(({ text }) => text))
    }
    expect((await drawn(fromReed)).filter(text => text.length <= 3)).toEqual(['ch', 'b', 'f', 'l'])
    const harder = await drawn('{layout: word-ladder, from: reed, to: leaf, level: harder}')
    expect(harder.filter(text => text.length <= 3)).toEqual([])
  })

  it('has a page with each change of sounds and of letters', async () => {
    const printed = await printItem('{layout: word-ladder, from: reed, to: leaf}')
    expect(kindsOf(printed)).toEqual(['pieces', 'rules', 'answers', 'cover'])
    const answers = linesOn(printed, 'answers').join('\n')
    expect(answers).toContain('ladder | word | sounds | letters | clue')
    expect(answers).toContain('reach | /d/ to /ch/ | ee to ea, d to ch')
    expect(answers).toContain('(a draft)')
  })

  it('has the clues on a page to read aloud where they have no room in large print', async () => {
    const printed = await printItem('{layout: word-ladder, from: reed, to: leaf, size: x-height 12 mm}')
    expect(kindsOf(printed)).toContain('list')
    expect(linesOn(printed, 'list').join('\n')).toContain('Ladder 1 begins with reed.')
  })

  it('says what to do where printed clues have no room', async () => {
    expect(
      await problemsOf(
        '{layout: word-ladder, from: reed, to: leaf, clues are: printed, size: x-height 12 mm}',
      ),
    ).toContain('clues are: read aloud')
  })
})
