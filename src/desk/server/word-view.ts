/** A word as the study tells it to the page. */
import {
  inPlainSounds,
  type LookedAtPlan,
  respelling,
  soundsInASentence,
  studyTypedWords,
  type Word,
  waysMeant,
} from '../../oaktag.js'
import type { DeskWord, NoWordHere } from '../messages.js'
import type { Pictures } from './picture-store.js'

/** Words as they are being typed. */
export function tellTyped(
  typed: readonly string[],
  looked: LookedAtPlan | undefined,
  pictures: Pictures,
): readonly (DeskWord | NoWordHere)[] {
  return typed.map(text => {
    const studied = studyTypedWords([text])
    if (studied.ok) return tellWord(studied.value[0]!, looked?.pictureOf(studied.value[0]!), pictures)
    const { message, advice } = studied.problems[0]!
    return { trouble: inASentence(message), advice }
  })
}

export function tellWord(word: Word, svg: string | undefined, pictures: Pictures): DeskWord {
  const said = [...new Set(word.pronunciations.map(each => respelling(word, each)))]
  return {
    text: word.text,
    source: word.source,
    yours: word.overridden ?? [],
    sounds: soundsInASentence(word),
    said: said.slice(0, 4),
    meanings: waysMeant(word).map(({ pronunciation, meaning }) => ({
      meaning,
      said: respelling(word, pronunciation),
    })),
    soundCount: word.soundCount,
    pieces: word.pieces,
    syllables: word.syllables,
    partsOfSpeech: word.partsOfSpeech,
    partsAreGuessed: word.partsOfSpeechGuessed === true,
    plural: word.plural === null ? null : { form: word.plural.form, rule: word.plural.rule },
    patterns: word.patterns.map(({ pattern, letters, start, end, place, source, why }) => ({
      pattern,
      letters,
      start,
      end,
      place,
      yours: source === 'teacher',
      why: inPlainSounds(why),
    })),
    notes: (word.notes ?? []).map(inPlainSounds),
    ...(word.clue === undefined || word.clueIsDraft === true ? {} : { clue: word.clue }),
    ...(word.clueDraft === undefined ? {} : { clueDraft: word.clueDraft }),
    ...(svg === undefined ? {} : { picture: pictures.keep(svg) }),
  }
}

/** A clause as a problem has it. */
export function inASentence(clause: string): string {
  return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`
}
