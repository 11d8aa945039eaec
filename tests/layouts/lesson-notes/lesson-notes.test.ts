import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { putPlanOnSheets } from '../../../src/pipeline.js'
import { inPlainSounds } from '../../../src/words/pronunciation/respelling.js'
import { folderWith } from '../../pipeline/plan-folder.js'
import { wordsOfAWeek } from '../../sets/sorts/words-of-a-week.js'
import { kindsOf, linesOn, printItem } from '../print-item.js'

const words = 'train, snail, tray, stay, lake, crane, snake, plate, wait, clay, trail, said'
const plan = `title: Ways with long a
words: [${words}]
marks:
  - pattern: vowel-team
  - pattern: silent-e
print:
`
const item = '{layout: lesson-notes}'
const told = async (text = plan) =>
  linesOn(await printItem(item, text), 'notes')
    .join(' ')
    .replaceAll(' | ', ' ')

describe('lesson notes', () => {
  it('are pages for the teacher', async () => {
    expect(kindsOf(await printItem(item, plan))).toEqual(['notes'])
  })

  it('tell each marked pattern in the order of the marks, with its words and the reason of its rule', async () => {
    const notes = await told()
    expect(notes.indexOf('1. Vowel team')).toBeLessThan(notes.indexOf('2. Silent e'))
    expect(notes).toContain('tray, stay, clay')
    for (const { text, patterns } of wordsOfAWeek('tray, lake'))
      for (const { pattern, why } of patterns.filter(each => /^(?:vowel-team|silent-e)$/.test(each.pattern)))
        for (const part of inPlainSounds(why).split(', '))
          expect(notes, `${text}: ${pattern}`).toContain(part)
  })

  it('tell the sounds in plain signs', async () => {
    expect(await told()).not.toMatch(/\/[A-Z]{1,2}\//)
  })

  it('name words to watch, words used in two ways and plurals by their rule', async () => {
    const notes = await told()
    expect(notes).toContain('said: its ai says /e/ as in bed')
    expect(notes).toMatch(/noun and verb: (?:\w+, )*wait/)
    expect(notes).toMatch(/add s .*plate, plates/)
  })

  it('give reasons the room of the words where that saves a page', async () => {
    const words = 'hopped, tried, played, jumped, wanted, carried, stopped, baked, needed, rained'
    const marks = ['ending-ed', 'vowel-team', 'double-consonant', 'beginning-blend']
    const inThePast = `title: A\nwords: [${words}]\nmarks:\n${marks.map(pattern => `  - pattern: ${pattern}\n`).join('')}print:\n`
    expect((await printItem(item, inThePast)).sheets.filter(({ kind }) => kind === 'notes')).toHaveLength(2)
  })

  it('ask for the rule of the best sort', async () => {
    expect(await told()).toContain('Where in the word does each stand?')
  })

  it('are of the patterns that most words show where the plan marks none', async () => {
    expect(await told('title: A\nwords: [ship, shed, moth, chin]\nprint:\n')).toContain(
      '1. Consonant digraph',
    )
  })

  it('tell which words are back, and what no word of the weeks before has shown', async () => {
    const review = 'review: [[mud, ship, play, crab], [moth, snail]]\n'
    const notes = await told(`title: A\nwords: [train, shed, knot, knee]\n${review}print:\n`)
    expect(notes).toContain('Back from earlier weeks last week: ')
    // The sh of ship, the th of moth and the ai of snail were there, whether or not these words are back.
    expect(notes).toContain(
      'In no word of the weeks before beginning blend: tr (train) silent letters: kn (knot, knee) vowel team: ee (knee)',
    )
  })

  it('tell nothing of weeks before where there are none', async () => {
    expect(await told()).not.toMatch(/weeks? before|earlier weeks/)
  })

  it('are made for a list that shows nothing', async () => {
    expect(await told('title: A\nwords: [I]\nprint:\n')).toContain('Each line rests on a rule that fired')
  })
})

describe('what is new to a class', () => {
  const toldTo = async (classFile: string) => {
    const text = plan.replace('words:', 'class file: class.yaml\nwords:')
    const folder = folderWith({ 'plan.yaml': `${text}  - ${item}\n`, 'class.yaml': classFile })
    const drawn = await putPlanOnSheets({ planFile: join(folder, 'plan.yaml') })
    if (!drawn.ok) throw new Error(drawn.problems.map(({ message }) => message).join())
    return linesOn(drawn.value.items[0]!.printed, 'notes').join(' ')
  }

  it('is what its words show that is not taught', async () => {
    const notes = await toldTo('taught: [silent-e, long-vowel, vowel-team, pl, cr, tr, sn, st]\n')
    expect(notes).toContain('New to the class')
    expect(notes).toContain('beginning blend: cl (clay)')
    expect(notes).not.toContain('beginning blend: tr')
  })

  it('is not told where nothing is said of what is taught', async () => {
    expect(await told()).not.toContain('New to the class')
  })
})
