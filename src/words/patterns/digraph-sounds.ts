/**
 * The consonant digraphs that primary grades teach, with the sounds that make them one. Left out on purpose: th as /T/
 * (Thomas) and wh as /HH/ (who), in which one letter is silent and the other keeps its own sound.
 */
const digraphSounds: Readonly<Record<string, readonly string[]>> = {
  sh: ['SH'],
  ch: ['CH', 'SH', 'K'],
  th: ['TH', 'DH'],
  wh: ['W', 'HH W'],
  ph: ['F'],
  gh: ['F'],
  ng: ['NG'],
  ck: ['K'],
}

/** @param said the grapheme's sounds, as `HH W` */
export function isDigraph(letters: string, said: string): boolean {
  return letters.length === 2 && (digraphSounds[letters]?.includes(said) ?? false)
}
