/** `npm run learn`: learns the grapheme table's weights from the lexicon's familiar words and writes them down. */
import { writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { installationFolder } from '../../installation.js'
import type { AlignmentTask } from '../alignment/align.js'
import { soundsOf } from '../alignment/arpabet.js'
import { expectUses } from '../alignment/expectation.js'
import { graphemeTable, type Pairing, pairingKey } from '../alignment/grapheme-table.js'
import { spell } from '../alignment/spelling.js'
import { orderPronunciations } from '../pronunciation/order.js'
import { readFamiliarity, readPronunciations } from './sources.js'

const lessonCount = 30_000
const rounds = 12
/** Uses added to each pairing, so that one that no lesson shows stays possible. */
const smoothing = 0.05
/** Before the first round every pairing costs the same for each letter, so that teams are not favoured. */
const firstCostPerLetter = 4

const lessons = familiarWords()
let costs = new Map<string, number>()
for (const { letters, sounds } of graphemeTable(costs).pairings) {
  costs.set(pairingKey(letters, sounds), firstCostPerLetter * letters.length)
}
let uses = new Map<Pairing, number>()
for (let round = 1; round <= rounds; round++) {
  const table = graphemeTable(costs)
  uses = new Map()
  let unexplained = 0
  for (const lesson of lessons) if (expectUses(table, lesson, uses) === 0) unexplained += 1
  const total = table.pairings.reduce((sum, pairing) => sum + (uses.get(pairing) ?? 0) + smoothing, 0)
  costs = new Map(
    table.pairings.map(pairing => [
      pairingKey(pairing.letters, pairing.sounds),
      -Math.log(((uses.get(pairing) ?? 0) + smoothing) / total),
    ]),
  )
  console.log(`round ${round}: ${unexplained} of ${lessons.length} words unexplained`)
}
write(costs, uses)

function familiarWords(): readonly AlignmentTask[] {
  const pronunciations = readPronunciations()
  const words = [...readFamiliarity()].sort((a, b) => b[1].count - a[1].count).map(([word]) => word)
  return words
    .filter(word => pronunciations.has(word))
    .slice(0, lessonCount)
    .map(word => {
      const { letters, breaks } = spell(word)
      return { letters, breaks, sounds: soundsOf(orderPronunciations(word, pronunciations.get(word)!)[0]!) }
    })
}

/** The build packs what is written here. */
function write(costs: ReadonlyMap<string, number>, uses: ReadonlyMap<Pairing, number>): void {
  const used = new Map([...uses].map(([{ letters, sounds }, count]) => [pairingKey(letters, sounds), count]))
  const rows = [...costs].map(([key, cost]) => {
    const letters = key.slice(0, key.indexOf(' '))
    const sounds = key.slice(letters.length + 1)
    return [letters, sounds, cost.toFixed(2), (used.get(key) ?? 0).toFixed(0)].join('\t')
  })
  const head = [
    'How likely each pair of the inventory is. Written by `npm run learn`: never by hand.',
    'The cost is the negative natural logarithm of the share of all graphemes.',
    `Source: learned by expectation maximisation over the ${lessonCount} most familiar words of the CMU Pronouncing Dictionary`,
    'Columns: letters (word) | sounds (sounds without stress, or -) | cost (number) | uses in the lessons (number)',
    'Order: alphabetical, a word may have several lines',
  ].map(line => `# ${line}`)
  const path = join(installationFolder, 'src/words/alignment/grapheme-weights.tsv')
  writeFileSync(path, `${[...head, ...rows].join('\n')}\n`)
}
