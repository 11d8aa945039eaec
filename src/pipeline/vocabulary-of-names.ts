import { droppedInTypefaces } from '../../fonts/dropped-in.js'
import { bundledTypefaces } from '../../fonts/index.js'
import { layouts } from '../../layouts/index.js'
import { present } from '../outcomes.js'
import { lineStyles, outlineStyles } from '../pieces/marks/styles.js'
import { borderNames } from '../pieces/parts/card-border.js'
import { keysInSentences } from '../plan/keys/placed-keys.js'
import { keysOfPlan } from '../plan/plan-keys.js'
import type { Vocabulary } from '../plan/vocabulary.js'
import { papers } from '../sheets/papers.js'
import { pluralRuleNames } from '../words/endings/plural-rule-names.js'
import { patterns } from '../words/patterns/index.js'
import { tradeWords } from '../words/trade-words/trade-words.js'

/** Every name that a plan may use, gathered from the stages that know them; it finds no fault in any font's file. */
export function vocabularyOfNames(): Vocabulary {
  const vocabulary: Vocabulary = {
    layouts: new Map(
      layouts.map(({ name, options, inWeek, paper }) => [
        name,
        { options, inWeek, ...present({ paper: papers.find(each => each.name === paper) }) },
      ]),
    ),
    patterns: patterns.map(pattern => pattern.name),
    papers,
    fonts: [...bundledTypefaces.map(typeface => typeface.name), ...droppedInTypefaces()],
    faultOfFont: () => undefined,
    lines: lineStyles.map(style => style.name),
    borders: borderNames,
    outlines: outlineStyles.map(style => style.name),
    plurals: pluralRuleNames,
    keysElsewhere: () => keysInSentences(keysOfPlan(vocabulary)),
    tradeWords,
  }
  return vocabulary
}
