/** Warnings where a mark does not stand where a teacher may look for it: on no word at all, or on none inside blends. */
import type { MarkPlace } from '../../plan/plan.js'
import { type Problem, warningAt } from '../../problems.js'
import { digraphsInBlends, insideBlends } from '../../words/patterns/inside-blends.js'
import type { Word } from '../../words/word.js'
import { canBeToo, howToMarkBoth } from './can-be-too.js'
import { targetsOf } from './find-targets.js'
import { markName } from './mark-problems.js'
import type { StyledMark } from './styled-mark.js'
import { lineStyle } from './styles.js'

/** @param words all of the plan, the class's and its groups' */
export function missedWords(words: readonly Word[], marks: readonly StyledMark[]): readonly Problem[] {
  const marksBlends = marks.some(({ mark: { target } }) => isPattern(target, 'digraph-blend'))
  return marks.flatMap(styled => {
    const inBlends = marksBlends ? [] : leftInBlends(words, styled)
    if (inBlends.length > 0) return [unmarkedInBlends(styled, inBlends)]
    return words.some(word => targetsOf(word, [styled]).length > 0) ? [] : [standsNowhere(styled, words)]
  })
}

type Target = StyledMark['mark']['target']

function isPattern(target: Target, name: string): boolean {
  return target.kind === 'pattern' && target.pattern === name
}

/** Words with a digraph that the mark would stand on if it reached inside blends; none where she has said yes or no. */
function leftInBlends(words: readonly Word[], { mark }: StyledMark): readonly string[] {
  const { target } = mark
  if (target.kind !== 'pattern' || target.pattern !== insideBlends || target.insideBlends !== undefined)
    return []
  const left = words.filter(word =>
    digraphsInBlends(word).some(
      ({ place }) => target.place === undefined || place === target.place || place === 'whole',
    ),
  )
  return [...new Set(left.map(({ text }) => text))]
}

function unmarkedInBlends(styled: StyledMark, words: readonly string[]): Problem {
  return warningAt(
    styled.mark.place,
    `the mark on ${markName(styled)} does not reach the digraph inside a blend: ${named(words)}`,
    'Add "inside blends: yes" to the mark for a mark there too, or "inside blends: no" to have none.',
  )
}

function standsNowhere(styled: StyledMark, words: readonly Word[]): Problem {
  const { target } = styled.mark
  if (styled.line !== undefined && lineStyle(styled.line).stands === 'through')
    return warningAt(
      styled.mark.place,
      `the ${styled.line} of ${markName(styled)} crosses no letter: in these words all of its letters are heard`,
      'A slash crosses only letters that say nothing; give the mark another line, or an outline.',
    )
  const place = target.kind === 'word' ? undefined : target.place
  const where = place === undefined ? '' : placesInWords[place]
  const message = `the mark on ${markName(styled)} stands on no word${where}`
  const could = canBeToo(words, styled)
  return could.length === 0
    ? warningAt(styled.mark.place, message, waysOut[target.kind])
    : warningAt(styled.mark.place, `${message}, though some words can be one: ${named(could)}`, howToMarkBoth)
}

const waysOut: Readonly<Record<Target['kind'], string>> = {
  pattern:
    'Take the mark out, or add a word that shows it: "oaktag find --pattern" finds some, "oaktag study" tells what your words show.',
  letters: 'Take the mark out, or look at its letters again: "oaktag find --letters" finds words with them.',
  word: 'Take the mark out, or add a word of that kind: "oaktag study" tells what your words are.',
}

const placesInWords: Readonly<Record<MarkPlace, string>> = {
  beginning: ' at its beginning',
  middle: ' in its middle',
  end: ' at its end',
}

/** More would hide what is to be done about them. */
const mostNamed = 8

export function named(words: readonly string[]): string {
  const more = words.length - mostNamed
  return more > 1 ? `${words.slice(0, mostNamed).join(', ')} and ${more} more` : words.join(', ')
}
