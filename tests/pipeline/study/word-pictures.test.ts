import { describe, expect, it } from 'vitest'
import type { StyledMark } from '../../../src/pieces/marks/styled-mark.js'
import { markPicture, stylePicture } from '../../../src/pipeline/study/word-pictures.js'
import { bundledTypeface } from '../../pieces/bundled-typefaces.js'
import { wordsOfAWeek } from '../../sets/sorts/words-of-a-week.js'

const andika = bundledTypeface('andika')
const digraph: StyledMark = {
  mark: { place: { file: 'plan.yaml' }, target: { kind: 'pattern', pattern: 'consonant-digraph' } },
  index: 0,
  line: 'double',
  descenders: 'clear',
  assigned: false,
}
const titleOf = (svg: string) => /<title[^>]*>([^<]*)/.exec(svg)?.[1]

describe('the picture of a mark', () => {
  it('is the first of the words that shows it, with that mark', () => {
    const picture = markPicture(digraph, wordsOfAWeek('reed, marsh, moth'), andika)
    expect(titleOf(picture)).toBe('marsh')
    expect(picture.length).toBeGreaterThan(
      markPicture({ ...digraph, line: 'single' }, wordsOfAWeek('marsh'), andika).length,
    )
  })

  it('is its looks alone where no word shows it', () => {
    expect(markPicture(digraph, wordsOfAWeek('reed, hop'), andika)).toBe(stylePicture(digraph, andika))
  })
})
