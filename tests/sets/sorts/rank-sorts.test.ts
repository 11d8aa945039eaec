import { describe, expect, it } from 'vitest'
import { generatorFor, shuffle } from '../../../src/sets/random.js'
import { openSortNote, rankSorts, sortNamed } from '../../../src/sets/sorts/rank-sorts.js'
import { ties } from '../../../src/sets/sorts/weights.js'
import type { HandWord } from '../words-by-hand.js'
import { wordsByHand } from '../words-by-hand.js'
import { listOf, teachersSorts } from './teachers-sorts.js'
import { columnsOf, wordsOfAWeek } from './words-of-a-week.js'

const digraph = (text: string, letters: string): HandWord => ({
  text,
  patterns: [`consonant-digraph:${letters}`],
})
const firstOf = (list: string) => rankSorts(wordsOfAWeek(list))[0]
const namesOf = (list: string, marks: readonly string[] = []) =>
  rankSorts(wordsOfAWeek(list), {
    marks: marks.map(pattern => ({ target: { kind: 'pattern', pattern } })),
  }).map(({ name }) => name)

describe('a sort', () => {
  const words = wordsByHand(
    digraph('shell', 'sh'),
    digraph('chest', 'ch'),
    digraph('ship', 'sh'),
    digraph('chin', 'ch'),
    digraph('chill', 'ch'),
    digraph('shed', 'sh'),
  )

  it('has its columns and its words in the order of the alphabet', () => {
    const [best] = rankSorts(words)
    expect(best!.name).toBe('which consonant digraph')
    expect(columnsOf(best)).toEqual({ ch: 'chest, chill, chin', sh: 'shed, shell, ship' })
    expect(best!.leftovers).toEqual([])
  })

  it('tells what its columns are and how full', () => {
    expect(rankSorts(words)[0]!.why).toBe(
      'By which letters make the consonant digraph: ch (3 words), sh (3). Every word has its column.',
    )
  })

  it('leaves over a word that fits two columns, and says why', () => {
    const [best] = rankSorts([
      ...words,
      ...wordsByHand({ text: 'shch', patterns: ['consonant-digraph:sh', 'consonant-digraph:ch'] }),
    ])
    expect(best!.leftoverReasons).toEqual([
      { word: 'shch', why: 'fits more than one column: sh, ch', oddball: true },
    ])
  })

  it('leaves over a word that stands alone, an oddball, and one without the pattern, an outsider', () => {
    const found = sortNamed(
      [...words, ...wordsByHand(digraph('moth', 'th'), 'mud')],
      'which consonant-digraph',
    )
    expect(found!.sort.leftoverReasons).toEqual([
      { word: 'moth', why: 'is the only one of its kind: th', oddball: true },
      { word: 'mud', why: 'has no consonant digraph' },
    ])
  })

  it('gives three words or more without the pattern a column of their own, the last', () => {
    const found = sortNamed([...words, ...wordsByHand('mud', 'pond', 'frog')], 'which consonant digraph')
    expect(found!.sort.columns.at(-1)).toEqual({
      title: 'no consonant digraph',
      without: true,
      words: ['frog', 'mud', 'pond'],
    })
  })

  it('has six columns at most, the largest', () => {
    const teams = ['ai', 'ee', 'oa', 'ea', 'oo', 'ie', 'ue'].flatMap((team, index) =>
      ['m', 'n', ...(index === 0 ? [] : ['t'])].map(end => ({
        text: `b${team}${end}`,
        sounds: `b:B ${team}:EY ${end}:T`,
        patterns: [`vowel-team:${team}`],
      })),
    )
    const { sort } = sortNamed(wordsByHand(...teams), 'which vowel team')!
    expect(sort.columns.map(column => column.title)).toEqual(['ea', 'ee', 'ie', 'oa', 'oo', 'ue'])
    expect(sort.leftoverReasons[0]).toEqual({ word: 'baim', why: 'would make one column too many: ai' })
  })
})

describe('no sort', () => {
  it('is a single column', () => {
    expect(sortNamed(wordsOfAWeek('leaf, seal, beach, dream'), 'how ea sounds')).toBeUndefined()
  })

  it('is a single kind of letters against words without it: that is having it or not', () => {
    const list = 'ship, shell, shed, mud, frog, pond'
    expect(sortNamed(wordsOfAWeek(list), 'which consonant digraph')).toBeUndefined()
    expect(columnsOf(sortNamed(wordsOfAWeek(list), 'consonant digraph or none')?.sort)).toEqual({
      'consonant digraph': 'shed, shell, ship',
      'no consonant digraph': 'frog, mud, pond',
    })
  })

  it('has a column of one word', () => {
    const columns = teachersSorts('teachers-sorts.yaml').flatMap(week =>
      rankSorts(wordsOfAWeek(listOf(week))).flatMap(sort => sort.columns),
    )
    expect(columns.filter(({ words }) => words.length < 2)).toEqual([])
  })

  it('is one with nearly all words in one column', () => {
    const lopsided = Array.from({ length: 18 }, (_, index) => ({
      text: `word${'abcdefghijklmnopqr'[index]}`,
      syllables: index < 16 ? ['a'] : ['a', 'b'],
    }))
    expect(sortNamed(wordsByHand(...lopsided), 'how many syllables')!.sort.leftovers).toEqual([])
    expect(rankSorts(wordsByHand(...lopsided))).toEqual([])
  })

  it('is found where nothing divides the words', () => {
    expect(rankSorts(wordsByHand('reed', 'mud'))).toEqual([])
    expect(rankSorts([])).toEqual([])
  })

  it('has more than half of the list outside it, be they all oddballs', () => {
    const three = (letters: string) => ['a', 'e', 'i'].map(vowel => digraph(`${letters}${vowel}p`, letters))
    const alone = ['th', 'wh', 'ph', 'ng', 'ck', 'gh', 'qu', 'kn'].map(letters =>
      digraph(`p${letters}`, letters),
    )
    const names = (count: number) =>
      rankSorts(wordsByHand(...three('sh'), ...three('ch'), ...alone.slice(0, count))).map(({ name }) => name)
    // Words that stand alone are oddballs, which count half.
    expect(names(6)).toContain('which consonant digraph')
    expect(names(8)).not.toContain('which consonant digraph')
  })
})

