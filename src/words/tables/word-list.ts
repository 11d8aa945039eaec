/** A test for the words of a list; a star at the end of one stands for any letters that follow. */
export function wordList(words: readonly string[]): (word: string) => boolean {
  const whole = new Set(words.filter(word => !word.endsWith('*')))
  const beginnings = new Set(words.filter(word => word.endsWith('*')).map(word => word.slice(0, -1)))
  const lengths = [...beginnings].map(beginning => beginning.length)
  const [shortest, longest] = [Math.min(...lengths), Math.max(...lengths)]
  const beginsAsListed = (word: string): boolean => {
    for (let length = shortest; length <= Math.min(longest, word.length); length += 1) {
      if (beginnings.has(word.slice(0, length))) return true
    }
    return false
  }
  return word => whole.has(word) || beginsAsListed(word)
}
