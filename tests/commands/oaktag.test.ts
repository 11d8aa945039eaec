import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { folderWith, marshPlan } from '../pipeline/plan-folder.js'
import { answered, commandFile, oaktag } from './run-oaktag.js'

const empty = () => folderWith({})

describe('wrong usage', () => {
  it.each([
    ['a command that is none', ['--json']],
    ['an unknown command', ['mkae', 'plan.yaml']],
    ['an unknown option', ['make', 'plan.yaml', '--frobnicate']],
    ['make without a plan', ['make']],
    ['an unknown format', ['make', 'plan.yaml', '--format', 'gif']],
    ['a resolution that is none', ['make', 'plan.yaml', '--dpi', 'many']],
    ['study without words', ['study']],
    ['study with words and a file', ['study', 'reed', '--file', 'words.txt']],
    ['find without a wish', ['find']],
    ['find with an unknown pattern', ['find', '--pattern', 'digraf']],
    ['sorts without words', ['sorts']],
    ['list of an unknown kind', ['list', 'colours']],
    ['an option that is given twice', ['make', 'plan.yaml', '--out', 'a', '--out', 'b']],
    ['an option without its value', ['make', 'plan.yaml', '--format']],
    ['an output folder without a name', ['make', 'plan.yaml', '--out', '']],
    ['pixels in parts', ['make', 'plan.yaml', '--dpi', '72.5']],
    ['a seed of more than 32 bits', ['make', 'plan.yaml', '--seed', '4294967296']],
    ['items without a name', ['make', 'plan.yaml', '--only', '']],
    ['no jobs at all', ['make', 'plan.yaml', '--jobs', '0']],
  ])('%s exits with 2, says so on standard error and prints nothing else', async (_what, args) => {
    const { code, out, err } = await answered(args, empty())
    expect(code).toBe(2)
    expect(out).toBe('')
    expect(err).toMatch(/^oaktag: /)
  })
})

describe('the process', () => {
  it('ends with 2 at wrong usage, and has printed nothing but why, in one language whatever the machine speaks', () => {
    const env = { LC_ALL: 'de_DE.UTF-8', LANG: 'de_DE.UTF-8' }
    const { code, out, err } = oaktag(['make', 'plan.yaml', '--frobnicate'], empty(), { env })
    expect([code, out]).toEqual([2, ''])
    expect(err).toMatch(/^oaktag: frobnicate is not understood here\n/)
  })
})

describe('whatever happens', () => {
  it('tells a fault of the program in one plain line, and where it was only when asked', () => {
    // Stands in for a fault that nobody knows of yet.
    const breakJson = [
      '--import',
      'data:text/javascript,JSON.stringify=()=>{throw new TypeError("out of ink")}',
    ]
    const { code, out, err } = oaktag(['study', 'reed', '--json'], empty(), { node: breakJson })
    expect([code, out]).toEqual([1, ''])
    expect(err).toBe(
      [
        'oaktag: "oaktag study" stopped at a fault of its own: out of ink',
        '  Please report it, with the plan or the words. With OAKTAG_DEBUG=1 set it shows where it happened.',
        '',
      ].join('\n'),
    )
    const asked = { node: breakJson, env: { OAKTAG_DEBUG: '1' } }
    expect(oaktag(['study', 'reed', '--json'], empty(), asked).err).toMatch(/\n {4}at /)
  })

  it('ends quietly when the reader of a long answer has seen enough', () => {
    const { status, stderr } = spawnSync(
      'sh',
      ['-c', `"$0" "$1" find --letters e --count 600 --json | true`, process.execPath, commandFile],
      { cwd: empty(), encoding: 'utf8' },
    )
    expect([status, stderr]).toEqual([0, ''])
  })

  it('takes a double dash before the words for what it is', () => {
    expect(oaktag(['study', '--', 'reed'], empty()).out).toContain('reed')
  })
})

