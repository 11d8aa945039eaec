import { describe, expect, it } from 'vitest'
import { rankedSorts } from '../../../../src/sets/sorts/rank-sorts.js'
import { sortTalk } from '../../../../src/sets/sorts/talk/sort-talk.js'
import { ties } from '../../../../src/sets/sorts/weights.js'
import { listOf, teachersSorts } from '../teachers-sorts.js'
import { wordsOfAWeek } from '../words-of-a-week.js'

const toAdd = () => wordsOfAWeek('frog, circus, cent, place, cat, crab')

function talkOn(list: string, name: string) {
  const words = wordsOfAWeek(list)
  const rated = rankedSorts(words).find(({ sort }) => sort.name === name)!
  return sortTalk({ rated, words, toAdd })
}

const hardAndSoft = 'crab, cup, cave, city, cell, ice, pond'

describe('the talk that a sort invites', () => {
  it('opens with the shortest word of each column', () => {
    expect(talkOn(hardAndSoft, 'hard and soft c')[0]).toEqual({
      ask: 'Say cup and ice. What does the c say in each?',
    })
  })

  it('asks for the rule, and tells it', () => {
    expect(talkOn(hardAndSoft, 'hard and soft c')[1]).toEqual({
      ask: 'Which letter stands right behind it?',
      answer:
        'hard c: before any other letter, or at the end; soft c: before e, i or y: so it is in all words here.',
    })
  })

  it('asks where other words would go: one for each column, none of the list, none that fits both', () => {
    expect(talkOn(hardAndSoft, 'hard and soft c')[2]).toEqual({
      ask: 'Where would cat and cent go?',
      answer: 'cat under hard c, cent under soft c.',
    })
  })

  it('asks nothing of the kind where only one column has another word', () => {
    const words = wordsOfAWeek(hardAndSoft)
    const [rated] = rankedSorts(words)
    const asked = sortTalk({ rated: rated!, words, toAdd: () => wordsOfAWeek('cat, cot') })
    expect(asked.filter(({ ask }) => ask.startsWith('Where would'))).toEqual([])
  })

  it('asks for the words that break the rule, not for those that have nothing to do with it', () => {
    const asked = talkOn('crab, cup, cave, city, cell, ice, circus, pond', 'hard and soft c')
    expect(asked.at(-1)).toEqual({ ask: 'Why does circus stand outside?' })
  })

  it('is one question where the sort would fit any words', () => {
    expect(talkOn('fish, frog, moth, otter, heron, spider', 'how many syllables')).toEqual([
      { ask: 'Clap fish and heron. How many syllables has each?' },
    ])
  })

  it('compares no word that merely lacks what the others have', () => {
    const [opening] = talkOn('ship, shed, chin, chop, mud, pond, frog', 'which consonant digraph')
    expect(opening!.ask).toMatch(/^Look at chin and shed\./)
  })
})

describe('over a hundred weeks', () => {
  const weeks = ['teachers-sorts.yaml', 'more-teachers-sorts.yaml', 'further-teachers-sorts.yaml']
  const talks = weeks.flatMap(file =>
    teachersSorts(file).flatMap(week => {
      const words = wordsOfAWeek(listOf(week))
      return rankedSorts(words).map(rated => ({
        rated,
        words,
        questions: sortTalk({ rated, words, toAdd: () => [] }),
      }))
    }),
  )

  it('opens with words of the list, each of another column', () => {
    for (const { rated, questions } of talks) {
      const named = rated.sort.columns.map(({ words }) =>
        words.filter(word => questions[0]!.ask.match(/[\w']+/g)!.includes(word)),
      )
      expect(named.filter(words => words.length > 0).length, questions[0]!.ask).toBeGreaterThan(1)
    }
  })

  it('has a question for every kind of sort that they support', () => {
    const kinds = new Set(talks.map(({ rated }) => rated.family.kind))
    expect(Object.keys(ties).filter(kind => ![...kinds].some(each => each === kind))).toEqual([])
  })
})
