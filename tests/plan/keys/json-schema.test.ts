import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { Ajv2020 } from 'ajv/dist/2020.js'
import { describe, expect, it } from 'vitest'
import { parse } from 'yaml'
import { installationFolder } from '../../../src/installation.js'
import { planVocabulary } from '../../../src/pipeline/vocabulary.js'
import { exampleOf } from '../../../src/plan/keys/placed-keys.js'
import { classFileSchema, keysOfPlan, planSchema } from '../../../src/plan/plan-keys.js'
import { readPlan } from '../../../src/plan/read-plan.js'
import { starterPlan } from '../../../src/plan/starter-plan.js'
import { filesInMemory } from '../reading.js'
import { isOfClass } from './of-class.js'

const vocabulary = planVocabulary()
/**
 * Strict: ajv refuses a schema with a keyword that it does not know or that says nothing. What it compiles serves a few
 * hundred texts, so that making it shorter takes longer than it saves.
 */
const ajv = new Ajv2020({
  strict: true,
  strictTypes: false,
  strictRequired: false,
  allErrors: true,
  inlineRefs: false,
  code: { optimize: false },
})
const isPlan = ajv.compile(planSchema(vocabulary))
const isClassFile = ajv.compile(classFileSchema(vocabulary))

/** As an editor reads YAML 1.2: `3` a number, `true` a truth value, `yes` a text. */
function wrongIn(text: string, isValid = isPlan): readonly string[] {
  isValid(parse(text))
  return (isValid.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`)
}

const demoFolder = join(installationFolder, 'src/demo/plans')
const demos = readdirSync(demoFolder).filter(name => name.endsWith('.yaml'))
const readme = readFileSync(join(installationFolder, 'README.md'), 'utf8')
const inReadme = [...readme.matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, text = '']) => text)

const everyExample = keysOfPlan(vocabulary)
  .filter(({ place }) => !isOfClass(place))
  .map(placed => exampleOf(placed))
  .map(lines => {
    const has = (key: string) => lines.some(line => line.startsWith(`${key}:`))
    return [
      ...lines,
      ...(has('words') ? [] : ['words: [reed]']),
      ...(has('print') ? [] : ['print: [key]']),
    ].join('\n')
  })

describe('the JSON Schema of a plan', () => {
  const good: readonly (readonly [what: string, text: string])[] = [
    ...demos.map(name => [`the demo ${name}`, readFileSync(join(demoFolder, name), 'utf8')] as const),
    ['the starter plan', starterPlan],
    ...inReadme.map((text, index) => [`plan ${index + 1} of the README`, text] as const),
    ...everyExample.map(text => [`the example ${JSON.stringify(text)}`, text] as const),
    ['keys in other spellings', 'Words: [reed]\nPRINT:\n  - Layout: Word_Cards\n    BACK: Name\n'],
    ['words that YAML takes for something else', 'words: [no, true, null, yes, on]\nprint: [key]\n'],
    ['no marks and no groups', 'words: [reed]\nmarks:\ngroups:\nprint: key\n'],
    [
      'a shift that its comma cuts in two between braces',
      'words: [reed]\nprinter: {back shift: 1.2 mm right, 0.8 mm down, passes: two}\nprint: [key]\n',
    ],
    ['words in a file', 'words: week-3.TXT\nprint: [key]\n'],
  ]

  it.each(good)('takes %s', (_what, text) => {
    expect(wrongIn(text)).toEqual([])
  })

  it('has a plan of the README to hold against', () => expect(inReadme.length).toBeGreaterThan(0))

  it.each([
    ['no words', 'print: [key]\n'],
    ['nothing to print', 'words: [reed]\n'],
    ['a key that is none', 'words: [reed]\nprint: [key]\nsead: 3\n'],
    ['a key at the wrong place', 'words: [reed]\nprint: [key]\ncopies: 3\n'],
    ['a word with a space', 'words: [salt marsh]\nprint: [key]\n'],
    ['a number for a word', 'words: [12]\nprint: [key]\n'],
    ['an unknown layout', 'words: [reed]\nprint: [binggo]\n'],
    ['an item without a layout', 'words: [reed]\nprint: [{copies: 3}]\n'],
    ['an option of another layout', 'words: [reed]\nprint: [{layout: key, boards: 3}]\n'],
    ['an unknown pattern', 'words: [reed]\nmarks: [{pattern: digraph}]\nprint: [key]\n'],
    ['an outline as a line', 'words: [reed]\nmarks: [{letters: ee, line: rounded}]\nprint: [key]\n'],
    ['a number out of range', 'words: [reed]\nprint: [{layout: bingo, boards: 1001}]\n'],
    ['a length that is none', 'words: [reed]\nprint: [{layout: key, margin: wide}]\n'],
    ['a size that is none', 'words: [reed]\nprint: [{layout: key, size: 20/200}]\n'],
    [
      'an acuity without a distance',
      'words: [reed]\nprint: [{layout: key, size: {for: {acuity: 20/200}}}]\n',
    ],
    ['a colour that is none', 'words: [reed]\nmarks: [{letters: ee, color: "#12"}]\nprint: [key]\n'],
    ['a group without a name', 'words: [reed]\ngroups: [{size: large}]\nprint: [key]\n'],
    ['no key at all', '- reed\n- marsh\n'],
  ])('refuses %s, as the reader does', (_what, text) => {
    expect(wrongIn(text)).not.toEqual([])
    expect(readPlan({ file: 'week.yaml', text, vocabulary, files: filesInMemory({}) }).ok).toBe(false)
  })
})

describe('the JSON Schema of a class file', () => {
  it('takes its keys', () => {
    const text = 'words:\n  - word: marsh\n    sounds: m ar sh\ntaught: [sh, ee]\naccent: {r: dropped}\n'
    expect(wrongIn(text, isClassFile)).toEqual([])
    expect(wrongIn('taught: sh, ee\nwords:\n', isClassFile)).toEqual([])
  })

  it('takes the example of each', () => {
    const examples = keysOfPlan(vocabulary)
      .filter(({ place }) => isOfClass(place))
      .map(placed => exampleOf(placed).join('\n'))
    expect(examples.length).toBeGreaterThan(10)
    expect(examples.flatMap(text => wrongIn(text, isClassFile))).toEqual([])
  })

  it('refuses those of a plan', () => {
    expect(wrongIn('print: [key]\n', isClassFile)).not.toEqual([])
  })
})