describe('a list with outsiders', () => {
  const list = 'crab, cup, cave, corn, city, cell, ice, dance'
  it('has its sort while they are a third at most', () => {
    expect(namesOf(`${list}, pond, marsh, reed, fen`)).toContain('hard and soft c')
    expect(namesOf(`${list}, pond, marsh, reed, fen, mud`)).not.toContain('hard and soft c')
  })
})

describe('two sorts that divide the words alike', () => {
  it('are one, by the better name', () => {
    const piles = rankSorts(wordsOfAWeek('reed, seal, weed, beach, sleep, clean')).map(({ columns }) =>
      JSON.stringify(columns.map(({ words }) => words)),
    )
    expect(new Set(piles).size).toBe(piles.length)
  })

  it('leave out "or none" where a better sort has those words for a column', () => {
    const list = 'cap, hat, bag, plan, cape, gate, lake, plane'
    expect(sortNamed(wordsOfAWeek(list), 'short vowel or none')).toBeDefined()
    expect(namesOf(list)).not.toContain('short vowel or none')
  })
})

describe('the ranking', () => {
  it('puts the spellings of one sound above silent e or not', () => {
    const names = namesOf('cake, gate, lake, rain, sail, mail, hay, day, clay')
    expect(names[0]).toBe('spellings of /EY/ as in day')
  })

  it('puts what fits any words below every sort on what they share', () => {
    for (const week of teachersSorts('teachers-sorts.yaml')) {
      const isLow = rankSorts(wordsOfAWeek(listOf(week))).map(({ standing }) =>
        standing.includes('any words'),
      )
      expect(isLow, week.week).toEqual(isLow.toSorted((a, b) => Number(a) - Number(b)))
    }
  })

  it('falls back on it where the words share nothing', () => {
    expect(firstOf('fish, moon, bread, garden, pencil, otter, banana, elephant, butterfly')!.name).toBe(
      'how many syllables',
    )
  })

  it('raises a sort about what the plan marks', () => {
    const list = 'ship, shop, chin, chop, chip, ship, shed, chest, shut'
    expect(namesOf(list, ['consonant-digraph'])[0]).toBe('which consonant digraph')
    expect(
      namesOf('chin, fish, chip, dish, rich, wish, shin, inch', ['short-vowel', 'consonant-digraph'])[0],
    ).toBe('which consonant digraph')
  })

  it('tells of each sort in one line how its score came about', () => {
    const first = firstOf('lake, gate, wave, rain, sail, trail, hay, clay, spray, said')!
    expect(first.standing).toBe(
      '1 (one sound, spelled in different ways) × 0.98 (9 of 10 words placed and 1 oddball) = 0.98',
    )
    expect(first.score).toBe(0.975)
  })

  it('is by weights between 0 and 1', () => {
    for (const { tie } of Object.values(ties)) {
      expect(tie).toBeGreaterThan(0)
      expect(tie).toBeLessThanOrEqual(1)
    }
  })
})

describe('the order of the list', () => {
  it.each(
    ['teachers-sorts.yaml', 'more-teachers-sorts.yaml', 'further-teachers-sorts.yaml']
      .flatMap(teachersSorts)
      .map(week => [week.week, week] as const),
  )('changes nothing to the letter: %s', (_name, week) => {
    const words = wordsOfAWeek(listOf(week))
    const sorts = JSON.stringify(rankSorts(words))
    for (const seed of [1, 2, 3])
      expect(JSON.stringify(rankSorts(shuffle(words, generatorFor(seed, 'order of the list'))))).toBe(sorts)
  })
})

describe('an open sort', () => {
  it('is worth the name where there is more than one sort', () => {
    const sorts = rankSorts(wordsOfAWeek('reed, seal, weed, beach, sleep, clean'))
    expect(sorts.length).toBeGreaterThan(1)
    expect(openSortNote(sorts)).toBe(
      `These words can be sorted in ${sorts.length} ways, so children can find more than one rule.`,
    )
    expect(openSortNote(sorts.slice(0, 1))).toContain('in one way only')
    expect(openSortNote([])).toContain('cannot be sorted')
  })
})
