/** `npm run bench`: every table of figures, each from one run of its own on this machine. */
import { benchColdStarts } from './cold-start.bench.js'
import { benchFiles } from './files.bench.js'
import { benchLayouts } from './layouts.bench.js'

const print = (title: string, rows: readonly object[]): void => {
  process.stdout.write(`\n${title}\n`)
  console.table(rows)
}

print('Cold starts, whole processes', benchColdStarts())
print('Layouts, warm, SVG and PNG at 300 DPI', await benchLayouts())
print('Files: thirty boards and their cards', await benchFiles())
