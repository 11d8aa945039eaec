/** The server as other programs of this machine meet it, by requests that no library tidies. */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { request } from 'node:http'
import { connect } from 'node:net'
import { dirname, join } from 'node:path'
import { expect, it, onTestFinished } from 'vitest'
import { deskCommand } from '../../src/commands/desk.js'
import { broughtIn } from '../../src/desk/plan-values.js'
import { serveDesk } from '../../src/desk/server/serve-desk.js'
import { buildFolder } from '../../src/installation.js'
import { dataAt, planData } from '../../src/oaktag.js'
import { emptyPlan } from '../../src/plan/starter-plan.js'
import { deskFolder } from './desk-folder.js'

const text =
  'title: <script>alert(1)</script>\nwords: [reed, marsh]\nmarks: [{pattern: consonant-digraph}]\nprint: [word-cards]\n'

interface Answer {
  readonly status: number
  readonly headers: Readonly<Record<string, string | readonly string[] | undefined>>
  readonly body: string
}

async function openDesk(written = text) {
  const { folder, plan } = deskFolder(written)
  const desk = await serveDesk({ plan, out: join(folder, 'out'), pageFolder: join(buildFolder, 'desk') })
  onTestFinished(() => desk.close())
  const { port, host, search } = new URL(desk.address)
  const ask = (
    method: string,
    path: string,
    headers: Readonly<Record<string, string>> = {},
    body = '',
  ): Promise<Answer> =>
    new Promise((done, failed) => {
      const sent = request(
        { host: '127.0.0.1', port, method, path, headers: { host, ...headers } },
        response => {
          let heard = ''
          response.setEncoding('utf8')
          response.on('data', part => {
            heard += part
            // What is told as it happens never ends by itself.
            if (heard.includes('event: sheets') && heard.includes('"busy":false')) response.destroy()
          })
          response.on('close', () =>
            done({ status: response.statusCode ?? 0, headers: response.headers, body: heard }),
          )
        },
      )
      sent.on('error', failed)
      sent.end(body)
    })
  const cookie = ((await ask('GET', `/${search}`)).headers['set-cookie'] ?? [''])[0] ?? ''
  const own = {
    cookie: cookie.split(';')[0] ?? '',
    origin: `http://${host}`,
    'content-type': 'application/json',
  }
  return { plan, desk, port: Number(port), ask, own, cookie }
}

it('gives itself to its own page alone, with a policy that lets nothing else run', async () => {
  const { ask, own, cookie, plan, port } = await openDesk()
  expect(cookie).toContain('; HttpOnly; SameSite=Strict; Path=/')
  const page = await ask('GET', '/', own)
  expect(page.headers['content-security-policy']).toBe(
    "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; connect-src 'self'; font-src 'self'; form-action 'none'; frame-ancestors 'none'; base-uri 'none'",
  )
  expect(page.body).not.toMatch(/<script(?! type="module" src="\/page\.js">)|<style|style=|\son\w+=/)
  const step = JSON.stringify({
    from: 'x',
    says: 'x',
    changes: [{ kind: 'set', path: ['title'], value: 'taken' }],
  })
  const foreign = [
    await ask('GET', '/'),
    await ask('GET', '/?key=guessed'),
    await ask('GET', '/', { ...own, host: 'marsh.example' }),
    await ask('GET', '/changes', { ...own, 'sec-fetch-site': 'cross-site' }),
    await ask('POST', '/step', { ...own, origin: 'https://marsh.example' }, step),
    await ask('POST', '/step', { ...own, origin: `http://127.0.0.1:${port + 1}` }, step),
    await ask('POST', '/close', { ...own, origin: 'null' }, '{}'),
    await ask('POST', '/step', { ...own, cookie: '' }, step),
  ]
  expect(foreign.map(({ status, body }) => [status, body])).toEqual(
    [403, 403, 421, 403, 403, 403, 403, 403].map(status => [status, '']),
  )
  expect(readFileSync(plan, 'utf8')).toBe(text)
  const elsewhere = [
    '/../week.yaml',
    '/files/..%2Fweek.yaml',
    '/files/week.pdf',
    '/files/%',
    '/sheets/9.svg',
    '/pictures/x.svg',
    '/page.html',
    '/etc/passwd',
  ]
  expect(
    await Promise.all(elsewhere.map(path => ask('GET', path, own).then(({ status }) => status))),
  ).toEqual(elsewhere.map(() => 404))
})

