/** The sounds of General American as the dictionary writes them (ARPABET), without stress. */
export const vowels = [
  'AA', 'AE', 'AH', 'AO', 'AW', 'AY', 'EH', 'ER', 'EY', 'IH', 'IY', 'OW', 'OY', 'UH', 'UW',
] as const // biome-ignore format: a short table

export const consonants = [
  'B', 'CH', 'D', 'DH', 'F', 'G', 'HH', 'JH', 'K', 'L', 'M', 'N', 'NG', 'P', 'R', 'S', 'SH', 'T', 'TH',
  'V', 'W', 'Y', 'Z', 'ZH',
] as const // biome-ignore format: a short table

const vowelSet: ReadonlySet<string> = new Set(vowels)

export function isVowelSound(sound: string): boolean {
  return vowelSet.has(sound)
}

export function withoutStress(sound: string): string {
  const last = sound.charCodeAt(sound.length - 1)
  return last >= 48 && last <= 57 ? sound.slice(0, -1) : sound
}

/** So many answers of `soundsOf` are kept: the rules ask for the same pronunciations again and again. */
const mostRemembered = 20_000
const remembered = new Map<string, readonly string[]>()

/** `TH R EH1 D` → `['TH', 'R', 'EH', 'D']`. */
export function soundsOf(pronunciation: string): readonly string[] {
  const known = remembered.get(pronunciation)
  if (known !== undefined) return known
  const sounds = pronunciation === '' ? [] : pronunciation.split(' ').map(withoutStress)
  if (remembered.size >= mostRemembered) remembered.clear()
  remembered.set(pronunciation, sounds)
  return sounds
}
