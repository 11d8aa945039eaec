import type { Size } from '../geometry.js'
import type { Reader } from './entry.js'
import { parseSize, sizeReader } from './lengths.js'
import { nameReader } from './names.js'
import { andThen, succeed } from './outcomes.js'
import type { Paper } from './plan.js'

/** From an index card to an A2 sheet. */
const paperRange = { minMm: 50, maxMm: 600 }

/** A paper's name, or its size: `100 x 150 mm`. */
export function paperReader(papers: readonly Paper[]): Reader<Paper> {
  const named = nameReader({
    what: 'a paper',
    known: papers.map(({ name }) => name),
    where: 'Or give a size, such as 100 x 150 mm; `oaktag list papers` shows all papers.',
  })
  const sized = sizeReader('the paper', paperRange)
  return entry => {
    if (entry.kind === 'text' && parseSize(entry.text)) {
      return andThen(sized(entry), size => succeed(portrait(entry.text, size)))
    }
    return andThen(named(entry), name => succeed(papers.find(paper => paper.name === name)!))
  }
}

function portrait(name: string, { widthMm, heightMm }: Size): Paper {
  return { name, widthMm: Math.min(widthMm, heightMm), heightMm: Math.max(widthMm, heightMm) }
}
