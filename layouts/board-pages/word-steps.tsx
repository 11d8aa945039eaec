/** A word alone: bare, with a sign for one sound after another, with its marks. */
import type { Size } from '../../src/geometry.js'
import type { WordSlot } from '../../src/pieces/faces/face.js'
import { Slot } from '../../src/pieces/faces/slot.js'
import { keyEntries } from '../../src/pieces/marks/key-entries.js'
import { piecesSoFar, soundsInASentence } from '../../src/words/sounds-in-words.js'
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
    return stepsFor(request, word, { isMarked: key.length > 0, steps }).map(step =>
      boardFace(
        request,
        {
          heading: step.heading,
          told: step.told,
          key: step.keyed ? key : [],
          keyAt: 'foot',
          content: {
            slots: { [`word ${index}`]: aloneSlot(word, step.slot, inner) },
            tree: <Slot name={`word ${index}`} style={{ width: '100%', height: '100%' }} />,
          },
        },
        room,
      ),
    )
  })
}

/** What would show nothing new is no step: the sounds of a guess, the marks of a word without any. */
function stepsFor({ options }: Board, word: Word, { isMarked, steps }: WordSteps): readonly WordStep[] {
  const bare: WordStep = { heading: '', told: `${word.text}, bare`, slot: {}, keyed: false }
  const hasSounds = options.sounds !== 'none' && word.source !== 'guess'
  const signs = hasSounds ? shownWithWords({ sounds: options.sounds, syllables: 'none' }) : {}
  const all = hasSounds ? soundsInASentence(word) : ''
  const heard = (heading: string, slot: Partial<WordSlot>): WordStep => ({
    heading,
    told: `${word.text}, ${heading}`,
    slot: { ...signs, ...slot },
    keyed: false,
  })
  const count = hasSounds && steps === 'sound by sound' ? heardPieces(word) : 0
  const oneByOne = Array.from({ length: Math.max(0, count - 1) }, (_, index) =>
    heard(piecesSoFar(word, index + 1), { soundsShown: index + 1 }),
  )
  const isSaidFirst = hasSounds && (steps !== 'in one step' || !isMarked)
  const marks: WordStep = {
    heading: all,
    told: `${word.text}, marked`,
    slot: { ...signs, marked: true },
    keyed: true,
  }
  return [bare, ...oneByOne, ...(isSaidFirst ? [heard(all, {})] : []), ...(isMarked ? [marks] : [])]
}

interface WordSteps {
  readonly isMarked: boolean
  readonly steps: ReturnType<typeof stepsOfWord>
}

function heardPieces({ pieces }: Word): number {
  return pieces.filter(({ silent }) => !silent).length
}

/** Of the room around the word. */
const WHITE = 0.04

function aloneSlot(word: Word, slot: Partial<WordSlot>, { widthMm }: Size): WordSlot {
  return {
    kind: 'word',
    word,
    marked: false,
    sizedAsMarked: true,
    sizeGroup: 'alone',
    align: 'centre',
    tagsBeside: true,
    paddingMm: widthMm * WHITE,

    ...slot,
  }
}
