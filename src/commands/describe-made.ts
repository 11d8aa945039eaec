import { relative } from 'node:path'
import type { MadePlan } from '../door/make.js'
import { describeProposed } from './describe-proposed.js'
import { describeReview } from './describe-review.js'
import { wrapLine } from './wrap-line.js'

/** What was made and where to look, in lines of at most 80 columns where the paths allow it. */
export function describeMade(made: MadePlan, planFile: string): string {
  const { folder, indexFile, manifest } = made
  const nameWidth = Math.max(...manifest.items.map(item => item.name.length))
  const lines = manifest.items.map(item => {
    const pieces = item.pages.reduce((sum, page) => sum + (page.side === 'front' ? page.pieces.length : 0), 0)
    const holds = pieces === 0 ? '' : `, ${counted(pieces, 'piece')}`
    return `  ${item.name.padEnd(nameWidth)}  ${counted(item.pages.length, 'page')}${holds}`
  })
  const shown = (path: string) => relative('', path) || '.'
  return [
    `${manifest.title}: made in ${shown(folder)}`,
    ...lines,
    sheetsInAll(made),
    ...describeReview(made.review),
    ...goneWithLastSet(made),
    ...lookTwice(made, planFile),
    ...describeProposed(made.proposed),
    `Look it over and print: ${shown(indexFile)}`,
  ].join('\n')
}

/** Pieces are printed on card; keys, covers and lists on paper; pages for the screen on nothing. */
function sheetsInAll({ manifest }: MadePlan): string {
  const all = manifest.items.flatMap(({ pages }) => pages.filter(({ side }) => side === 'front'))
  const fronts = all.filter(({ kind }) => kind !== 'screen')
  const shown = all.length - fronts.length
  const card = fronts.filter(({ pieces }) => pieces.length > 0).length
  const told = [
    ...(card === 0 ? [] : [`${counted(card, 'sheet')} of card`]),
    ...(fronts.length === card ? [] : [`${fronts.length - card} of paper`]),
    ...(shown === 0 ? [] : [`${counted(shown, 'page')} for the screen`]),
  ]
  return `In all: ${told.join(', ')}`
}

function goneWithLastSet({ gone }: MadePlan): readonly string[] {
  const { items, words } = gone
  const told = [
    ...(items.length === 0 ? [] : [`${items.length === 1 ? 'the item' : 'the items'} ${shortened(items)}`]),
    ...(words.length === 0 ? [] : [`${words.length === 1 ? 'the word' : 'the words'} ${shortened(words)}`]),
  ]
  if (told.length === 0) return []
  return wrapLine(`The set that stood here was replaced; no longer in it: ${told.join('; ')}.`, 80)
}

/** A line for each kind; `check` tells more. */
function lookTwice({ guessedWords, changedGames, older }: MadePlan, planFile: string): readonly string[] {
  const games = [...new Set(changedGames.map(({ item }) => item))]
  const named = planFile.includes(' ') ? `"${planFile}"` : planFile
  const lines = [
    ...(guessedWords.length === 0
      ? []
      : [`guessed, not in the dictionary: ${shortened(guessedWords)} (see oaktag study)`]),
    ...(games.length === 0
      ? []
      : [`dealt otherwise than the plan says: ${shortened(games)} (see oaktag check)`]),
    ...(older.length === 0
      ? []
      : [
          `older than the plan: ${shortened(older)}; to make again: oaktag make ${named} --only ${older.join(' ')}`,
        ]),
  ]
  if (lines.length === 0) return []
  return ['Look at twice:', ...lines.flatMap(line => wrapLine(`  ${line}`, 80))]
}

function shortened(names: readonly string[]): string {
  const most = 8
  return names.length <= most
    ? names.join(', ')
    : `${names.slice(0, most).join(', ')} and ${names.length - most} more`
}

function counted(count: number, what: string): string {
  return `${count} ${count === 1 ? what : `${what}s`}`
}
