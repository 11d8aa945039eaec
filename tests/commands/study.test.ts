import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { studyCommand } from '../../src/commands/study.js'
import { folderWith } from '../pipeline/plan-folder.js'

const study = (word: readonly string[], why = false) => studyCommand({ word, why, json: false })

/** The list as the file `list.txt`, or under the name given. */
function studyFile(contents: string | Uint8Array, { name = 'list.txt', json = false, csv = false } = {}) {
  const file = join(folderWith({ [name]: contents }), name)
  return studyCommand({ word: [], file, why: false, json, csv })
}

const firstLines = (problems: string) =>
  problems
    .split('\n')
    .filter(line => !line.startsWith(' '))
    .map(line => line.replace(/^.*\//, ''))

describe('study', () => {
  test('the plain table of a word is short', async () => {
    expect((await study(['marsh'])).output).toBe(`marsh
  3 sounds: m·ar·sh   said mahrsh
  1 syllable: marsh
  noun; plural marshes (add es after ch, sh, s, x, z)
  r-controlled ar (middle)
  consonant-digraph sh (end)
  draft of a clue: soft, wet land`)
  })

  test('--why tells the rule and its evidence for sounds, syllables, parts of speech and each finding', async () => {
    const { output } = await study(
      ['rabbit', 'ear', 'island', 'wind', 'unlucky', 'blorp', 'mudflatless'],
      true,
    )
    const flat = output.replaceAll(/\s+/g, ' ')
    for (const told of [
      'why: taken before /ēr/: ear and here with /eer/, as in the rest of their family',
      'why: rab·bit (double consonant: divide between)',
      'double-consonant bb (middle): b is doubled and heard once',
      'exception: s is silent here, which no rule explains',
      'why: spelled alike and said in different ways: the commoner in speech to children',
      'wind is said in different ways: /wind/ (moving air), /wīnd/ (to turn); taken here: the first',
      'noun, verb; plural winds (add s) why: the commonest use first',
      'why: un·luck (prefix un-); luck·y (as in lucky: ending -y)',
      'blorp (not in the lexicon: its sounds are a guess)',
      'why: a guess, from its letters',
      'why: a guess, from the words that it is made of',
      'noun; plural blorps (add s) (a guess) why: a guess, by the ending',
    ])
      expect(flat).toContain(told)
  })

  test('sounds are letters that a teacher reads, explained at the foot; ARPABET comes when asked for', async () => {
    const { output } = await study(['bridge', 'rabbit', 'thief'])
    for (const said of ['said brij', 'said RAB-', 'said thēf', 'Sounds: ', 'ē see', 'th thin'])
      expect(output).toContain(said)
    expect(output).not.toMatch(/\b[A-Z]{2}[0-2]\b/)
    const machine = await studyCommand({ word: ['bridge'], why: false, json: false, arpabet: true })
    expect(machine.output).toContain('/B R IH1 JH/')
    expect(machine.output).not.toContain('Sounds:')
  })

  test('the forms with endings are shown with their rules, for a verb and for an adjective', async () => {
    const flat = (await study(['happy', 'bridge', 'jump', 'hop', 'run'])).output.replaceAll(/\s+/g, ' ')
    for (const form of [
      'with endings: -er happier (y to i, add er), -est happiest (y to i, add est)',
      '-ed bridged (drop e, add ed)',
      '-ing jumping (add ing)',
      '-ed hopped (double the last letter, add ed)',
      '-ed ran (changes inside)',
    ])
      expect(flat).toContain(form)
  })

  test.each(['jumped', 'ran', 'can', 'bigger', 'blorp', 'reed'])('%s has no forms to show', async word => {
    expect((await study([word])).output).not.toContain('with endings')
  })

  test('--why tells the kind of each syllable', async () => {
    expect((await study(['rabbit', 'tiger'], true)).output).toContain('kinds: rab closed, bit closed')
  })

  test('--why says nothing of a pronunciation that has no rival', async () => {
    expect((await study(['bridge'], true)).output).not.toContain('why: the dictionary')
  })

  test('a plan’s words are studied with its accent, its count and what the teacher says of them', async () => {
    const plan = `accent: r-less
count sounds: every phoneme
words: [marsh, {word: tired, sounds: t ire d}, reed]
groups: [{name: Otters, words: [reed, newt]}]
print: [{layout: key}]
`
    const file = join(folderWith({ 'week.yaml': plan }), 'week.yaml')
    const { output, exitCode } = await study([file])
    expect(exitCode).toBe(0)
    for (const told of ['tired  (yours: sounds)', 'newt', 'said mahsh', '4 words hold'])
      expect(output).toContain(told)
    expect(output.match(/^reed/gm)).toHaveLength(1)
  })

  test('reasons are those of the lexicon’s accent, whatever the class’s', async () => {
    const plan = (accent: string) =>
      `accent: ${accent}\nwords: [harbor, carrot, story]\nprint: [{layout: key}]\n`
    const reasons = async (accent: string) => {
      const file = join(folderWith({ 'week.yaml': plan(accent) }), 'week.yaml')
      return (await study([file], true)).output.match(/why: .*/g)
    }
    expect(await reasons('r-less')).toEqual(await reasons('american'))
  })

  test('a finding that the teacher adds is called hers, for a machine too', async () => {
    const list = 'word,not,also\nthread,digraph-blend,consonant-digraph th\n'
    expect((await studyFile(list, { name: 'list.csv' })).output).toContain(
      'consonant-digraph th (beginning, yours)',
    )
    const { output } = await studyFile(list, { name: 'list.csv', json: true })
    const [{ source, patterns }] = JSON.parse(output)
    expect(source).toBe('teacher')
    expect(patterns[0]).toMatchObject({ pattern: 'consonant-digraph', source: 'teacher' })
    expect(patterns[1]).not.toHaveProperty('source')
  })

  test('words of odd spellings too are told without ARPABET', async () => {
    const words =
      'schwa eye one two colonel choir busy women pizza ocean island talk people guess bury build friend said does laugh cough sew shoe heart'
    const { output } = await study(words.split(' '), true)
    expect(
      output.match(
        /\b(?:[A-Z]{2}[0-2]|AA|AE|AH|AO|AW|AY|CH|DH|EH|ER|EY|HH|IH|IY|JH|NG|OW|OY|SH|TH|UH|UW|ZH)\b(?!-)/g,
      ),
    ).toBeNull()
  })

  test('a plan is studied alone, and its problems are told at their places', async () => {
    expect((await study(['week.yaml', 'reed'])).exitCode).toBe(2)
    const file = join(folderWith({ 'week.yaml': 'words: [r33d]\nprint: [{layout: key}]\n' }), 'week.yaml')
    expect((await study([file])).problems).toContain('week.yaml:1:9: error')
  })

  test('a draft of a clue is called a draft; the teacher’s own clue stands alone', async () => {
    const { output } = await study(['wind'])
    expect(output).toContain('  draft of a clue: air that moves')
    const own = await studyFile('word,clue\nwind,it fills the sail\n', { name: 'list.csv' })
    expect(own.output).toContain('  clue: it fills the sail')
    expect(own.output).not.toContain('draft')
  })

  test.each([true, false])('every line fits 80 columns, without colour (--why: %s)', async why => {
    const words = [
      'thunderstorm',
      'neighborhood',
      'knowledge',
      'wind',
      'read',
      'tide-pool',
      'Wednesday',
      'our',
    ]
    const { output } = await study([...words, 'abcdefghijklmnopqrstuvwxyzabcd'], why)
    expect(output.split('\n').filter(line => line.length > 80)).toEqual([])
    // biome-ignore lint/suspicious/noControlCharactersInRegex: a colour code begins with the escape character.
    expect(output).not.toMatch(/\u001b/)
  })
})

describe('a word list as teachers save it', () => {
  test('capitals, curly apostrophes, hyphens, accents, a byte-order mark and Windows line ends', async () => {
    const list = '\ufeffReed\r\nMARSH\r\ndon\u2019t\r\ntide\u2010pool\r\ncafe\u0301\r\n\r\n'
    const { output, problems, exitCode } = await studyFile(list, { json: true })
    expect([problems, exitCode]).toEqual(['', 0])
    expect(JSON.parse(output).map(({ word }: { word: string }) => word)).toEqual([
      'Reed',
      'MARSH',
      "don't",
      'tide-pool',
      'café',
    ])
  })

  test('digits, emoji, spaces and a word that stands twice are refused, each with its line', async () => {
    const { output, problems, exitCode } = await studyFile('reed\nma3sh\nfrog\u{1f438}\nblue heron\nreed\n')
    expect(exitCode).toBe(1)
    expect(output).toBe('')
    expect(firstLines(problems)).toEqual([
      'list.txt:2:1: error: "ma3sh" has a digit in it',
      'list.txt:3:1: error: "frog\u{1f438}" has the sign "\u{1f438}" in it',
      'list.txt:4:1: error: "blue heron" has a space in it',
      'list.txt:5:1: error: "reed" stands twice, on line 1 and on line 5',
    ])
  })

  test('a table with a header row, and its line', async () => {
    const { problems } = await studyFile('word,clue\r\nreed,"grows, in water"\r\nma4sh,wet\r\n', {
      name: 'list.csv',
    })
    expect(firstLines(problems)).toEqual(['list.csv:3: error: "ma4sh" has a digit in it'])
  })

  test('files of another kind and an empty file are refused in plain words', async () => {
    const problemOf = async (contents: string | Uint8Array) =>
      firstLines((await studyFile(contents)).problems)
    expect(await problemOf(Buffer.from('reed\0'))).toEqual([
      'list.txt:1:5: error: the file is not plain text from here on',
    ])
    expect(await problemOf('\n\n')).toEqual(['list.txt: error: the word list holds no word'])
  })

  test('in another encoding is read', async () => {
    const { output, problems } = await studyFile(Buffer.from('\ufeffreed', 'utf16le'))
    expect(output).toContain('reed')
    expect(firstLines(problems)).toEqual([''])
  })

  test('ten thousand words, most of them invented', async () => {
    const invented = Array.from({ length: 10_000 }, (_, index) => `b${lettersOf(index)}`)
    const { output, exitCode } = await studyFile(invented.join('\n'), { json: true })
    expect(exitCode).toBe(0)
    expect(JSON.parse(output)).toHaveLength(10_000)
  })
})

/** The number in letters: 0 is `aaa`, 27 is `abb`. */
function lettersOf(number: number): string {
  const letter = (value: number) => String.fromCharCode(97 + (value % 26))
  return letter(Math.floor(number / 676)) + letter(Math.floor(number / 26)) + letter(number)
}

describe('a word list for a spreadsheet', () => {
  const text =
    'reed snake thread box queen knight apple city one watch shelf jump quickly yellow splorf chair wait their'

  test('has what the plan takes of each word under its key', async () => {
    const { output } = await studyFile('word,clue\nsnake,"long, without legs"\nqueen,\nsplorf,\n', {
      csv: true,
      name: 'list.csv',
    })
    expect(output.split('\n')).toEqual([
      'word,clue,sentence,part of speech,plural,sounds',
      'snake,"long, without legs",,noun,snakes,s n a k (e)',
      'queen,,,noun,queens,',
      'splorf,,,,,',
    ])
  })

  test('is read back as it was studied', async () => {
    const { output } = await studyFile(text.replaceAll(' ', '\n'), { csv: true })
    const back = await studyFile(output, { json: true, name: 'list.csv' })
    expect(firstLines(back.problems)).toEqual([''])
    const studied = JSON.parse((await studyFile(text.replaceAll(' ', '\n'), { json: true })).output)
    const told = (words: readonly Record<string, unknown>[]) =>
      words.map(({ word, soundCount, plural, partsOfSpeech }) => ({
        word,
        soundCount,
        plural: (plural as { form: string } | null)?.form,
        partsOfSpeech,
      }))
    expect(told(JSON.parse(back.output))).toEqual(told(studied))
  })

  test('goes with no other way to write', async () => {
    expect((await studyCommand({ word: ['reed'], why: false, json: true, csv: true })).exitCode).toBe(2)
  })
})
