import { describe, expect, it } from 'vitest'
import { brokenRules } from './import-rules.js'

const house = {
  'src/geometry.ts': 'export const MM_PER_INCH = 25.4\nexport function mmToPixels() {}',
  'src/problems.ts': '',
  'src/plan/plan.ts': "import { MM_PER_INCH } from '../geometry.js'",
  'src/plan/read.ts': "import type { Plan } from './plan.js'",
  'src/words/word.ts': "import type { Plan } from '../plan/plan.js'",
  'src/files/svg.ts': "import { mmToPixels } from '../geometry.js'\nconst widthPx = 1",
  'layouts/bingo.tsx': "import type { Plan } from '../src/plan/plan.js'",
  'src/pipeline.ts': "import { bingo } from '../layouts/bingo.js'",
  'src/oaktag.ts': "export { make } from './pipeline.js'",
  'src/commands/make.ts': "const { make } = await import('../oaktag.js')",
}

/** What is told of the house with these files added or put in place of its own. */
const told = (changed: Readonly<Record<string, string>>) =>
  brokenRules(new Map(Object.entries({ ...house, ...changed })), ['satori', 'sharp', 'yaml'])

describe('the rules of imports', () => {
  it('find nothing in a house that keeps them', () => {
    expect(told({})).toEqual([])
  })

  it.each([
    ['an early stage that imports a late one', 'src/plan/plan.ts', "import { x } from '../pipeline.js'"],
    ['a type of a later stage', 'src/plan/plan.ts', "import type { Word } from '../words/word.js'"],
    ['a later stage passed on', 'src/plan/plan.ts', "export { word } from '../words/word.js'"],
    ['a later stage loaded when needed', 'src/plan/plan.ts', "const late = () => import('../words/word.js')"],
    [
      'an import over several lines',
      'src/plan/plan.ts',
      "import {\n  word,\n  other,\n} from '../words/word.js'",
    ],
    ['an import for its effect alone', 'src/plan/plan.ts', "import '../words/word.js'"],
    ['double quotes', 'src/plan/plan.ts', 'import { word } from "../words/word.js"'],
    ['a layout that writes files', 'layouts/bingo.tsx', "import { svg } from '../src/files/svg.js'"],
    ['a layout that opens a font', 'layouts/bingo.tsx', "import { load } from '../fonts/load.js'"],
    ['a layout that runs the pipeline', 'layouts/bingo.tsx', "import { make } from '../src/pipeline.js'"],
    ['a stage that knows one layout', 'src/files/svg.ts', "import { bingo } from '../../layouts/bingo.js'"],
    ['a command past the door', 'src/commands/make.ts', "import { make } from '../pipeline.js'"],
    ['a desk past the door', 'src/desk/server/serve.ts', "import { make } from '../../pipeline.js'"],
    ['a page that knows the library', 'src/desk/page/app.tsx', "import { make } from '../../oaktag.js'"],
    ['a page that knows its server', 'src/desk/page/app.tsx', "import { serve } from '../server/desk.js'"],
    ['a file that is not there', 'src/plan/plan.ts', "import { x } from './gone.js'"],
    ['a package that nobody installs', 'src/plan/plan.ts', "import x from 'left-pad'"],
    ['a drawing library among the words', 'src/words/word.ts', "import sharp from 'sharp'"],
    ['inches converted in a layout', 'layouts/bingo.tsx', 'const dotMm = 300 / 25.4'],
    ['pixels on a sheet', 'src/words/word.ts', 'const widthPx = 3'],
    ['pixels asked of geometry', 'layouts/bingo.tsx', "import { mmToPixels } from '../src/geometry.js'"],
    ['a resolution in a layout', 'layouts/bingo.tsx', 'const dpi = 300'],
  ])('tell of %s', (_, file, text) => {
    const fonts = { 'fonts/load.ts': '', 'src/desk/server/desk.ts': '' }
    expect(told({ ...fonts, [file]: text })).toEqual([expect.stringContaining(file)])
  })

  it('tell of a file in no stage', () => {
    expect(told({ 'src/utilities/lists.ts': '' })).toEqual(['src/utilities/lists.ts is in no stage'])
  })

  it('tell of a circle inside a stage', () => {
    const plan = "import { read } from './read.js'"
    expect(told({ 'src/plan/plan.ts': plan })).toEqual([
      'a circle: src/plan/plan.ts → src/plan/read.ts → src/plan/plan.ts',
    ])
  })

  it('take no notice of what stands in a comment', () => {
    expect(told({ 'layouts/bingo.tsx': '// 300 dpi are 25.4 mm of pixels' })).toEqual([])
  })
})
