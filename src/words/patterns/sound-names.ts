/** Sounds as a teacher reads them: the ARPABET sign with a key word. */
import { lazily } from '../../lazily.js'
import { rowsOf } from '../tables/installed-tables.js'

const keyWords = lazily(
  () => new Map(rowsOf('patterns/key-words').map(([sound = '', word = '']) => [sound, word])),
)

/** `/TH/ as in thin`; a sound that is not of the alphabet stays as it is. */
export function soundName(sound: string): string {
  const keyWord = keyWords().get(sound)
  return keyWord === undefined ? `/${sound}/` : `/${sound}/ as in ${keyWord}`
}

/** `/K S/`, or the single sound with its key word. */
export function soundNames(sounds: readonly string[]): string {
  return sounds.length === 1 ? soundName(sounds[0]!) : `/${sounds.join(' ')}/`
}
