/** Part of `npm run build`: gathers what the published sources say on each word into files that open at once. */
import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname } from 'node:path'
import { gatherNames } from '../fitness/gather-names.js'
import { gatherNotReadAloud, gatherUnfit } from '../fitness/gather-unfit.js'
import { unfitPath, writeUnfitWords } from '../fitness/unfit-file.js'
import { gatherPartsOfSpeech } from '../parts-of-speech/gather.js'
import { readSenses } from '../parts-of-speech/wordnet.js'
import { likeAfterPrefix, likeItsBase, likeItsHalves, withWeakPrefix } from '../pronunciation/families.js'
import { jointModelPath, writeJointModel } from '../pronunciation/joint-model-file.js'
import { addedPronunciations, corrections, heteronyms } from '../pronunciation/listed-pronunciations.js'
import { orderPronunciations } from '../pronunciation/order.js'
import { trainJointModel } from '../pronunciation/train-joint-model.js'
import type { LexiconEntry } from './entry.js'
import { lexiconPath } from './lexicon.js'
import { readFamiliarity, readPronunciations } from './sources.js'
import { writeLexicon } from './write-lexicon.js'

/** A rarer look-alike explains no family: crosse is not the base of crosses. */
const familiarBase = 20

const pronunciations = readPronunciations()
const heard = readFamiliarity()
const familiarity = (word: string) => heard.get(word)?.count ?? 0
const words = candidates()
const partsOfSpeech = gatherPartsOfSpeech(words, familiarity)
const unfit = gatherUnfit(words)
const notReadAloud = gatherNotReadAloud()
const listed = new Map(words.map(word => [word, orderPronunciations(word, pronunciations.get(word) ?? [])]))
const names = gatherNames({
  words,
  isCapitalised: word => heard.get(word)?.capitalised ?? false,
  pronunciationOf: word => listed.get(word)?.[0],
  hasPartOfSpeech: word => partsOfSpeech.has(word),
})

const family = { firstOf: (base: string) => (isBase(base) ? listed.get(base)?.[0] : undefined) }
for (const inFamily of [withWeakPrefix, likeItsHalves, likeAfterPrefix]) {
  for (const [word, [first, ...rest]] of listed) {
    if (first !== undefined && !corrections().has(word))
      listed.set(word, [inFamily(word, first, family), ...rest])
  }
}

const entries = words.filter(isWord).map(
  (word): LexiconEntry => ({
    word,
    pronunciations: pronunciationsOf(word),
    familiarity: familiarity(word),
    partsOfSpeech: partsOfSpeech.get(word) ?? [],
    unfit: unfit.has(word),
    notReadAloud: notReadAloud.has(word),
    name: names.has(word),
    heteronym: heteronyms().has(word),
  }),
)
const lessons = entries.flatMap(({ word, pronunciations: [pronunciation] }) =>
  pronunciation === undefined ? [] : [{ word, pronunciation }],
)
mkdirSync(dirname(lexiconPath), { recursive: true })
writeFileSync(lexiconPath, writeLexicon(entries))
writeFileSync(unfitPath, writeUnfitWords(unfit))
writeFileSync(jointModelPath, writeJointModel(trainJointModel(lessons)))

/** Also words without a listed pronunciation (cygnet, dragonfly): what else is known of them is kept. */
function candidates(): readonly string[] {
  const others = [...heard.keys(), ...readSenses().keys()].filter(word => /^[a-z]{2,20}$/.test(word))
  return [...new Set([...pronunciations.keys(), ...addedPronunciations().keys(), ...others])]
}

/** Fragments and names that speech alone knows are left out. */
function isWord(word: string): boolean {
  return isSaid(word) || (partsOfSpeech.has(word) && !names.has(word))
}

function isSaid(word: string): boolean {
  return pronunciations.has(word) || addedPronunciations().has(word)
}

function isBase(word: string): boolean {
  return !names.has(word) && familiarity(word) >= familiarBase
}

/** The one to teach first sounds like its base; what stands in a table stays. */
function pronunciationsOf(word: string): readonly string[] {
  const [first, ...rest] = listed.get(word) ?? []
  if (first === undefined || heteronyms().has(word) || corrections().has(word)) return listed.get(word) ?? []
  return [...new Set([likeItsBase(word, first, family), ...rest])]
}
