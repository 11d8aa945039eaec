import { nameAdvice, planKeys, toldNames } from '../door/plan-keys.js'
import { type CommandResult, resultOf, wrongUsage } from './command-result.js'
import { describeKey } from './describe-key.js'
import { findNotes } from './find-notes.js'
import { wrapLine } from './wrap-line.js'

/** `oaktag help KEY`: a key of the plan, or a name that can stand in one. */
export async function helpCommand({ what }: { readonly what: readonly string[] }): Promise<CommandResult> {
  const name = what.join(' ').replace(/:$/, '')
  if (isSame('wishes', name)) return resultOf(findNotes)
  const keys = planKeys()
  const places = keys.filter(key => isSame(key.name, name))
  const named = await describeName(name)
  const found = [...(places.length > 0 ? [describeKey(places)] : []), ...named]
  if (found.length > 0) return resultOf(found.join('\n\n'))
  return wrongUsage(`"${name}" is no command, no key of a plan and no name in one`, nameAdvice(name))
}

const kinds = {
  layouts: 'a layout',
  patterns: 'a pattern',
  lines: 'a line',
  outlines: 'an outline',
  fonts: 'a font',
  papers: 'a paper',
} as const

/** What `oaktag list` says of the name, and, of a layout, its own keys. */
async function describeName(name: string): Promise<readonly string[]> {
  const names = await toldNames()
  return Object.entries(kinds).flatMap(([kind, what]) => {
    const found = names[kind as keyof typeof kinds].find(each => isSame(each.name, name))
    if (found === undefined) return []
    const lines = wrapLine(`${found.name}, ${what}: ${found.summary}`, 80)
    return [[...lines, ...(kind === 'layouts' ? keysOfLayout(found.name) : [])].join('\n')]
  })
}

function keysOfLayout(layout: string): readonly string[] {
  const own = planKeys().filter(({ place }) => place.startsWith(`an item of ${layout} `))
  const width = Math.max(0, ...own.map(({ name }) => name.length))
  return [
    ...own.flatMap(({ name, does, takes }) => wrapLine(`  ${name.padEnd(width)}  ${does}: ${takes}`, 80)),
    'It takes the keys of every item too: oaktag list keys shows them.',
  ]
}

function isSame(name: string, typed: string): boolean {
  const folded = (text: string) =>
    text
      .trim()
      .toLowerCase()
      .replaceAll(/[\s_-]+/g, '-')
  return folded(name) === folded(typed)
}