it('tells the plan and its sheets, takes a step, and refuses what is too much or no message', async () => {
  const { ask, own, plan } = await openDesk()
  const heard = await ask('GET', '/changes', own)
  const told = (name: string) =>
    [...heard.body.matchAll(/event: (\w+)\ndata: (.*)/g)]
      .filter(([, event]) => event === name)
      .map(([, , data]) => JSON.parse(data!))
  const [state] = told('plan')
  expect(state.words.map((word: { readonly sounds: string }) => word.sounds)).toEqual([
    '3 sounds: r·ee·d',
    '3 sounds: m·ar·sh',
  ])
  const sheet = told('sheets').at(-1).items[0].sheets[0].address
  const drawn = await ask('GET', sheet, own)
  expect([drawn.headers['content-type'], drawn.body]).toEqual([
    'image/svg+xml',
    expect.stringContaining('reed'),
  ])
  const picture = await ask('GET', state.words[1].picture, own)
  expect(picture.body).toContain('<title>marsh</title>')
  const changes = [{ kind: 'insert', path: ['words'], at: 2, values: ['pond'] }]
  const answer = await ask(
    'POST',
    '/step',
    own,
    JSON.stringify({ from: state.version, says: 'pond', changes }),
  )
  expect(JSON.parse(answer.body).ok).toBe(true)
  expect(readFileSync(plan, 'utf8')).toBe(text.replace('marsh]', 'marsh, pond]'))
  const wrong = ['{', '{}', '{"from":1}', 'x'.repeat(2_000_001)]
  expect(
    await Promise.all(wrong.map(body => ask('POST', '/step', own, body).then(({ status }) => status))),
  ).toEqual([400, 400, 400, 413])
})

it.each([
  ['a new plan', emptyPlan],
  ['a list that was emptied', 'words: [] # none\nprint: [word-cards]\n'],
  ['braces with nothing in them', '{}\n'],
  ['braces without words', '{\n  title: Marsh, # ours\n  print: [word-cards] }\n'],
  ['brackets over several lines', 'words: [\n  # none yet\n]\nprint: [word-cards]\n'],
])(
  'waits without complaint where there are no words, as in %s, and draws things with its own',
  async (_, written) => {
    const { ask, own, plan } = await openDesk(written)
    const heard = (await ask('GET', '/changes', own)).body
    const sheets = JSON.parse(/event: sheets\ndata: (.*)/.exec(heard)![1]!)
    expect(sheets).toMatchObject({ waits: 'words', busy: false, items: [], problems: [] })
    const { picture } = JSON.parse((await ask('GET', '/layouts/word-cards', own)).body)
    expect((await ask('GET', picture, own)).body).toContain('marsh')
    const version = /"version":"([^"]+)"/.exec(heard)![1]
    const changes = [{ kind: 'insert', path: ['words'], at: 0, values: ['pond'] }]
    await ask('POST', '/step', own, JSON.stringify({ from: version, says: 'pond', changes }))
    expect(dataAt(planData(readFileSync(plan, 'utf8')), ['words'])).toEqual(['pond'])
  },
)

it('brings the words of a list that the plan names into the plan, and opens no other', async () => {
  const { ask, own, plan } = await openDesk(`${text.replace('[reed, marsh]', 'lists/week.csv')}`)
  const folder = dirname(plan)
  mkdirSync(join(folder, 'lists'))
  const csv = 'Word,Clue,Picture\nreed,,\nmarsh,"wet, grassy land",marsh.png\n'
  writeFileSync(join(folder, 'lists/week.csv'), csv)
  writeFileSync(join(folder, 'other.txt'), 'secret\n')
  expect((await ask('GET', '/list?file=other.txt', own)).status).toBe(404)
  const listed = JSON.parse((await ask('GET', '/list?file=lists/week.csv', own)).body)
  const version = /"version":"([^"]+)"/.exec((await ask('GET', '/changes', own)).body)![1]
  const changes = broughtIn(['lists/week.csv'], 0, listed)
  await ask('POST', '/step', own, JSON.stringify({ from: version, says: 'the words', changes }))
  expect(readFileSync(plan, 'utf8')).toContain(
    'words:\n  - reed\n  - word: marsh\n    clue: wet, grassy land\n    picture: lists/marsh.png\nmarks:',
  )
})

