import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type ChainWanted, chainCards } from '../../../src/sets/games/chain-cards.js'
import { promptsWith } from '../../../src/sets/games/prompt.js'
import { wordByHand, wordsByHand } from '../words-by-hand.js'

const place = { file: 'week.yaml', line: 14, column: 5 }
const clued = (count: number) =>
  Array.from({ length: count }, (_, index) =>
    wordByHand({ text: `word${'abcdefghijklmnop'[index]}`, clue: `clue ${index + 1}` }),
  )
const asked: ChainWanted = {
  words: clued(8),
  ask: 'clue',
  promptOf: promptsWith(() => true),
  loops: 1,
  copies: 1,
  seed: 12,
  label: 'chain',
  place,
}

function chainFrom(wanted: ChainWanted) {
  const outcome = chainCards(wanted)
  if (!outcome.ok) throw new Error(outcome.problems.map(problem => problem.message).join('; '))
  return outcome.value
}

describe('chain cards', () => {
  it('lead from card to card through the whole set and back to the first', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 3, max: 16 }), (seed, count) => {
        const { cards } = chainFrom({ ...asked, words: clued(count), seed })
        const followed = [cards[0]!]
        while (followed.length <= count) {
          const { title } = followed.at(-1)!
          const answers = cards.filter(card => card.words[0]!.clue === title)
          if (answers.length !== 1) throw new Error(`${title} is answered by ${answers.length} cards`)
          followed.push(answers[0]!)
        }
        expect([followed.at(-1), new Set(followed).size]).toEqual([cards[0], count])
      }),
      { numRuns: 1000 },
    )
  })

  it('do not lie beside the card they ask for', () => {
    const { cards } = chainFrom(asked)
    const asksFor = (one: (typeof cards)[number], other: (typeof cards)[number]) =>
      other.words[0]!.clue === one.title
    for (let index = 1; index < cards.length; index++) {
      expect(asksFor(cards[index]!, cards[index - 1]!)).toBe(false)
      expect(asksFor(cards[index - 1]!, cards[index]!)).toBe(false)
    }
  })

  it('have a key that tells the loop by number', () => {
    const { cards, answers } = chainFrom(asked)
    for (const { numbers } of answers!) {
      const [from, to] = numbers.map(number => cards[number - 1]!)
      expect(to!.words[0]!.clue).toBe(from!.title)
    }
  })

  it('tell a machine the loop in the order in which it is read', () => {
    const { cards, answerData } = chainFrom(asked)
    const loop = [answerData].flat()
    expect(loop).toHaveLength(cards.length)
    for (const [index, text] of loop.entries()) {
      const card = cards.find(each => each.words[0]!.text === text)!
      const next = cards.find(each => each.words[0]!.text === loop[(index + 1) % loop.length])!
      expect(card.title).toBe(next.words[0]!.clue)
    }
  })

  it('may ask by the plural', () => {
    const words = wordsByHand(
      { text: 'loaf', plural: { form: 'loaves', rule: 'by hand' } },
      { text: 'dish', plural: { form: 'dishes', rule: 'by hand' } },
      { text: 'bun', plural: { form: 'buns', rule: 'by hand' } },
    )
    const { cards } = chainFrom({ ...asked, words, ask: 'plural' })
    expect(cards.map(card => card.title).sort()).toEqual(['buns', 'dishes', 'loaves'])
  })
})

describe('a chain in several loops', () => {
  it('deals its words to loops of equal length, each closed and with numbers of its own', () => {
    fc.assert(
      fc.property(fc.integer(), fc.integer({ min: 9, max: 16 }), (seed, count) => {
        const { cards, answerData, notes } = chainFrom({ ...asked, words: clued(count), loops: 3, seed })
        const loops = answerData as readonly (readonly string[])[]
        const lengths = loops.map(loop => loop.length)
        expect(Math.max(...lengths) - Math.min(...lengths)).toBeLessThanOrEqual(1)
        expect(loops.flat().toSorted()).toEqual(cards.map(({ words }) => words[0]!.text).toSorted())
        const told = loops.map(loop => {
          const own = cards.filter(({ words }) => loop.includes(words[0]!.text))
          const numbers = own.map(({ number }) => number)
          const [asks, clues] = [own.map(({ title }) => title), own.map(({ words }) => words[0]!.clue)]
          return {
            numbers: [Math.min(...numbers), Math.max(...numbers)],
            closes: asks.toSorted().join() === clues.toSorted().join(),
          }
        })
        const firsts = lengths.map(
          (_, index) => 1 + lengths.slice(0, index).reduce((sum, each) => sum + each, 0),
        )
        expect(told).toEqual(
          lengths.map((length, index) => ({
            numbers: [firsts[index], firsts[index]! + length - 1],
            closes: true,
          })),
        )
        expect(notes![0]).toContain(`cards 1 to ${lengths[0]},`)
      }),
      { numRuns: 1000 },
    )
  })

  it('needs three words for each', () => {
    expect(chainCards({ ...asked, loops: 3 }).problems[0]).toMatchObject({
      message: '3 loops need 9 words with a clue, and there are 8',
      advice: 'Give more words a clue, or ask for fewer loops.',
    })
  })
})

