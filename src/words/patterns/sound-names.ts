/** Sounds as a teacher reads them: the ARPABET sign with a key word. */

const keyWords: Readonly<Record<string, string>> = {
  AA: 'hot',
  AE: 'hat',
  AH: 'hut',
  AO: 'saw',
  AW: 'cow',
  AY: 'pie',
  B: 'bed',
  CH: 'chin',
  D: 'dog',
  DH: 'then',
  EH: 'bed',
  ER: 'fern',
  EY: 'day',
  F: 'fish',
  G: 'gate',
  HH: 'hat',
  IH: 'pig',
  IY: 'see',
  JH: 'jam',
  K: 'kite',
  L: 'leg',
  M: 'map',
  N: 'net',
  NG: 'ring',
  OW: 'boat',
  OY: 'boy',
  P: 'pan',
  R: 'rug',
  S: 'sun',
  SH: 'ship',
  T: 'top',
  TH: 'thin',
  UH: 'book',
  UW: 'moon',
  V: 'van',
  W: 'web',
  Y: 'yes',
  Z: 'zip',
  ZH: 'treasure',
}

/** `/TH/ as in thin`; a sound that is not of the alphabet stays as it is. */
export function soundName(sound: string): string {
  const keyWord = keyWords[sound]
  return keyWord === undefined ? `/${sound}/` : `/${sound}/ as in ${keyWord}`
}

/** `/K S/`, or the single sound with its key word. */
export function soundNames(sounds: readonly string[]): string {
  return sounds.length === 1 ? soundName(sounds[0]!) : `/${sounds.join(' ')}/`
}