it('says of an entry that is no word what keeps it from being one', async () => {
  const { ask, own } = await openDesk('words: [reed, r33d, marsh]\nprint: [word-cards]\n')
  const heard = (await ask('GET', '/changes', own)).body
  const { words, oldWords } = JSON.parse(/event: plan\ndata: (.*)/.exec(heard)![1]!)
  expect(words.map(({ text, trouble }: Readonly<Record<string, string>>) => text ?? trouble)).toEqual([
    'reed',
    '"r33d" has a digit in it.',
    'marsh',
  ])
  expect(oldWords).toEqual([])
})

it('shows how lines and outlines look even while too little of the plan can be read', async () => {
  const { ask, own } = await openDesk('words: 5: 6\n')
  const [line, outline, none] = await Promise.all(
    ['line-wavy', 'outline-oval', 'line-none-such'].map(name => ask('GET', `/styles/${name}.svg`, own)),
  )
  expect([line, outline, none].map(answer => answer?.status)).toEqual([200, 200, 404])
})

it('takes in what another program saves, at once', async () => {
  const { ask, own, plan } = await openDesk()
  await ask('GET', '/changes', own)
  writeFileSync(plan, text.replace('marsh]', 'marsh, heron]'))
  await expect
    .poll(async () => (await ask('GET', '/changes', own)).body, { timeout: 5000 })
    .toContain('heron')
})

it('listens on 127.0.0.1 alone, and closes when it is told', async () => {
  const { ask, own, desk, port } = await openDesk()
  expect(await connects('::1', port)).toBe(false)
  expect(await connects('127.0.0.1', port)).toBe(true)
  expect((await ask('POST', '/close', own, '{}')).status).toBe(200)
  await desk.closed
  expect(await connects('127.0.0.1', port)).toBe(false)
})

function connects(host: string, port: number): Promise<boolean> {
  return new Promise(done => {
    const socket = connect({ host, port })
    socket.on('connect', () => done(true)).on('error', () => done(false))
    setTimeout(() => socket.destroy(), 200)
  })
}

it('begins a new plan where none is named, never over another, and ends by Ctrl-C', async () => {
  const { folder } = deskFolder('')
  writeFileSync(join(folder, 'plan.yaml'), 'mine')
  const before = process.cwd()
  process.chdir(folder)
  onTestFinished(() => process.chdir(before))
  const controller = new AbortController()
  const told: string[] = []
  const ended = await deskCommand(
    { out: 'out', open: false },
    {
      signal: controller.signal,
      tell: async ({ output }) => {
        told.push(output)
        controller.abort()
      },
    },
  )
  expect(told.join()).toMatch(
    /Wrote plan-2\.yaml.*\nThe desk is open: http:\/\/127\.0\.0\.1:\d+\/\?key=\S{32}\n/,
  )
  expect(ended).toEqual({
    output: 'The desk is closed. plan-2.yaml holds all that you did.',
    problems: '',
    exitCode: 0,
  })
  expect(readFileSync('plan.yaml', 'utf8')).toBe('mine')
  const missing = await deskCommand(
    { plan: 'gone.yaml', out: 'out', open: false },
    { signal: controller.signal, tell: async () => {} },
  )
  expect([missing.exitCode, missing.problems]).toEqual([
    1,
    expect.stringContaining('gone.yaml: error: the plan is not there'),
  ])
})

it('proposes lists for groups that show a pattern, for a plan without words too, within its bounds', async () => {
  const { ask, own } = await openDesk(emptyPlan)
  const lists = async (query: string) => JSON.parse((await ask('GET', `/proposed?${query}`, own)).body).lists
  const found = await lists('pattern=vowel-team&lists=2&words=4')
  expect(found.map(({ words }: { readonly words: readonly string[] }) => words.length)).toEqual([4, 4])
  expect(await lists('pattern=vowel-team&lists=900&words=3')).toHaveLength(6)
  expect(await lists('pattern=none-such')).toEqual([])
})

