/** A dictionary gloss → a line short and plain enough for a clue card, or nothing. */
export interface DraftTask {
  readonly word: string
  readonly gloss: string
  readonly familiarity: (word: string) => number
  readonly isUnfit: (word: string) => boolean
}

/** So that a clue fits on a card in two lines. */
const longest = 64
/** Occurrences in 51 million words of speech below which a word is likely strange to a child. */
const leastFamiliar = 60

/** Senses that are no help to a class. */
const notForClass =
  /\b(?:slang|obscene|offensive|vulgar|archaic|ethnic|derogatory|disparag|sexual|intercourse|heraldry|chastity|seductive|racial|race|descent|informal|euphemism|intimate|caucasian|hostil|resentment|illegally|moral|alternative names|law\)|Scottish\)|British\))/i

export function draftFrom({ word, gloss, familiarity, isUnfit }: DraftTask): string | undefined {
  if (notForClass.test(gloss)) return undefined
  const clause = firstClause(gloss)
  if (clause === undefined || namesTheWord(clause, word)) return undefined
  const words = clause.toLowerCase().match(/[a-z']+/g) ?? []
  if (words.length < 2 || words.some(isUnfit)) return undefined
  return words.every(one => familiarity(one) >= leastFamiliar) ? clause : undefined
}

/** Up to the first semicolon, without examples and brackets; cut again where it is too long for a card. */
function firstClause(gloss: string): string | undefined {
  const whole = gloss
    .replace(/"[^"]*"?/g, '')
    .replace(/\([^)]*\)\s*/g, '')
    .split(/[;:]/)[0]!
    .replace(/\s+/g, ' ')
    .replace(/\s+,/g, ',')
    .trim()
    .replace(/[,\s]+$/, '')
  if (whole.length <= longest) return whole === '' ? undefined : whole
  const cuts = boundaries.map(cut => whole.indexOf(cut, shortestCut)).filter(at => at > 0 && at <= longest)
  if (cuts.length === 0) return undefined
  const cut = whole.slice(0, Math.max(...cuts)).replace(/[,\s]+$/, '')
  return hangs.test(cut) ? undefined : cut
}

const shortestCut = 18
/** Before these words a gloss may end and still be a phrase. */
const boundaries = [
  ', ',
  ' that ',
  ' which ',
  ' who ',
  ' usually ',
  ' especially ',
  ' such as ',
  ' having ',
  ' used ',
  ' where ',
  ' when ',
  ' with ',
]
/** An end that waits for more. */
const hangs =
  /\b(?:a|an|the|and|or|of|by|with|to|in|for|on|at|from|as|that|which|is|are|be|can|not|any|some|its|their|than|into|[a-z]+ed|covered|made|deal|one|state)$/

/** A clue that says the word, or a form or part of it, gives it away. */
function namesTheWord(clause: string, word: string): boolean {
  const stem = word.length > 4 ? word.replace(/(?:ing|ed|er|es|s|y|e)$/, '') : word
  return clause
    .toLowerCase()
    .split(/[^a-z']+/)
    .some(one => one === word || (stem.length >= 3 && one.startsWith(stem) && one.length <= stem.length + 4))
}
