import { describe, expect, it } from 'vitest'
import { openSortNote, rankSorts, sortNamed } from '../../../src/sets/sorts/rank-sorts.js'
import type { HandWord } from '../words-by-hand.js'
import { wordsByHand } from '../words-by-hand.js'

const digraph = (text: string, letters: string): HandWord => ({
  text,
  patterns: [`consonant-digraph:${letters}`],
})
const columnsOf = (sort: { columns: readonly { title: string; words: readonly string[] }[] } | undefined) =>
  Object.fromEntries(sort?.columns.map(column => [column.title, column.words]) ?? [])

describe('sorts by the letters of a pattern', () => {
  const words = wordsByHand(
    digraph('shell', 'sh'),
    digraph('chest', 'ch'),
    digraph('ship', 'sh'),
    digraph('chin', 'ch'),
    digraph('chill', 'ch'),
    digraph('shed', 'sh'),
  )

  it('makes a column of each, in the order of the list', () => {
    const [best] = rankSorts(words)
    expect(best!.name).toBe('which consonant digraph')
    expect(columnsOf(best)).toEqual({ sh: ['shell', 'ship', 'shed'], ch: ['chest', 'chin', 'chill'] })
    expect(best!.leftovers).toEqual([])
    expect(best!.why).toBe(
      'By which letters make the consonant digraph: sh (3 words), ch (3). Every word has its column.',
    )
  })

  it('leaves over a word that fits two columns, and says why', () => {
    const church = { text: 'shch', patterns: ['consonant-digraph:sh', 'consonant-digraph:ch'] }
    const [best] = rankSorts([...words, ...wordsByHand(church)])
    expect(best!.leftovers).toEqual(['shch'])
    expect(best!.leftoverReasons).toEqual([{ word: 'shch', why: 'fits more than one column: sh, ch' }])
  })

  it('leaves over a word that stands alone, and a word or two without the pattern', () => {
    const sort = sortNamed(
      [...words, ...wordsByHand(digraph('moth', 'th'), 'mud')],
      'which consonant-digraph',
    )!
    expect(sort.leftoverReasons).toEqual([
      { word: 'moth', why: 'is the only one of its kind: th' },
      { word: 'mud', why: 'has no consonant digraph' },
    ])
  })

  it('gives three words or more without the pattern a column of their own', () => {
    const sort = sortNamed([...words, ...wordsByHand('mud', 'pond', 'frog')], 'which consonant digraph')!
    expect(columnsOf(sort)['no consonant digraph']).toEqual(['mud', 'pond', 'frog'])
    expect(sort.columns.at(-1)!.title).toBe('no consonant digraph')
    expect(sort.columns.map(column => column.without ?? false)).toEqual([false, false, true])
  })
})