describe('a chain by last letters', () => {
  const words = wordsByHand(
    { text: 'marsh', sounds: 'm:M ar:AA,R sh:SH' },
    { text: 'shell', sounds: 'sh:SH e:EH ll:L' },
    { text: 'llama', sounds: 'll:L a:AA m:M a:AH' },
    { text: 'reed', sounds: 'r:R ee:IY d:D' },
  )
  const byLetters: ChainWanted = { ...asked, words, ask: 'last letters' }

  it('goes from a word to one that begins as it ends, a team of letters counting as one', () => {
    const { answerData, cards } = chainFrom(byLetters)
    expect(answerData).toEqual(['marsh', 'shell', 'llama'])
    expect(cards.map(({ words: [word], title }) => `${word!.text}: ${title}`).toSorted()).toEqual([
      'llama: the end',
      'marsh: begins with sh',
      'shell: begins with ll',
    ])
  })

  it('tells as many letters as leave one card alone to answer', () => {
    const more = wordsByHand(
      { text: 'shell', sounds: 'sh:SH e:EH ll:L' },
      { text: 'leaf', sounds: 'l:L ea:IY f:F' },
      { text: 'fog', sounds: 'f:F o:AA g:G' },
      { text: 'gull', sounds: 'g:G u:AH ll:L' },
      { text: 'log', sounds: 'l:L o:AA g:G' },
    )
    const { cards } = chainFrom({ ...byLetters, words: more })
    for (const { title } of cards.filter(card => card.title !== 'the end')) {
      const letters = title!.replace('begins with ', '')
      expect(cards.filter(({ words: [word] }) => word!.text.startsWith(letters))).toHaveLength(1)
    }
  })

  it('does not take the first letter of a team for a sound of its own', () => {
    const nest = wordsByHand(
      { text: 'nest', sounds: 'n:N e:EH s:S t:T' },
      { text: 'thrush', sounds: 'th:TH r:R u:AH sh:SH' },
      { text: 'shell', sounds: 'sh:SH e:EH ll:L' },
      { text: 'loop', sounds: 'l:L oo:UW p:P' },
    )
    expect(chainFrom({ ...byLetters, words: nest }).answerData).toEqual(['thrush', 'shell', 'loop'])
  })

  it('counts doubled letters as one of them too', () => {
    const birds = wordsByHand(
      { text: 'goose', sounds: 'g:G oo:UW s:S e:' },
      { text: 'egg', sounds: 'e:EH gg:G' },
      { text: 'gull', sounds: 'g:G u:AH ll:L' },
    )
    expect(chainFrom({ ...byLetters, words: birds }).answerData).toEqual(['goose', 'egg', 'gull'])
  })

  it('says where it begins and ends where it does not close, and what has no place in it', () => {
    expect(chainFrom(byLetters).notes).toEqual(['The chain begins with “marsh” and ends with “llama”.'])
    expect(chainCards(byLetters).problems).toMatchObject([
      {
        severity: 'warning',
        message: '"reed" has no place in the chain by last letters',
        advice:
          'It gets no card; add a word that begins with the last letters of one card and ends with the first of another.',
      },
    ])
  })

  it('is an error where no three words follow one another, where loops are asked, or where words are too many', () => {
    const said = (change: Partial<ChainWanted>) =>
      chainCards({ ...byLetters, ...change }).problems.at(-1)!.message
    expect(said({ words: words.slice(0, 2) })).toBe(
      'a chain needs three words, and by last letters only two of the list follow one another',
    )
    expect(said({ words: [words[0]!, words[3]!] })).toBe(
      'a chain needs three words, and by last letters no word leads to another',
    )
    expect(said({ loops: 2 })).toBe('a chain by last letters is one, not 2 loops')
    expect(said({ words: clued(16).flatMap(word => Array.from({ length: 13 }, () => word)) })).toBe(
      'a chain by last letters is searched among 200 words, and there are 208',
    )
  })
})

describe('a chain by sound change', () => {
  const words = wordsByHand(
    { text: 'cat', sounds: 'c:K a:AE t:T' },
    { text: 'kit', sounds: 'k:K i:IH t:T' },
    { text: 'ship', sounds: 'sh:SH i:IH p:P' },
    { text: 'kip', sounds: 'k:K i:IH p:P' },
    { text: 'skip', sounds: 's:S k:K i:IH p:P' },
  )

  it('goes from word to word by one sound, however the words are spelled, and says which', () => {
    const { cards } = chainFrom({ ...asked, words: words.slice(0, 4), ask: 'sound change' })
    const chain = new Map(cards.map(({ words: [word], title }) => [word!.text, title]))
    expect([...chain.keys()].toSorted()).toEqual(['cat', 'kip', 'kit', 'ship'])
    const forwards = chain.get('ship') === 'the end'
    expect(chain.get(forwards ? 'cat' : 'kit')).toBe(
      forwards ? 'change the middle sound to i' : 'change the middle sound to a',
    )
    expect(chain.get('kip')).toBe(forwards ? 'change the first sound to sh' : 'change the last sound to t')
  })

  it('adds a sound and takes one away too', () => {
    const { cards } = chainFrom({ ...asked, words: words.slice(2), ask: 'sound change' })
    const titles = cards.map(({ title }) => title)
    expect(
      titles.some(title => title === 'add s at the beginning' || title === 'take the first sound away'),
    ).toBe(true)
  })
})

describe('a chain that cannot close', () => {
  it('is an error where two words share a prompt', () => {
    const words = [...clued(4), wordByHand({ text: 'twin', clue: 'clue 2' })]
    const outcome = chainCards({ ...asked, words })
    expect(outcome.ok).toBe(false)
    expect(outcome.problems[0]!.message).toBe(
      'the clue "clue 2" goes with "wordb" and "twin", which breaks the chain',
    )
  })

  it('is an error where fewer than three words have a prompt, with a warning for each that has none', () => {
    const outcome = chainCards({ ...asked, words: [...clued(2), wordByHand('mud')] })
    expect(outcome.problems.map(problem => problem.message)).toEqual([
      '"mud" has no clue',
      'a chain needs three words with a clue, and there are 2',
    ])
  })
})
