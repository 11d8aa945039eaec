/** Part of `npm run build`: gathers what the published sources say on each word into one file that opens at once. */
import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
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

const entries: LexiconEntry[] = []
for (const [word, listed] of pronunciations) {
  const { count, capitalised } = familiarity.get(word) ?? { count: 0, capitalised: false }
  entries.push({
    word,
    pronunciations: orderPronunciations(word, listed),
    familiarity: count,
    partsOfSpeech: [],
    glosses: [],
    unfit: false,
    name: capitalised,
    heteronym: heteronyms.has(word),
  })
}
mkdirSync(dirname(lexiconPath), { recursive: true })
writeFileSync(lexiconPath, writeLexicon(entries))
const lessons = entries.map(({ word, pronunciations: [pronunciation] }) => ({
  word,
  pronunciation: pronunciation!,
}))
writeFileSync(jointModelPath, writeJointModel(trainJointModel(lessons)))