describe('sorts by vowel', () => {
  const words = wordsByHand(
    { text: 'mud', sounds: 'm:M u:AH d:D', patterns: ['short-vowel:u'] },
    { text: 'duck', sounds: 'd:D u:AH ck:K', patterns: ['short-vowel:u'] },
    { text: 'moss', sounds: 'm:M o:AO ss:S', patterns: ['short-vowel:o'] },
    { text: 'reed', sounds: 'r:R ee:IY d:D', patterns: ['vowel-team:ee'] },
    { text: 'seal', sounds: 's:S ea:IY l:L', patterns: ['vowel-team:ea'] },
    { text: 'crane', sounds: 'c:K r:R a:EY n:N e:', patterns: ['silent-e:a_e', 'long-vowel:a'] },
    { text: 'snake', sounds: 's:S n:N a:EY k:K e:', patterns: ['silent-e:a_e', 'long-vowel:a'] },
    { text: 'marsh', sounds: 'm:M ar:AA,R sh:SH', patterns: ['r-controlled:ar'] },
  )

  it('tells kinds of vowel apart, a silent e’s vowel being one kind', () => {
    expect(columnsOf(sortNamed(words, 'kind of vowel'))).toEqual({
      'short vowel': ['mud', 'duck', 'moss'],
      'vowel team': ['reed', 'seal'],
      'silent e': ['crane', 'snake'],
    })
  })

  it('names a lone vowel letter with its length', () => {
    expect(columnsOf(sortNamed(words, 'which short vowel'))).toMatchObject({ 'short u': ['mud', 'duck'] })
  })

  it('tells short from long by sound, and leaves r-controlled vowels out', () => {
    const sort = sortNamed(words, 'short or long vowel')!
    expect(columnsOf(sort)).toEqual({
      'short vowel': ['mud', 'duck', 'moss'],
      'long vowel': ['reed', 'seal', 'crane', 'snake'],
    })
    expect(sort.leftovers).toEqual(['marsh'])
  })

  it('leaves a word of two syllables out', () => {
    const heron = { text: 'heron', sounds: 'h:HH e:EH r:R o:AH n:N', syllables: ['her', 'on'] }
    expect(sortNamed([...words, ...wordsByHand(heron)], 'short or long vowel')!.leftovers).toEqual([
      'marsh',
      'heron',
    ])
  })

  it('gathers word families from the vowel on', () => {
    const family = wordsByHand(
      { text: 'cake', sounds: 'c:K a:EY k:K e:' },
      { text: 'dock', sounds: 'd:D o:AA ck:K' },
      { text: 'bake', sounds: 'b:B a:EY k:K e:' },
      { text: 'rock', sounds: 'r:R o:AA ck:K' },
    )
    expect(columnsOf(sortNamed(family, 'word families'))).toEqual({
      '-ake': ['cake', 'bake'],
      '-ock': ['dock', 'rock'],
    })
  })
})

describe('why a word is left over', () => {
  const short = (text: string, sounds: string, letter: string) => ({
    text,
    sounds,
    patterns: [`short-vowel:${letter}`],
  })
  const words = wordsByHand(
    short('mud', 'm:M u:AH d:D', 'u'),
    short('duck', 'd:D u:AH ck:K', 'u'),
    { text: 'reed', sounds: 'r:R ee:IY d:D', patterns: ['vowel-team:ee'] },
    { text: 'seal', sounds: 's:S ea:IY l:L', patterns: ['vowel-team:ea'] },
    { text: 'rabbit', sounds: 'r:R a:AE bb:B i:AH t:T', syllables: ['rab', 'bit'] },
    { text: 'marsh', sounds: 'm:M ar:AA,R sh:SH', patterns: ['r-controlled:ar'] },
    { text: 'cloud', sounds: 'c:K l:L ou:AW d:D' },
    { text: 'book', sounds: 'b:B oo:UH k:K' },
  )

  it.each(['short or long vowel', 'which vowel sound', 'kind of vowel'])(
    'is one reason of its own in the sort by %s',
    name => {
      for (const { why } of sortNamed(words, name)!.leftoverReasons) expect(why).not.toContain(' or ')
    },
  )

  it('is the syllables of the long word, the r of the other', () => {
    const reasons = sortNamed(words, 'which vowel sound')!.leftoverReasons
    expect(reasons).toContainEqual({ word: 'rabbit', why: 'has more than one syllable' })
    expect(reasons).toContainEqual({ word: 'marsh', why: 'has a vowel with an r' })
  })
})

describe('sorts by beginnings and endings', () => {
  const words = wordsByHand(
    { text: 'wren', sounds: 'wr:R e:EH n:N', patterns: ['silent-letters:wr'] },
    { text: 'cake', sounds: 'c:K a:EY k:K e:' },
    { text: 'knot', sounds: 'kn:N o:AA t:T', patterns: ['silent-letters:kn'] },
    { text: 'bake', sounds: 'b:B a:EY k:K e:' },
    { text: 'otter', sounds: 'o:AA tt:T er:ER' },
    { text: 'oar', sounds: 'oar:AO,R' },
    { text: 'sea', sounds: 's:S ea:IY' },
    { text: 'pie', sounds: 'p:P ie:AY' },
  )

  it('tells silent letters, single consonants and vowels apart at the beginning', () => {
    expect(columnsOf(sortNamed(words, 'how the word begins'))).toEqual({
      'silent letters': ['wren', 'knot'],
      'single consonant': ['cake', 'bake', 'sea', 'pie'],
    })
  })

  it('tells single consonants, silent e, vowels and vowels with r apart at the end', () => {
    expect(columnsOf(sortNamed(words, 'how the word ends'))).toEqual({
      'single consonant': ['wren', 'knot'],
      'silent e': ['cake', 'bake'],
      'vowel with r': ['otter', 'oar'],
      vowel: ['sea', 'pie'],
    })
  })
})

