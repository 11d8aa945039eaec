/** The plan reference in Markdown, made from the keys that reading knows. */
import { planKeys, planNames, type ToldKey } from '../oaktag.js'

export function planReference(): string {
  const keys = planKeys()
  const places = [...new Set(keys.map(({ place }) => place))]
  return `${[
    '# The keys of a plan',
    'Made by `npm run reference` from the tables that read a plan: every key, where it stands, what it takes. Capitals do not matter, and a space, a hyphen and a low line are the same. The same in a terminal: `oaktag list keys`, `oaktag help KEY`; for editors: `oaktag schema`.',
    places.map(place => `- [${titleOf(place)}](#${anchorOf(place)})`).join('\n'),
    ...places.flatMap(place => [
      `## ${titleOf(place)}`,
      tableOf(keys.filter(key => key.place === place)),
      exampleOf(keys.filter(key => key.place === place)),
    ]),
    ...Object.entries(planNames()).flatMap(([kind, names]) => [
      `## Names: ${kind}`,
      table(
        ['name', 'what it is'],
        names
          .filter(({ summary }) => !/of your own in fonts\//.test(summary))
          .map(({ name, summary }) => [`\`${name}\``, summary]),
      ),
    ]),
  ].join('\n\n')}\n`
}

function titleOf(place: string): string {
  return `Keys of ${place.replaceAll('"', '`')}`
}

/** As GitHub makes it of a heading. */
function anchorOf(place: string): string {
  return titleOf(place)
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N} -]/gu, '')
    .replaceAll(' ', '-')
}

function tableOf(keys: readonly ToldKey[]): string {
  return table(
    ['key', 'what it does', 'takes', 'left out', 'since'],
    keys.map(({ name, does, takes, usual = '', since }) => [`\`${name}\``, does, takes, usual, since]),
  )
}

/** The keys of one place in the plan, the last of them with all that must stand round it. */
function exampleOf(keys: readonly ToldKey[]): string {
  const examples = keys.map(({ example }) => example)
  return `\`\`\`yaml\n${[...new Set(examples)].slice(0, 3).join('\n\n')}\n\`\`\``
}

function table(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const line = (cells: readonly string[]) =>
    `| ${cells.map(cell => cell.replaceAll('|', '\\|')).join(' | ')} |`
  return [line(head), line(head.map(() => '---')), ...rows.map(line)].join('\n')
}
