import type { Size } from '../../geometry.js'
import { andThen, present, succeed } from '../../outcomes.js'
import { reading, type ValueReader } from '../keys/key.js'
import type { Takes } from '../keys/takes.js'
import type { Paper } from '../plan.js'
import type { Vocabulary } from '../vocabulary.js'
import { parseSize, sizeReader } from './lengths.js'
import { nameReader } from './names.js'
import { otherNames } from './other-names.js'

/** From an index card to an A2 sheet. */
const paperRange = { minMm: 50, maxMm: 600 }

/** A paper's name in any of its spellings, or its size: `100 x 150 mm`. */
export function paperReader(vocabulary: Vocabulary): ValueReader<Paper> {
  const { papers } = vocabulary
  // Many keys take a paper, and few plans name one.
  let byAlias: ReadonlyMap<string, Paper> | undefined
  const called = (text: string): Paper | undefined => {
    byAlias ??= new Map(
      papers.flatMap(paper => (paper.aliases ?? []).map(alias => [plainPaperName(alias), paper] as const)),
    )
    return byAlias.get(plainPaperName(text))
  }
  const named = nameReader({
    what: 'a paper',
    known: papers.map(({ name }) => name),
    others: otherNames('paper', vocabulary),
    where: 'Or give a size, such as 100 x 150 mm; `oaktag list papers` shows all papers.',
  })
  const sized = sizeReader('the paper', paperRange)
  const names = papers.map(({ name }) => name)
  const aliases = papers.flatMap(paper => paper.aliases ?? [])
  const takes: Takes = {
    kind: 'any of',
    ways: [{ kind: 'names', what: 'a paper', names, synonyms: aliases, list: 'papers' }, sized.takes],
  }
  return reading(takes, entry => {
    const known = entry.kind === 'text' ? called(entry.text) : undefined
    if (known) return succeed(paperAlone(known))
    if (entry.kind === 'text' && parseSize(entry.text)) {
      return andThen(sized(entry), size => succeed(portrait(entry.text, size)))
    }
    return andThen(named(entry), name => succeed(paperAlone(papers.find(paper => paper.name === name)!)))
  })
}

/** `4 x 6 card` and `4×6-Card` are one. */
export function plainPaperName(text: string): string {
  return text
    .toLowerCase()
    .replaceAll('×', 'x')
    .replaceAll(/[\s_-]+/g, '')
}

/** The paper without what else it is called. */
export function paperAlone({ name, widthMm, heightMm, screen }: Paper): Paper {
  return { name, widthMm, heightMm, ...present({ screen }) }
}

function portrait(name: string, { widthMm, heightMm }: Size): Paper {
  return { name, widthMm: Math.min(widthMm, heightMm), heightMm: Math.max(widthMm, heightMm) }
}