describe('sorts by sound', () => {
  const words = wordsByHand(
    { text: 'reed', sounds: 'r:R ee:IY d:D' },
    { text: 'seal', sounds: 's:S ea:IY l:L' },
    { text: 'weed', sounds: 'w:W ee:IY d:D' },
    { text: 'beach', sounds: 'b:B ea:IY ch:CH' },
    { text: 'bread', sounds: 'b:B r:R ea:EH d:D' },
    { text: 'thread', sounds: 'th:TH r:R ea:EH d:D' },
  )

  it('gathers the spellings of one sound', () => {
    expect(columnsOf(sortNamed(words, 'spellings of /IY/ as in see'))).toEqual({
      ee: ['reed', 'weed'],
      ea: ['seal', 'beach'],
    })
  })

  it('writes a vowel with its silent e as one spelling', () => {
    const long = wordsByHand(
      { text: 'cake', sounds: 'c:K a:EY k:K e:', patterns: ['silent-e:a_e'] },
      { text: 'gate', sounds: 'g:G a:EY t:T e:', patterns: ['silent-e:a_e'] },
      { text: 'bay', sounds: 'b:B ay:EY' },
      { text: 'clay', sounds: 'c:K l:L ay:EY' },
    )
    expect(columnsOf(sortNamed(long, 'spellings of /EY/ as in day'))).toEqual({
      a_e: ['cake', 'gate'],
      ay: ['bay', 'clay'],
    })
  })

  it('gathers the sounds of one spelling, named after the first word of each', () => {
    expect(columnsOf(sortNamed(words, 'how ea sounds'))).toEqual({
      'ea as in seal': ['seal', 'beach'],
      'ea as in bread': ['bread', 'thread'],
    })
  })

  it('counts sounds and syllables', () => {
    expect(columnsOf(sortNamed(words, 'how many sounds'))).toEqual({
      '3 sounds': ['reed', 'seal', 'weed', 'beach'],
      '4 sounds': ['bread', 'thread'],
    })
    const divided = wordsByHand(
      { text: 'heron', syllables: ['her', 'on'] },
      'reed',
      { text: 'otter', syllables: ['ot', 'ter'] },
      'mud',
    )
    expect(columnsOf(sortNamed(divided, 'how many syllables'))).toEqual({
      '1 syllable': ['reed', 'mud'],
      '2 syllables': ['heron', 'otter'],
    })
  })

  it('hears the three sounds of one ending', () => {
    const past = wordsByHand(
      { text: 'fished', sounds: 'f:F i:IH sh:SH e: d:T', patterns: ['ending-ed:ed'] },
      { text: 'sailed', sounds: 's:S ai:EY l:L e: d:D', patterns: ['ending-ed:ed'] },
      { text: 'baked', sounds: 'b:B a:EY k:K e: d:T', patterns: ['ending-ed:ed'] },
      { text: 'rowed', sounds: 'r:R ow:OW e: d:D', patterns: ['ending-ed:ed'] },
      { text: 'melted', sounds: 'm:M e:EH l:L t:T e:AH d:D', patterns: ['ending-ed:ed'] },
      { text: 'kneaded', sounds: 'kn:N ea:IY d:D e:IH d:D', patterns: ['ending-ed:ed'] },
    )
    expect(columnsOf(sortNamed(past, 'how ed sounds (ending ed)'))).toEqual({
      'ed as in fished': ['fished', 'baked'],
      'ed as in sailed': ['sailed', 'rowed'],
      'ed as in melted': ['melted', 'kneaded'],
    })
  })
})

