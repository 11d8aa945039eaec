/** A word alone: bare, with a sign for each sound, with its marks. */
import type { Size } from '../../src/geometry.js'
import type { WordSlot } from '../../src/pieces/faces/face.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { keyEntries } from '../../src/pieces/marks/key-entries.js'
import { soundsInASentence } from '../../src/words/sounds-in-words.js'
import type { Word } from '../../src/words/word.js'
import type { PageFace } from '../layout.js'
import { shownWithWords } from '../word-options.js'
import type { Board } from './board-key.js'
import { stepsOfWord } from './board-options.js'
import { boardFace, contentRoom } from './board-page.js'

interface WordStep {
  readonly heading: string
  readonly told: string
  readonly slot: Partial<WordSlot>
  /** Whether the key shows what is marked. */
  readonly keyed: boolean
}

export function wordPages(request: Board, room: Size): readonly PageFace[] {
  const steps = stepsOfWord(request)
  if (steps === 'none') return []
  const inner = contentRoom(request, room, 'foot')
  return request.words.flatMap((word, index) => {
    const key = request.marked ? keyEntries([word], request.marks) : []
    return stepsFor(request, word, { isMarked: key.length > 0, inOne: steps === 'in one step' }).map(step =>
      boardFace(
        request,
        {
          heading: step.heading,
          told: step.told,
          key: step.keyed ? key : [],
          keyAt: 'foot',
          content: {
            slots: { [`word ${index}`]: aloneSlot(request, word, step.slot, inner) },
            tree: <Slot name={`word ${index}`} style={{ width: '100%', height: '100%' }} />,
          },
        },
        room,
      ),
    )
  })
}

/** What would show nothing new is no step: the sounds of a guess, the marks of a word without any. */
function stepsFor(
  { options }: Board,
  word: Word,
  { isMarked, inOne }: { readonly isMarked: boolean; readonly inOne: boolean },
): readonly WordStep[] {
  const hasSounds = options.sounds !== 'none' && word.source !== 'guess'
  const signs = hasSounds ? shownWithWords({ sounds: options.sounds, syllables: 'none' }) : {}
  const heading = hasSounds ? soundsInASentence(word) : ''
  const bare: WordStep = { heading: '', told: `${word.text}, bare`, slot: {}, keyed: false }
  const sounds: WordStep = { heading, told: `${word.text}, ${heading}`, slot: signs, keyed: false }
  const marks: WordStep = {
    heading,
    told: `${word.text}, marked`,
    slot: { ...signs, marked: true },
    keyed: true,
  }
  return [bare, ...(hasSounds && (!inOne || !isMarked) ? [sounds] : []), ...(isMarked ? [marks] : [])]
}

/** Of the room around the word. */
const WHITE = 0.04

function aloneSlot({ type }: Board, word: Word, slot: Partial<WordSlot>, { widthMm }: Size): WordSlot {
  return {
    kind: 'word',
    word,
    marked: false,
    sizedAsMarked: true,
    sizeGroup: 'alone',
    align: 'centre',
    tagsBeside: true,
    paddingMm: widthMm * WHITE,
    maximumMm: type.wordMaximumMm * LARGER_ALONE,
    ...slot,
  }
}

const LARGER_ALONE = 1
