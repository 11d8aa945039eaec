/** A clue, or a sentence with a gap, and the one word that it asks for. */
import type { Word } from '../../words/word.js'
import type { LeftOut, Practice, PracticeItem } from './practice.js'

/** Stands for the word in a sentence, whatever its length. */
export const GAP = '____'

/**
 * Her clue or the draft that she takes; her sentence where there is none. A word whose prompt another word of the list
 * has too is not asked for. Of a guess as of any other: a clue asks nothing of its analysis.
 */
export function cluePractice(words: readonly Word[]): Practice {
  const prompts = words.map(word => ({ word, prompt: promptFor(word) }))
  const askedBy = new Map<string, Set<string>>()
  for (const { word, prompt = '' } of prompts)
    askedBy.set(prompt, (askedBy.get(prompt) ?? new Set()).add(word.text))
  const items: PracticeItem[] = []
  const leftOut: LeftOut[] = []
  for (const { word, prompt } of prompts) {
    if (prompt === undefined) leftOut.push({ word: word.text, why: 'no clue' })
    else if (askedBy.get(prompt)!.size > 1)
      leftOut.push({ word: word.text, why: 'its clue is that of another word too' })
    else items.push({ word, prompt, answer: word.text })
  }
  return { items, leftOut }
}

function promptFor({ text, clue, sentence }: Word): string | undefined {
  if (clue !== undefined) return withGap(clue, text)
  if (sentence === undefined) return undefined
  const gapped = withGap(sentence, text)
  return gapped === sentence ? undefined : gapped
}

/** The word itself is not to be read in its prompt. */
function withGap(sentence: string, word: string): string {
  const escaped = word.replaceAll(/[.*+?^${}()|[\]\\]/g, String.raw`\$&`)
  return sentence.replaceAll(new RegExp(String.raw`(?<![\p{L}'-])${escaped}(?![\p{L}'-])`, 'giu'), GAP)
}
