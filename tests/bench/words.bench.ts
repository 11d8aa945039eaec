/** Words: how fast they are looked up, aligned and studied, and how right guesses are on words held out of the lessons. */
import { spawnSync } from 'node:child_process'
import { performance } from 'node:perf_hooks'
import { soundsOf } from '../../src/words/alignment/arpabet.js'
import { alignWord } from '../../src/words/alignment/graphemes.js'
import { spell } from '../../src/words/alignment/spelling.js'
import type { LexiconEntry } from '../../src/words/lexicon/entry.js'
import { openLexicon } from '../../src/words/lexicon/lexicon.js'
import { guesserOf } from '../../src/words/pronunciation/guess.js'
import { trainJointModel } from '../../src/words/pronunciation/train-joint-model.js'
import { studyWord } from '../../src/words/study.js'

export interface WordSpeedRow {
  readonly step: string
  readonly words: number
  readonly wordsPerSecond: number
  /** By processor time: on a busy machine the steadier figure. */
  readonly 'by processor time': number
}

/** One core, one pass each; the second pass over the dictionary shows the compiler of JavaScript warmed up. */
export function benchWordSpeed(): readonly WordSpeedRow[] {
  const lexicon = openLexicon()
  const entries = pronounced(lexicon.entries())
  const place = { file: 'bench' }
  const study = ({ word }: LexiconEntry) => studyWord({ text: word, place, overrides: {} }, lexicon)
  return [
    timed('look up', entries, ({ word }) => lexicon.lookUp(word)),
    timed('align, the whole dictionary', entries, ({ word, pronunciations: [said = ''] }) =>
      alignWord(word, said),
    ),
    timed('study, the whole dictionary', entries, study),
    timed('study, the whole dictionary again', entries, study),
  ]
}

export interface ColdLookUpRow {
  readonly step: string
  readonly medianMs: number
  readonly leastMs: number
}

/** What of a cold `oaktag study` goes into the lexicon: opening it and finding ten words, in new processes. */
export function benchColdLookUp(): readonly ColdLookUpRow[] {
  const program = `
    import { openLexicon } from '${new URL('../../src/words/lexicon/lexicon.js', import.meta.url)}'
    const start = performance.now()
    const lexicon = openLexicon()
    for (const word of '${tenWords.join(' ')}'.split(' ')) lexicon.lookUp(word)
    process.stdout.write(String(performance.now() - start))`
  const times = Array.from({ length: 9 }, () => {
    const run = spawnSync(process.execPath, ['--input-type=module', '-e', program], { encoding: 'utf8' })
    if (run.status !== 0) throw new Error(run.stderr)
    return Number(run.stdout)
  }).sort((a, b) => a - b)
  const rounded = (ms: number) => Math.round(ms * 10) / 10
  return [
    {
      step: 'lexicon opened and ten words looked up, cold',
      medianMs: rounded(times[4]!),
      leastMs: rounded(times[0]!),
    },
  ]
}

const tenWords = ['reed', 'marsh', 'shrub', 'thrush', 'stream', 'spring', 'gnat', 'wren', 'leaf', 'moth']

export interface GuessRow {
  readonly heldOut: string
  readonly words: number
  readonly 'words right %': number
  readonly 'with stress %': number
  readonly 'sounds wrong %': number
}

/** One word in ten is held out, by its place in the alphabet; a guess is right when the dictionary lists it. */
export function benchGuesses(): readonly GuessRow[] {
  const entries = pronounced(openLexicon().entries())
    .filter(({ word }) => /^[a-z]{2,}$/.test(word))
    .sort((a, b) => (a.word < b.word ? -1 : 1))
  const lessons = entries
    .filter((_, index) => index % 10 !== 0)
    .map(({ word, pronunciations: [pronunciation = ''] }) => ({ word, pronunciation }))
  const guesser = guesserOf(trainJointModel(lessons))
  const heldOut = entries.filter((_, index) => index % 10 === 0)
  const measure = (name: string, words: readonly LexiconEntry[]): GuessRow => {
    const found = words.map(({ word, pronunciations }) => ({
      pronunciations,
      said: guesser.guess(spell(word)),
    }))
    const right = found.filter(({ pronunciations, said }) =>
      pronunciations.some(listed => soundsOf(listed).join(' ') === soundsOf(said).join(' ')),
    )
    const stressed = right.filter(({ pronunciations, said }) => pronunciations.includes(said))
    const sounds = found.reduce((sum, { pronunciations }) => sum + soundsOf(pronunciations[0]!).length, 0)
    const wrong = found.reduce(
      (sum, { pronunciations, said }) =>
        sum + Math.min(...pronunciations.map(listed => distance(soundsOf(listed), soundsOf(said)))),
      0,
    )
    return {
      heldOut: name,
      words: words.length,
      'words right %': percent(right.length, words.length),
      'with stress %': percent(stressed.length, words.length),
      'sounds wrong %': percent(wrong, sounds),
    }
  }
  return [
    measure(
      'familiar words (50 times in 51 million or more)',
      heldOut.filter(({ familiarity, name }) => familiarity >= 50 && !name),
    ),
    measure(
      'every fourth of all, names included',
      heldOut.filter((_, index) => index % 4 === 0),
    ),
  ]
}

function pronounced(entries: Iterable<LexiconEntry>): LexiconEntry[] {
  return [...entries].filter(({ pronunciations }) => pronunciations.length > 0)
}

function timed(
  step: string,
  entries: readonly LexiconEntry[],
  run: (entry: LexiconEntry) => unknown,
): WordSpeedRow {
  const before = process.cpuUsage()
  const start = performance.now()
  for (const entry of entries) run(entry)
  const seconds = (performance.now() - start) / 1000
  const { user } = process.cpuUsage(before)
  return {
    step,
    words: entries.length,
    wordsPerSecond: Math.round(entries.length / seconds),
    'by processor time': Math.round(entries.length / (user / 1e6)),
  }
}

function percent(part: number, whole: number): number {
  return Math.round((part / whole) * 1000) / 10
}

/** Fewest sounds changed, added or left out (Levenshtein). */
function distance(from: readonly string[], to: readonly string[]): number {
  let row = Array.from({ length: to.length + 1 }, (_, index) => index)
  for (const [place, sound] of from.entries()) {
    const next = [place + 1]
    for (const [index, other] of to.entries()) {
      next.push(Math.min(next[index]! + 1, row[index + 1]! + 1, row[index]! + (sound === other ? 0 : 1)))
    }
    row = next
  }
  return row[to.length]!
}
