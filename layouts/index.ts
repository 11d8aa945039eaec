import { bagLabels } from './bag-labels/bag-labels.js'
import { bingo } from './bingo/bingo.js'
import { boardPages } from './board-pages/board-pages.js'
import { calibration } from './calibration/calibration.js'
import { callCards } from './call-cards.js'
import { chainCards } from './chain-cards.js'
import { checklist } from './checklist/checklist.js'
import { closedSort } from './closed-sort/closed-sort.js'
import { crossword } from './crossword/crossword.js'
import { diceGrid } from './dice-grid/dice-grid.js'
import { dictation } from './dictation/dictation.js'
import { fourInALine } from './four-in-a-line.js'
import { homePage } from './home-page/home-page.js'
import { key } from './key/key.js'
import type { Layout } from './layout.js'
import { lessonNotes } from './lesson-notes/lesson-notes.js'
import { letterTiles } from './letter-tiles/letter-tiles.js'
import { matchingPairs } from './matching-pairs.js'
import { missingLetters } from './missing-letters.js'
import { openSort } from './open-sort.js'
import { pathBoard } from './path-board/path-board.js'
import { patternBingo } from './pattern-bingo/pattern-bingo.js'
import { practice } from './practice/practice.js'
import { rollAndBuild } from './roll-and-build/roll-and-build.js'
import { blindSort } from './sort-sheets/blind-sort.js'
import { sortMat } from './sort-sheets/sort-mat.js'
import { sortRecord } from './sort-sheets/sort-record.js'
import { soundBoxes } from './sound-boxes/sound-boxes.js'
import { soundMat } from './sound-boxes/sound-mat.js'
import { wordCards } from './word-cards.js'
import { wordLadder } from './word-ladder/word-ladder.js'
import { blankList } from './word-lists/blank-list.js'
import { markedList } from './word-lists/marked-list.js'
import { wordSearch } from './word-search/word-search.js'
import { wordStrips } from './word-strips.js'

/** Every printable, in the order in which `oaktag list layouts` shows them. */
export const layouts: readonly Layout[] = [
  wordCards,
  openSort,
  closedSort,
  sortMat,
  blindSort,
  sortRecord,
  bingo,
  patternBingo,
  callCards,
  matchingPairs,
  chainCards,
  pathBoard,
  diceGrid,
  fourInALine,
  letterTiles,
  wordLadder,
  rollAndBuild,
  missingLetters,
  wordSearch,
  crossword,
  soundBoxes,
  soundMat,
  wordStrips,
  dictation,
  practice,
  lessonNotes,
  boardPages,
  homePage,
  key,
  markedList,
  blankList,
  bagLabels,
  checklist,
  calibration,
]