describe('make', () => {
  it('prints a list for a spreadsheet as plain lines', async () => {
    const { out } = await answered(['study', 'reed', 'queen', '--csv'], empty())
    expect(out).toBe(
      'word,clue,sentence,part of speech,plural,sounds\nreed,,,noun,reeds,r ee d\nqueen,,,noun,queens,\n',
    )
  })

  it('makes svg and png in out/ and says where they are', async () => {
    const folder = folderWith({ 'marsh.yaml': `${marshPlan}  - word-cards\n` })
    const { code, out, err } = await answered(['make', 'marsh.yaml', '--dpi', '100'], folder)
    expect([code, err]).toEqual([0, ''])
    expect(out).toContain(join('out', 'marsh', 'index.html'))
    for (const ending of ['svg', 'png'])
      expect(existsSync(join(folder, `out/marsh/word-cards/word-cards-01.${ending}`))).toBe(true)
  })

  it('counts one piece as one', async () => {
    const folder = folderWith({ 'one.yaml': 'words: [reed]\nprint: [word-cards]\n' })
    expect((await answered(['make', 'one.yaml', '--format', 'svg'], folder)).out).toMatch(/, 1 piece$/m)
  })

  it('writes only the formats asked for', async () => {
    const folder = folderWith({ 'marsh.yaml': `${marshPlan}  - word-cards\n` })
    expect((await answered(['make', 'marsh.yaml', '--format', 'pdf', '--out', 'here'], folder)).code).toBe(0)
    expect(existsSync(join(folder, 'here/marsh/word-cards/word-cards.pdf'))).toBe(true)
    expect(existsSync(join(folder, 'here/marsh/word-cards/word-cards-01.svg'))).toBe(false)
  })

  it('tells every problem with file, line, column and what to do, and exits with 1', async () => {
    const folder = folderWith({
      'marsh.yaml':
        'words: [reed, "two words", reed]\nmarks:\n  - pattern: digraff\nprint:\n  - layout: word-card\n',
    })
    const { code, out, err } = await answered(['make', 'marsh.yaml'], folder)
    expect([code, out]).toEqual([1, ''])
    const problems = err.split('\n').filter(line => !line.startsWith('  ') && line !== '')
    expect(problems.map(line => line.split(' ')[0])).toEqual([
      'marsh.yaml:1:15:',
      'marsh.yaml:1:28:',
      'marsh.yaml:3:14:',
      'marsh.yaml:5:13:',
    ])
    expect(err).toContain('word-cards')
    expect(existsSync(join(folder, 'out'))).toBe(false)
  })

  it('makes the good plans of several and exits with 1 for the bad one', async () => {
    const folder = folderWith({ 'good.yaml': `${marshPlan}  - key\n`, 'bad.yaml': '' })
    const { code, out, err } = await answered(['make', 'bad.yaml', 'good.yaml', '--format', 'svg'], folder)
    expect(code).toBe(1)
    expect(out).toContain('good')
    expect(err).toMatch(/^bad\.yaml(:1:1)?: error: /)
  })
})

describe('two plans of one name', () => {
  it('never fill one folder in one run: the second is an error, the first is made', async () => {
    const folder = folderWith({ 'week.yaml': `${marshPlan}  - key\n`, 'Week.yml': `${marshPlan}  - key\n` })
    const { code, out, err } = await answered(['make', 'week.yaml', 'Week.yml', '--format', 'svg'], folder)
    expect(code).toBe(1)
    expect(out).toContain('made in')
    expect(err).toContain('Week.yml: error: its sheets would fill the same folder as those of "week.yaml"')
  })
})

describe('study', () => {
  it('prints the analysis as JSON with the keys that must not drift', async () => {
    const { code, out } = await answered(['study', 'thread', '--json'], empty())
    expect(code).toBe(0)
    expect(JSON.parse(out)).toMatchObject([
      {
        word: 'thread',
        known: true,
        source: 'lexicon',
        pronunciations: ['TH R EH1 D'],
        graphemes: [
          { letters: 'th', start: 0, sounds: ['TH'] },
          { letters: 'r', start: 2, sounds: ['R'] },
          { letters: 'ea', start: 3, sounds: ['EH'] },
          { letters: 'd', start: 5, sounds: ['D'] },
        ],
        soundCount: 4,
        syllables: ['thread'],
        patterns: [
          { pattern: 'digraph-blend', letters: 'thr', start: 0, end: 3, place: 'beginning' },
          { pattern: 'vowel-team', letters: 'ea', start: 3, end: 5, place: 'middle' },
        ],
        partsOfSpeech: ['noun', 'verb'],
        plural: { form: 'threads', rule: 'add s' },
      },
    ])
  })

  it('says of a word that the lexicon lacks that everything is a guess', async () => {
    expect((await answered(['study', 'zorpish'], empty())).out).toContain('a guess')
    expect(JSON.parse((await answered(['study', 'zorpish', '--json'], empty())).out)).toMatchObject([
      { known: false, source: 'guess' },
    ])
  })

  it('names a typed word that is none without a line and column, which a command has not', async () => {
    const { code, err } = await answered(['study', 'reed', 'ma3sh', 'reed'], empty())
    expect(code).toBe(1)
    expect(err).toContain('oaktag: error: "ma3sh" has a digit in it\n')
    expect(err).toContain('oaktag: error: "reed" stands twice\n')
  })

  it('fits a terminal of 80 columns', async () => {
    const { out } = await answered(['study', 'thunderstorm', 'neighborhood', 'thread', '--why'], empty())
    expect(Math.max(...out.split('\n').map(line => line.length))).toBeLessThanOrEqual(80)
  })

  it('reads a list, and names the line of a word that is none', async () => {
    const folder = folderWith({ 'words.txt': '\ufeffreed\r\nma3sh\r\nfrog\r\n' })
    const { code, err } = await answered(['study', '--file', 'words.txt'], folder)
    expect(code).toBe(1)
    expect(err).toMatch(/^words\.txt:2:1: error: /)
  })
})