describe('sorts by grammar', () => {
  it('gathers the rules of the plural', () => {
    const words = wordsByHand(
      { text: 'marsh', plural: { form: 'marshes', rule: 'add es' } },
      { text: 'reed', plural: { form: 'reeds', rule: 'add s' } },
      { text: 'finch', plural: { form: 'finches', rule: 'add es' } },
      { text: 'pond', plural: { form: 'ponds', rule: 'add s' } },
    )
    expect(columnsOf(sortNamed(words, 'how the plural is made'))).toEqual({
      'add es': ['marsh', 'finch'],
      'add s': ['reed', 'pond'],
    })
  })

  it('takes f and fe for one change', () => {
    const words = wordsByHand(
      { text: 'loaf', plural: { form: 'loaves', rule: 'f to v, add es' } },
      { text: 'bun', plural: { form: 'buns', rule: 'add s' } },
      { text: 'knife', plural: { form: 'knives', rule: 'fe to ve, add s' } },
      { text: 'pie', plural: { form: 'pies', rule: 'add s' } },
    )
    expect(columnsOf(sortNamed(words, 'how the plural is made'))).toEqual({
      'f or fe to ves': ['loaf', 'knife'],
      'add s': ['bun', 'pie'],
    })
  })

  it('gathers parts of speech by their commonest use', () => {
    const words = wordsByHand(
      { text: 'reed', partsOfSpeech: ['noun'] },
      { text: 'wade', partsOfSpeech: ['verb'] },
      { text: 'fish', partsOfSpeech: ['noun', 'verb'] },
      { text: 'swim', partsOfSpeech: ['verb', 'noun'] },
    )
    expect(columnsOf(sortNamed(words, 'part of speech'))).toEqual({
      noun: ['reed', 'fish'],
      verb: ['wade', 'swim'],
    })
  })
})

