/** A digraph inside a digraph blend (the sh of shrug): no finding of its own, as the blend is named as a whole. */
import type { Finding, Word } from '../word.js'
import { isDigraphInBlend } from './digraph-sounds.js'
import { placeOf } from './spelled-sounds.js'

/**
 * The pattern that can be looked for inside blends. No blend can: which two letters of str blend (st or tr) has no one
 * answer.
 */
export const insideBlends = 'consonant-digraph'

interface WithBlends extends Pick<Word, 'text' | 'graphemes'> {
  readonly patterns: readonly Pick<Finding, 'pattern' | 'letters' | 'start' | 'end'>[]
}

/** The digraphs inside the digraph blends that the word's findings name, from left to right. */
export function digraphsInBlends({ text, graphemes, patterns }: WithBlends): readonly Finding[] {
  const blends = patterns.filter(finding => finding.pattern === 'digraph-blend')
  if (blends.length === 0) return []
  return graphemes.flatMap(grapheme => {
    const { start, sounds } = grapheme
    const letters = grapheme.letters.replaceAll(/['-]/g, '')
    const end = start + letters.length
    const blend = blends.find(finding => finding.start <= start && end <= finding.end)
    if (blend === undefined || !isDigraphInBlend(letters.toLowerCase(), sounds.join(' '))) return []
    const why = `${letters} is the digraph inside the blend ${blend.letters}`
    return [{ pattern: insideBlends, letters, start, end, place: placeOf(text, start, end), why }]
  })
}
