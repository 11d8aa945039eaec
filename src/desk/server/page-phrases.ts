/** What the engine says to whoever writes a plan, said to whoever has the page before her: controls in place of keys and commands. */

import type { DeskKey, DeskNames } from '../messages.js'
import { asLabel, titled, valueTitle } from '../plain-words.js'

/** Keys of a plan itself that stand in sentences, by the names of their controls. */
const ofPlan: readonly DeskKey[] = [
  {
    name: 'clues',
    does: 'where you gave no clue',
    example: 'drafts',
    takes: 'choice',
    choices: ['own', 'drafts'],
  },
]

/** Sentences of the engine, each as it stands there. */
export const phrases: readonly (readonly [RegExp, string])[] = [
  [
    /: "oaktag find --pattern" finds some, "oaktag study" tells what your words show\./g,
    '; what your words show stands under Marks.',
  ],
  [/: "oaktag find --letters" finds words with them\./g, '.'],
  [/: "oaktag study" tells what your words are\./g, '; what each is, stands beside it under Words.'],
  [
    /[,;] "?oaktag study(?: \S+?)?"? tells what (?:they show|the word shows)\./g,
    '; what they show stands under Marks.',
  ],
  [/[`"]oaktag list \w+[`"] shows (?:all(?: of them)?|the patterns)\./g, 'All of them can be chosen here.'],
  [/To choose yourself, write marks: in the plan\./g, 'To choose yourself, pick some under Marks.'],
  [/Add marks: to the plan that its words show/g, 'Pick marks that its words show, under Marks'],
  [/Give the plan marks that its words show/g, 'Pick marks that its words show, under Marks'],
  [
    /Add "inside blends: yes" to the mark for a mark there too, or "inside blends: no" to have none\./g,
    'Choose under Marks, How it looks, whether it is marked inside blends too.',
  ],
  [/Take "exactly" away, and/g, 'Untick “exactly this size”, and'],
  [/the item's own size wins/g, 'the size chosen for it wins'],
  [
    /Leave "size" out of the item, or print it for (.+?) in an item of its own\./g,
    'Choose the usual size for it, or add the same thing once more for $1 alone.',
  ],
  [/Give the item fewer words, or ask by/g, 'Tick fewer words for it, or ask by'],
  [
    /(leave (?:it|them|the group|the word) out) (?:of this item )?with (words|groups)\b/gi,
    '$1 where its $2 are ticked',
  ],
  [/Name words of that group under words, or/g, 'Tick words of that group for it, or'],
  [/Name the words of the lesson with words,/g, 'Tick the words of the lesson for it,'],
  [/Give it a clue in the words, or /g, 'Give it a clue under Words, or '],
  [/or write "exactly" before the size to hold it/g, 'or tick “exactly this size”'],
  [
    /write its parts of speech with the word, for example "part of speech: \[noun, verb\]"/g,
    'give the word both parts of speech, under Words',
  ],
  [
    /(?:Take|take) meant: out; for how it sounds write sounds:\./g,
    'Choose the usual one; how it sounds is said by its pieces.',
  ],
  [/ (its|their|your) (picture|clue) in the plan\b/g, ' $1 $2 (Look closer, under Words)'],
  [/ in the plan to have it otherwise/g, ' to have it otherwise'],
  [
    /Write it in your plan as you read it, for example: printer: \{[^}]*\}/g,
    'Set it as you read it, under Things to make: Your printer',
  ],
]

const mostHeld = 2000

/** `free: (?:yes|no)|…`: each key with what it takes, and no other clause that has a colon in it. */
function keysWithValues(keys: readonly DeskKey[]): string {
  const forms = keys.flatMap(key => {
    const values = valuesOf(key)
    return values === undefined ? [] : [`${key.name}: (?:${values})`]
  })
  return [...new Set(forms)].toSorted((one, other) => other.length - one.length).join('|')
}

function valuesOf(key: DeskKey): string | undefined {
  switch (key.takes) {
    case 'number':
      return '\\d+(?: or (?:less|more))?'
    case 'grid':
      return '\\d+x\\d+'
    case 'yes or no':
      return 'yes|no'
    case 'choice':
      return key.choices.toSorted((one, other) => other.length - one.length).join('|')
    default:
      return undefined
  }
}

/** @param layout of the thing that it is about, where it is about one */
export function pagePhrases(names: DeskNames): (text: string, layout?: string) => string {
  const all = [...names.itemKeys, ...Object.values(names.layoutKeys).flat()]
  const keyed = new RegExp(
    `(\\b[Ww]rite )?(?<![\\w-])(?:${keysWithValues([...all, ...ofPlan])})(?![\\w-])`,
    'g',
  )
  const titles = new Map(names.patterns.map(each => [each.name, titled(each)]))
  const patterns = new RegExp(
    `(?<![\\w-])(?:${[...titles.keys()]
      .filter(name => name.includes('-'))
      .toSorted((one, other) => other.length - one.length)
      .join('|')})(?![\\w-])`,
    'g',
  )
  const labelOf = (key: string, layout: string | undefined) => {
    const own = layout === undefined ? [] : (names.layoutKeys[layout] ?? [])
    const found: DeskKey | undefined = [...own, ...all, ...ofPlan].find(({ name }) => name === key)
    return asLabel(found?.does ?? key)
  }
  const say = (text: string, layout: string | undefined): string => {
    const chosen = text.replaceAll(keyed, (found: string, write: string | undefined) => {
      const [key = '', value = ''] = found.slice(write?.length ?? 0).split(': ')
      const begin = write === undefined ? '' : write.startsWith('W') ? 'Choose ' : 'choose '
      const title = valueTitle(key, value)
      return `${begin}${/^\d/.test(title) ? title : `“${title}”`} for “${labelOf(key, layout)}”`
    })
    const named = chosen.replaceAll(patterns, name => titles.get(name) ?? name)
    const phrased = phrases.reduce((said, [form, instead]) => said.replaceAll(form, instead), named)
    // A control stands on the page.
    return phrased.replaceAll(/\b(for “[^”]*”) in the plan\b/g, '$1')
  }
  // The same is said after every change.
  const held = new Map<string, string>()
  return (text, layout) => {
    const key = `${layout ?? ''} ${text}`
    const said = held.get(key) ?? say(text, layout)
    held.delete(key)
    held.set(key, said)
    for (const old of held.keys()) if (held.size > mostHeld) held.delete(old)
    return said
  }
}
