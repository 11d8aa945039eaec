/**
 * The consonant digraphs that primary grades teach, with the sounds that make them one: new sounds, which neither letter
 * has alone. Left out on purpose are teams in which one letter is silent and the other keeps its own sound: ch as /K/
 * (school, chorus), th as /T/ (Thomas), wh as /HH/ (who). That ck and wh as /W/ are counted in is common practice, no
 * source.
 */
const digraphSounds: Readonly<Record<string, readonly string[]>> = {
  sh: ['SH'],
  ch: ['CH', 'SH'],
  th: ['TH', 'DH'],
  wh: ['W', 'HH W'],
  ph: ['F'],
  gh: ['F'],
  ng: ['NG'],
  ck: ['K'],
}

/** In a blend, ng stays the digraph where a /K/ is heard after it: length, strength. */
export function isDigraphInBlend(letters: string, said: string): boolean {
  return isDigraph(letters, said) || (letters === 'ng' && said === 'NG K')
}

/** @param said the grapheme's sounds, as `HH W` */
export function isDigraph(letters: string, said: string): boolean {
  return letters.length === 2 && (digraphSounds[letters]?.includes(said) ?? false)
}