it('shows what things would look like whatever is wrong elsewhere in the plan, and says what is wrong with a thing', async () => {
  const wrong = text
    .replace('[reed, marsh]', '[reed, r33d, marsh]')
    .replace('marks: [', 'marks: [{line: x}, ')
  const { ask, own } = await openDesk(`${wrong}paper: none-such\nreview: gone.yaml\n`)
  const picture = async (item: string) =>
    JSON.parse((await ask('GET', `/layouts/word-cards?item=${item}`, own)).body)
  const { picture: address } = await picture('{"sounds":"dots"}')
  expect((await ask('GET', address, own)).body).toContain('marsh')
  expect((await picture('{"across":"900"}')).why).toContain('900')
  // What else is said of the thing does not stand in the way of a choice.
  expect((await picture('{"across":"19","down":"19","border":"wavy"}')).picture).toMatch(/^\/pictures\//)
})

it('says of a class file outside the folder where to put it, and of nothing else that it cannot be read', async () => {
  const { ask, own, plan } = await openDesk(`class file: ../room-7.yaml\n${text}`)
  writeFileSync(join(dirname(plan), '..', 'room-7.yaml'), 'children: 20\n')
  onTestFinished(() => rmSync(join(dirname(plan), '..', 'room-7.yaml')))
  const heard = (await ask('GET', '/changes', own)).body
  const { problems } = JSON.parse([...heard.matchAll(/event: sheets\ndata: (.*)/g)].at(-1)![1]!)
  expect(problems).toEqual([
    {
      severity: 'error',
      message: 'room-7.yaml lies outside the folder of week.yaml, and the desk opens nothing there.',
      advice: expect.stringContaining('Put a copy of it into that folder'),
      line: 1,
      path: ['class file'],
    },
  ])
})

it('tells the words of groups and of lists beside their entries, with the marks of whose they are', async () => {
  const groups =
    'groups:\n  - name: Otters\n    words:\n      - mud\n      - word: pond\n        clue: still water\n    marks: [{pattern: short-vowel, line: wavy}]\n  - name: Kits\n    marks: []\n'
  const { ask, own, plan } = await openDesk(`${text.replace('[reed, marsh]', '[week.csv, reed]')}${groups}`)
  writeFileSync(join(dirname(plan), 'week.csv'), 'Word,Clue\nwren,\nmarsh,wet land\n')
  await expect
    .poll(async () => (await ask('GET', '/changes', own)).body, { timeout: 5000 })
    .toContain('wet land')
  const heard = (await ask('GET', '/changes', own)).body
  const told = JSON.parse(/event: plan\ndata: (.*)/.exec(heard)![1]!)
  const texts = (words: readonly { readonly text: string }[]) => words.map(word => word?.text)
  expect(texts(told.words)).toEqual([undefined, 'reed'])
  expect(told.files).toMatchObject([
    { name: 'week.csv', entries: ['wren', { word: 'marsh', clue: 'wet land' }] },
  ])
  expect(texts(told.files[0].words)).toEqual(['wren', 'marsh'])
  expect(texts(told.groups[0].words)).toEqual(['mud', 'pond'])
  const drawn = async (address: string) => (await ask('GET', address, own)).body
  // Otters' mud has a wavy line, the class's reed has none: more is drawn.
  const [mud, reed] = [await drawn(told.groups[0].words[0].picture), await drawn(told.words[1].picture)]
  expect([mud, reed].map(svg => svg.split('<path').length > 2)).toEqual([true, false])
  expect(told.groups[0].looks).toHaveLength(1)
  expect([told.groups[1].words, texts(told.groups[1].ofClass)]).toEqual([[], ['wren', 'marsh', 'reed']])
  // What is wrong with a word of a list leads to it.
  writeFileSync(join(dirname(plan), 'week.csv'), 'Word,Clue\nwren,\nm4rsh,wet land\n')
  await expect.poll(async () => (await ask('GET', '/changes', own)).body).toContain('m4rsh')
  const sheets = (await ask('GET', '/changes', own)).body.split('event: sheets').at(-1)
  expect(sheets).toContain('"path":["file","week.csv",1]')
})
