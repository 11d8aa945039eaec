import type { PageFace } from '../../layouts/layout.js'
import type { DecodedPicture } from '../files/page/decode-picture.js'
import type { PlacedItem } from '../files/printed-plan.js'
import type { WritingThread } from '../files/thread/writing-thread.js'
import type { KeptFiles } from '../files/write-items.js'
import type { FittedFaces } from '../pieces/faces/fit-faces.js'
import { faceLayouter } from '../pieces/faces/lay-out-face.js'
import type { ImageShape } from '../pieces/piece.js'
import { wordMeasurer } from '../pieces/word/word-measurer.js'
import type { Outcome } from '../problems.js'
import type { CardSet } from '../sets/card-set.js'
import { openLexicon } from '../words/lexicon/lexicon.js'
import type { Word } from '../words/word.js'
import type { FacesOfItem } from './draw/draw-item.js'
import type { Imposing } from './impose/impose-plan.js'
import { identities, keptOutcomes, keptStore, passingStore } from './kept-store.js'
import type { Settling } from './settle/settle-plan.js'
import type { FittedPieces } from './settle/try-ways.js'
import type { KnownPictures } from './study/materials.js'
import type { WordStudying } from './study/study-words.js'

/** What was done anew since the beginning. */
export interface WorkDone {
  /** Words studied. */
  readonly words: number
  /** Sets dealt: which words on which card, in which order called. */
  readonly sets: number
  /** Faces laid out by satori: pieces of one shape count once. */
  readonly layouts: number
  /** Items whose fronts and backs were fitted. */
  readonly pieces: number
  /** Items whose pages were. */
  readonly pages: number
  /** Items whose faces were drawn. */
  readonly faces: number
  /** Items put on sheets. */
  readonly printed: number
  /** Pictures decoded from their files. */
  readonly decoded: number
}

/** How often what costs most was asked, since the beginning. */
export interface WorkAsked {
  /** satori: for a face without its rows, for a row. */
  readonly trees: number
  /** Words measured with their marks, in one size. */
  readonly measures: number
}

/**
 * The work of a run, a store for each step. A program that makes one plan and ends makes one of these and forgets it;
 * one that holds a plan open passes the same one again, and only what has changed is done anew.
 */
export interface KeptWork extends WordStudying, Settling, Imposing {
  readonly knownPictures: KnownPictures
  /** Left out where nothing that is drawn is held. */
  readonly files?: KeptFiles
  readonly done: () => WorkDone
  readonly asked: () => WorkAsked
  /** Lets go of what the run that ends here did not use. */
  readonly endRun: () => void
}

/** @param thread draws and writes the files of the runs, when it is ready */
export function keepWork(thread?: WritingThread): KeptWork {
  return workThat({ keepsWhatIsDrawn: true, thread })
}

/** For a run that nobody goes on with: what is drawn is the most of a plan, and is not held. */
export function workOfOneRun(): KeptWork {
  return workThat({ keepsWhatIsDrawn: false })
}

function workThat({
  keepsWhatIsDrawn,
  thread,
}: {
  readonly keepsWhatIsDrawn: boolean
  readonly thread?: WritingThread | undefined
}): KeptWork {
  const identify = identities()
  const layouter = faceLayouter()
  let measures = 0
  const words = keptOutcomes<Word>(identify)
  const sets = keptOutcomes<CardSet>(identify)
  const pieces = keptOutcomes<FittedPieces>(identify)
  const pages = keptOutcomes<FittedFaces<PageFace>>(identify)
  const faces = keepsWhatIsDrawn ? keptStore<FacesOfItem>(identify, () => false) : passingStore<FacesOfItem>()
  const printed = keepsWhatIsDrawn ? keptOutcomes<PlacedItem>(identify) : passingStore<Outcome<PlacedItem>>()
  const pictures = keptStore<ImageShape>(identify, () => false)
  const decoded = keptStore<DecodedPicture | undefined>(identify, () => false)
  return {
    lexicon: openLexicon(),
    layOut: layouter.layOut,
    measureWord: wordMeasurer(undefined, () => {
      measures += 1
    }),
    knownPictures: new Map(),
    ...(keepsWhatIsDrawn ? { files: { thread } } : {}),
    words,
    sets,
    pieces,
    pages,
    faces,
    holdsDrawn: keepsWhatIsDrawn,
    printed,
    pictures,
    decoded,
    done: () => ({
      words: words.made(),
      sets: sets.made(),
      layouts: layouter.laidOut(),
      pieces: pieces.made(),
      pages: pages.made(),
      faces: faces.made(),
      printed: printed.made(),
      decoded: decoded.made(),
    }),
    asked: () => ({ trees: layouter.treesLaidOut(), measures }),
    endRun: () => {
      layouter.letGo()
      for (const store of [words, sets, pieces, pages, faces, printed, pictures, decoded]) store.letGo()
    },
  }
}