describe('ranking', () => {
  const firmly = wordsByHand(
    { text: 'reed', partsOfSpeech: ['noun'], sounds: 'r:R ee:IY d:D' },
    { text: 'seal', partsOfSpeech: ['noun'], sounds: 's:S ea:IY l:L' },
    { text: 'weed', partsOfSpeech: ['noun'], sounds: 'w:W ee:IY d:D' },
    { text: 'beach', partsOfSpeech: ['noun'], sounds: 'b:B ea:IY ch:CH' },
    { text: 'sleep', partsOfSpeech: ['verb'], sounds: 's:S l:L ee:IY p:P' },
    { text: 'clean', partsOfSpeech: ['verb'], sounds: 'c:K l:L ea:IY n:N' },
  )

  it('puts even columns and sharp contrasts first', () => {
    const sorts = rankSorts(firmly)
    expect(sorts[0]!.name).toBe('spellings of /IY/ as in see')
    expect(sorts.map(sort => sort.score)).toEqual([...sorts.map(sort => sort.score)].sort((a, b) => b - a))
  })

  it('names a sort once when two bases divide the words alike', () => {
    // Four nouns of three sounds, two verbs of four: parts of speech, sounds and beginnings give the same piles.
    const piles = rankSorts(firmly).map(sort => JSON.stringify(sort.columns.map(column => column.words)))
    expect(new Set(piles).size).toBe(piles.length)
    expect(rankSorts(firmly).filter(sort => /sounds$|speech/.test(sort.name))).toHaveLength(1)
  })

  describe('with words left over', () => {
    const three = (letters: string) => ['a', 'e', 'i'].map(vowel => digraph(`${letters}${vowel}p`, letters))
    const alone = ['th', 'wh', 'ph', 'ng'].map(letters => digraph(`p${letters}`, letters))
    const withAlone = (count: number) => wordsByHand(...three('sh'), ...three('ch'), ...alone.slice(0, count))

    it('ranks a sort lower the more words it leaves over', () => {
      const scores = [0, 1, 2, 3].map(count => sortNamed(withAlone(count), 'which consonant digraph')!.score)
      expect(scores).toEqual([1, 0.735, 0.563, 0.444])
    })

    it('keeps it while a third at most are left over', () => {
      const names = (count: number) => rankSorts(withAlone(count)).map(sort => sort.name)
      expect(names(3)).toContain('which consonant digraph')
      expect(names(4)).not.toContain('which consonant digraph')
    })
  })

  it('leaves out a sort in which more than two thirds lack the pattern', () => {
    const lacking = (count: number) =>
      wordsByHand(...['shed', 'ship', 'shop', 'shut'].map(text => digraph(text, 'sh')), ...words(count))
    const words = (count: number) => Array.from({ length: count }, (_, index) => `m${'abcdefghijk'[index]}d`)
    const names = (count: number) => rankSorts(lacking(count)).map(sort => sort.name)
    expect(names(8)).toEqual(['which consonant digraph'])
    expect(names(9)).toEqual([])
  })

  it('keeps five columns at most, the largest', () => {
    const six = ['ai', 'ee', 'oa', 'ea', 'oo', 'ie'].flatMap((team, index) =>
      ['m', 'n', ...(index === 0 ? [] : ['t'])].map(end => ({
        text: `b${team}${end}`,
        patterns: [`vowel-team:${team}`],
      })),
    )
    const sort = sortNamed(wordsByHand(...six), 'which vowel team')!
    expect(sort.columns.map(column => column.title)).toEqual(['ee', 'oa', 'ea', 'oo', 'ie'])
    expect(sort.leftovers).toEqual(['baim', 'bain'])
  })

  it('makes no sort of a single column', () => {
    expect(sortNamed(firmly, 'how ea sounds')).toBeUndefined()
  })

  it('leaves out "or none" where a better sort has those words for a column', () => {
    const lists = wordsByHand(
      { text: 'mud', sounds: 'm:M u:AH d:D', patterns: ['short-vowel:u'] },
      { text: 'frog', sounds: 'f:F r:R o:AO g:G', patterns: ['short-vowel:o'] },
      { text: 'reed', sounds: 'r:R ee:IY d:D', patterns: ['vowel-team:ee'] },
      { text: 'toad', sounds: 't:T oa:OW d:D', patterns: ['vowel-team:oa'] },
      { text: 'pond', sounds: 'p:P o:AA n:N d:D', patterns: ['short-vowel:o'] },
      { text: 'seal', sounds: 's:S ea:IY l:L', patterns: ['vowel-team:ea'] },
    )
    expect(sortNamed(lists, 'short vowel or none')).toBeDefined()
    expect(rankSorts(lists).map(sort => sort.name)).not.toContain('short vowel or none')
  })

  it('leaves out a sort with nearly all words in one column', () => {
    const lopsided = Array.from({ length: 18 }, (_, index) => ({
      text: `word${'abcdefghijklmnopqr'[index]}`,
      syllables: index < 16 ? ['a'] : ['a', 'b'],
    }))
    expect(sortNamed(wordsByHand(...lopsided), 'how many syllables')!.leftovers).toEqual([])
    expect(rankSorts(wordsByHand(...lopsided))).toEqual([])
  })

  it('finds none where nothing divides the words', () => {
    expect(rankSorts(wordsByHand('reed', 'mud'))).toEqual([])
    expect(rankSorts([])).toEqual([])
  })

  it('tells whether an open sort is worth the name', () => {
    const sorts = rankSorts(firmly)
    expect(sorts.length).toBeGreaterThan(1)
    expect(openSortNote(sorts)).toBe(
      `These words can be sorted in ${sorts.length} ways, so children can find more than one rule.`,
    )
    expect(openSortNote(sorts.slice(0, 1))).toContain('in one way only')
    expect(openSortNote([])).toContain('cannot be sorted')
  })
})
