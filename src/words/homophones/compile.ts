/** Part of `npm run build`: finds the homophones of the lexicon and adds those listed by hand. */
import { writeFileSync } from 'node:fs'
import { openLexicon } from '../lexicon/lexicon.js'
import { readSenses } from '../parts-of-speech/wordnet.js'
import { rowsOf, wordsOf } from '../tables/installed-tables.js'
import { gatherHomophones } from './gather-homophones.js'
import { homophonesPath, packHomophones } from './homophones-file.js'
import { oneWordTest } from './one-word.js'
import { type HomophoneGroup, readWhere } from './where.js'

const found = gatherHomophones({
  entries: [...openLexicon().entries()],
  isOneWord: oneWordTest(readSenses()),
  leftOut: new Set(wordsOf('homophones/left-out')),
  calledOut: new Set(wordsOf('fitness/called-out')),
})
const listed = rowsOf('homophones/homophones').map(
  ([words = '', where = '']): HomophoneGroup => ({ words: words.split(' '), where: readWhere(where)! }),
)
writeFileSync(homophonesPath, packHomophones([...found, ...listed]))
