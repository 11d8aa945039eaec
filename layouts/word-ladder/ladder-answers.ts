import { tableRows } from '../../src/pieces/parts/table-rows.js'
import type { Accent } from '../../src/plan/plan.js'
import type { CardSet } from '../../src/sets/card-set.js'
import { type LadderRung, letterChange } from '../../src/sets/games/ladder-steps.js'
import { homophonesOf } from '../../src/words/homophones/homophones.js'
import { plainSounds } from '../../src/words/pronunciation/respelling.js'
import type { LayoutRequest } from '../layout.js'

/** Every word of the ladders with what changes of its sounds and of its letters, and with its clue. */
export function ladderAnswers({ type, measure, plan }: LayoutRequest, set: CardSet, widthMm: number) {
  const first = set.cards.filter(({ copy }) => copy === 1)
  return tableRows({
    columns: [
      { heading: 'ladder', share: 0.1 },
      { heading: 'word', share: 0.19 },
      { heading: 'sounds', share: 0.15 },
      { heading: 'letters', share: 0.19 },
      { heading: 'clue', share: 0.37 },
    ],
    cells: first.flatMap(({ number, ladder }) =>
      ladder!.map((rung, index) => [
        index === 0 ? String(number) : '',
        rung.word.text,
        soundChangeOf(rung, ladder![index - 1]),
        index === 0 ? '' : letterChange(ladder![index - 1]!, rung),
        clueOf(rung, plan.accent),
      ]),
    ),
    widthMm,
    textMm: type.adultTextMm,
    measure,
  })
}

function soundChangeOf({ step, pieces }: LadderRung, before: LadderRung | undefined): string {
  if (step === undefined || before === undefined) return ''
  const [from, to] = [before.pieces[step.at]!, pieces[step.at]!].map(({ sounds }) => plainSounds(sounds))
  return `/${from}/ to /${to}/`
}

function clueOf({ clue, isOnList, word }: LadderRung, accent: Accent | undefined): string {
  const alike = homophonesOf(word.text.toLowerCase(), accent)
  const told = clue === undefined ? '' : isOnList ? clue : `${clue} (a draft)`
  const sounds = alike.length === 0 ? '' : `sounds like ${alike.join(', ')}`
  return [told, sounds].filter(part => part !== '').join('; ')
}
