import type { Accent } from '../../src/plan/plan.js'
import { heardPieces, type LadderWord } from '../../src/sets/games/ladder-words.js'
import type { KnownWords } from '../../src/sets/games/ladders-wanted.js'
import { openOfferedWords } from '../../src/words/find/offered-file.js'
import type { OfferedWord } from '../../src/words/find/offered-word.js'
import { inAccent } from '../../src/words/pronunciation/accent.js'
import { heteronyms } from '../../src/words/pronunciation/listed-pronunciations.js'
import { allDrafts } from '../../src/words/senses/drafts.js'
import { plainWord } from '../plain-word.js'

/** Words fit for children, as the class says them; none that is said in two ways. */
export function knownWords(accent: Accent | undefined): KnownWords {
  return {
    wordsOf: (sounds, least) => {
      const found: LadderWord[] = []
      for (const offered of openOfferedWords()) {
        // The most familiar come first.
        if (sounds.has(offered.soundCount)) {
          if (offered.familiarity < least) break
          found.push(...ladderWordOf(offered, accent))
        }
      }
      return found
    },
    wordCalled: text => {
      const offered = openOfferedWords().find(each => each.text === text.toLowerCase())
      return offered && ladderWordOf(offered, accent)[0]
    },
  }
}

/** None for a word whose pieces are not those that its graphemes give: `fire`, where i and r are one piece. */
function ladderWordOf(offered: OfferedWord, accent: Accent | undefined): readonly LadderWord[] {
  const { text, familiarity } = offered
  if (heteronyms().has(text)) return []
  const graphemes = accent === undefined ? offered.graphemes : spokenIn(accent, offered)
  const pieces = heardPieces(graphemes.map(grapheme => [grapheme]))
  if (pieces.reduce((sum, { counts }) => sum + counts, 0) !== offered.soundCount) return []
  const clue = allDrafts().get(text)
  const word = { ...plainWord(text), known: true, source: 'lexicon', graphemes } as const
  const known = { word, pieces, isOnList: false, familiarity }
  return [clue === undefined ? known : { ...known, clue }]
}

function spokenIn(accent: Accent, { graphemes }: OfferedWord) {
  const pronunciation = graphemes.flatMap(({ sounds }) => sounds).join(' ')
  return inAccent({ graphemes, pronunciation }, accent).graphemes
}
