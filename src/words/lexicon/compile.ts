/** Part of `npm run build`: gathers what the published sources say on each word into files that open at once. */
import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { gatherPartsOfSpeech } from '../parts-of-speech/gather.js'
import { heteronyms } from '../pronunciation/heteronyms.js'
import { jointModelPath, writeJointModel } from '../pronunciation/joint-model-file.js'
import { orderPronunciations } from '../pronunciation/order.js'
import { trainJointModel } from '../pronunciation/train-joint-model.js'
import type { LexiconEntry } from './entry.js'
import { lexiconPath } from './lexicon.js'
import { readFamiliarity, readPronunciations } from './sources.js'
import { writeLexicon } from './write-lexicon.js'

const pronunciations = readPronunciations()
const familiarity = readFamiliarity()
const words = [...pronunciations.keys()]
const partsOfSpeech = gatherPartsOfSpeech(words, word => familiarity.get(word)?.count ?? 0)

const entries: LexiconEntry[] = words.map(word => ({
  word,
  pronunciations: orderPronunciations(word, pronunciations.get(word)!),
  familiarity: familiarity.get(word)?.count ?? 0,
  partsOfSpeech: partsOfSpeech.get(word) ?? [],
  glosses: [],
  unfit: false,
  name: isName(word),
  heteronym: heteronyms.has(word),
}))

mkdirSync(dirname(lexiconPath), { recursive: true })
writeFileSync(lexiconPath, writeLexicon(entries))
const lessons = entries.map(entry => ({ word: entry.word, pronunciation: entry.pronunciations[0]! }))
writeFileSync(jointModelPath, writeJointModel(trainJointModel(lessons)))

/** Written with a capital and no part of speech known, or known to no corpus and no dictionary of meanings. */
function isName(word: string): boolean {
  const { count, capitalised } = familiarity.get(word) ?? { count: 0, capitalised: false }
  return (capitalised || count === 0) && !partsOfSpeech.has(word)
}
