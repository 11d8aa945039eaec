import { join, relative } from 'node:path'
import { installationFolder } from '../installation.js'
import { formatProblem, hasErrors, make, type Problem } from '../oaktag.js'

/** Four invented weeks in Room 7 at Heron Lane School: everything oaktag makes, in `out/`. */
const weeks = ['marsh', 'harbour', 'bakery', 'pond']

const problems: Problem[] = []
let pages = 0
const places: string[] = []
for (const week of weeks) {
  const made = await make({
    plan: relative('', join(installationFolder, 'src/demo/plans', `${week}.yaml`)),
    out: join(installationFolder, 'out'),
    formats: ['svg', 'png', 'pdf'],
    dpi: 300,
  })
  problems.push(...made.problems)
  if (!made.ok) continue
  pages += made.value.manifest.items.reduce((sum, item) => sum + item.pages.length, 0)
  places.push(`  ${made.value.manifest.title.padEnd(22)}${relative('', made.value.indexFile)}`)
}
process.stdout.write(
  [
    `Four weeks for Room 7 at Heron Lane School: ${pages} pages are ready.`,
    'Open one of these in a browser to look the sheets over and print them:',
    ...places,
    'The plans they come from are in src/demo/plans; copy one and put in your own words.',
    '',
  ].join('\n'),
)
if (problems.length > 0) process.stderr.write(`${problems.map(formatProblem).join('\n')}\n`)
if (hasErrors(problems)) process.exitCode = 1
