/** What the page offers by name: all that may stand in a plan. */
import { inPlainSounds, itemControls, partsOfSpeech, plainName, toldNames } from '../../oaktag.js'
import type { DeskNames, NamedChoice } from '../messages.js'

export async function namesFor(): Promise<DeskNames> {
  const told = await toldNames()
  const { ofAll, ofLayout, ofWeek } = itemControls()
  const brief = (list: readonly NamedChoice[]) => list.map(({ name, summary }) => ({ name, summary }))
  return {
    layouts: brief(told.layouts),
    papers: brief(told.papers),
    fonts: brief(told.fonts),
    borders: brief(told.borders),
    patterns: told.patterns.map(({ name, summary }) => ({
      name,
      title: plainName(name),
      summary: inPlainSounds(summary),
    })),
    lines: brief(told.lines),
    outlines: brief(told.outlines),
    partsOfSpeech,
    weekParts: ofWeek,
    itemKeys: ofAll,
    layoutKeys: ofLayout,
  }
}
