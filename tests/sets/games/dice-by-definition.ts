/**
 * Roll and build from its definition, with nothing of its builder: three dice of six different faces; a word is built by
 * choosing a face of each, in order. The words that children know, and those that nothing may spell, are read from the
 * files that hold them.
 */
import { readFileSync } from 'node:fs'
import { isUnfit, knownParts } from '../../../layouts/roll-and-build/known-parts.js'
import { lazily } from '../../../src/lazily.js'
import type { CardSet } from '../../../src/sets/card-set.js'
import { type RollWanted, rollAndBuild } from '../../../src/sets/games/roll-and-build.js'
import { generatorFor, shuffle } from '../../../src/sets/random.js'
import { offeredPath, offeredTexts } from '../../../src/words/find/offered-file.js'
import { unfitPath } from '../../../src/words/fitness/unfit-file.js'
import { installedLexicon } from '../../../src/words/lexicon/lexicon.js'
import { studyWord } from '../../../src/words/study.js'
import type { Word } from '../../../src/words/word.js'

const place = { file: 'marsh.yaml', line: 9 }

/** The most familiar first. */
const fitTexts = lazily(() =>
  readFileSync(offeredPath, 'latin1')
    .split('\n')
    .slice(1)
    .map(line => line.slice(4).split('\t')[0]!)
    .filter(text => text !== ''),
)
const fitWords = lazily(() => new Set(fitTexts()))
const unfit = lazily(() => new Set(readFileSync(unfitPath, 'latin1').split('\n')))

export function studied(text: string): Word {
  const word = studyWord({ text, place, overrides: {} }, installedLexicon())
  if (!word.ok) throw new Error(text)
  return word.value
}

export function askedDice(wanted: Pick<RollWanted, 'words'> & Partial<RollWanted>): RollWanted {
  return {
    known: knownParts(),
    isKnown: text => offeredTexts().has(text),
    isUnfit,
    fits: () => true,
    sets: 1,
    copies: 1,
    seed: 12,
    label: 'roll-and-build',
    place,
    ...wanted,
  }
}

/** Three dice as they are on their nets, and the words that the answers claim for them. */
export interface DiceAnswer {
  readonly dice: readonly (readonly string[])[]
  readonly words: readonly string[]
}

export function diceAnswers({ cards, answers = [] }: CardSet): readonly DiceAnswer[] {
  return answers.map(({ text, numbers }) => ({
    words: text.split(', '),
    dice: numbers.map(number => cards.find(card => card.number === number)!.die!.faces),
  }))
}

/** What is wrong with three dice of a list; empty where nothing is. */
export function faultsOfDice({ dice, words }: DiceAnswer, listed: readonly string[]): readonly string[] {
  const [first = [], second = [], third = []] = dice
  const spelled = new Set(first.flatMap(a => second.flatMap(b => third.map(c => `${a}${b}${c}`))))
  const known = [...spelled].filter(text => fitWords().has(text) || listed.includes(text))
  return [
    ...(dice.length === 3 ? [] : [`${dice.length} dice`]),
    ...dice
      .filter(faces => faces.length !== 6 || new Set(faces).size !== 6)
      .map(faces => `a die of ${faces.length} faces: ${faces.join(' ')}`),
    ...words.filter(word => !spelled.has(word)).map(word => `"${word}" cannot be built`),
    ...words
      .filter(word => !fitWords().has(word) && !listed.includes(word))
      .map(word => `"${word}" is no known word`),
    ...known.filter(word => !words.includes(word)).map(word => `"${word}" can be built, and is not told`),
    ...[...spelled].filter(text => unfit().has(text)).map(text => `"${text}" can be built, and is unfit`),
  ]
}

/** A week's list by chance: nine of the 2,500 most familiar words that children may meet, whatever their syllables. */
export function weekByChance(seed: number): readonly string[] {
  return shuffle(fitTexts().slice(0, 2500), generatorFor(seed, 'a week')).slice(0, 9)
}

/** What is wrong with the dice of a week by chance; a list that builds nothing with three dice is told, and no fault. */
export function faultsOfWeek(seed: number): { readonly sets: number; readonly faults: readonly string[] } {
  const listed = weekByChance(seed)
  const made = rollAndBuild(askedDice({ words: listed.map(studied), seed, sets: 1 + (seed % 3) }))
  if (!made.ok) {
    const messages = made.problems.map(({ message }) => message)
    return { sets: 0, faults: messages.every(text => text.startsWith('no word of the list')) ? [] : messages }
  }
  const answers = diceAnswers(made.value)
  return { sets: answers.length, faults: answers.flatMap(answer => faultsOfDice(answer, listed)) }
}
