/** Part of `npm run build`, after the lexicon: studies the words that `find` may offer. */
import { writeFileSync } from 'node:fs'
import { openLexicon } from '../lexicon/lexicon.js'
import { studyWord } from '../study.js'
import { offeredPath, writeOfferedWords } from './offered-file.js'
import { offeredWord } from './offered-word.js'
import { contractions, wordsToOffer } from './words-to-offer.js'

const lexicon = openLexicon()
/** Contractions stand last: only who asks for them gets them. */
const words = [...wordsToOffer(lexicon), ...contractions()]
const offered = words.flatMap(text => {
  const studied = studyWord({ text, place: { file: 'lexicon' }, overrides: {} }, lexicon)
  return studied.ok ? [offeredWord(studied.value, lexicon.lookUp(text)?.familiarity ?? 0)] : []
})
writeFileSync(offeredPath, writeOfferedWords(offered))