describe('find', () => {
  it('finds familiar words that show a pattern', async () => {
    const { out } = await answered(
      [
        'find',
        '--pattern',
        'digraph-blend',
        '--letters',
        'thr',
        '--place',
        'beginning',
        '--json',
        '--count',
        '5',
      ],
      empty(),
    )
    const words = JSON.parse(out) as { word: string }[]
    expect(words).toHaveLength(5)
    for (const { word } of words) expect(word).toMatch(/^thr/)
  })
})

describe('sorts', () => {
  it('prints the ranked sorts of a list as JSON', async () => {
    const folder = folderWith({ 'words.txt': 'ship\nfish\nchin\nrich\nshell\nlunch\n' })
    const sorts = JSON.parse((await answered(['sorts', '--file', 'words.txt', '--json'], folder)).out) as {
      columns: { words: string[] }[]
    }[]
    expect(sorts.length).toBeGreaterThan(0)
    expect(sorts[0]!.columns.length).toBeGreaterThan(1)
  })
})

describe('sorts, for reading', () => {
  it('tells of each sort why it stands where it does, and what would make it better', async () => {
    const words = ['crab', 'cup', 'cave', 'corn', 'cloud', 'camp', 'city', 'cell', 'pond']
    const { out } = await answered(
      ['sorts', '--file', 'words.txt'],
      folderWith({ 'words.txt': words.join('\n') }),
    )
    const told = out.replaceAll(/\s+/g, ' ')
    expect(told).toContain('1. hard and soft c By whether c is hard or soft: hard c (6 words), soft c (2).')
    expect(told).toContain('Why here: 1 (c or g, hard or soft) × 0.89 (8 of 9 words placed)')
    expect(told).toMatch(
      /Add \w+(?:, \w+)? and \w+ to soft c\. Take pond out: it has no c that is hard or soft\./,
    )
  })
})

describe('check', () => {
  it('tells what a plan would take and makes nothing', async () => {
    const folder = folderWith({ 'marsh.yaml': `${marshPlan}  - word-cards\n` })
    const { code, out } = await answered(['check', 'marsh.yaml', '--json'], folder)
    expect(code).toBe(0)
    expect(JSON.parse(out)).toMatchObject([
      { title: 'Along the marsh', sheetsOfCard: 1, pieces: 12, cuts: 9 },
    ])
    expect(existsSync(join(folder, 'out'))).toBe(false)
  })
})

describe('new', () => {
  it('writes a plan that make accepts as it stands', async () => {
    const folder = empty()
    expect((await answered(['new', 'week.yaml'], folder)).code).toBe(0)
    // All of its sets are drawn where the demo's are (no-remnants.ts).
    const made = ['make', 'week.yaml', '--only', 'word-cards', '--format', 'svg', '--quiet']
    const { code, err } = await answered(made, folder)
    expect([code, err]).toEqual([0, ''])
  })

  it('never writes over a file', async () => {
    const folder = folderWith({ 'week.yaml': 'mine' })
    const { code, err } = await answered(['new', 'week.yaml'], folder)
    expect(code).toBe(1)
    expect(err).toContain('week.yaml: error:')
    expect(readFileSync(join(folder, 'week.yaml'), 'utf8')).toBe('mine')
  })
})

describe('list', () => {
  it('says sizes as people say them', async () => {
    expect((await answered(['list', 'papers'], empty())).out).toMatch(/^letter +215\.9 × 279\.4 mm$/m)
  })

  it.each(['papers', 'fonts', 'patterns', 'layouts', 'lines', 'outlines'])(
    'shows %s, each with a line of its own',
    async kind => {
      const { code, out } = await answered(['list', kind], empty())
      expect(code).toBe(0)
      expect(out.split('\n').length).toBeGreaterThan(3)
      expect(Math.max(...out.split('\n').map(line => line.length))).toBeLessThanOrEqual(80)
    },
  )
})
