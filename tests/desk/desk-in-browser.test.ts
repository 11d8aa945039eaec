/** The desk as she has it before her: a week made from an empty page by pointing, and again by the keyboard alone. */
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest'
import { deskCommand } from '../../src/commands/desk.js'
import { serveDesk } from '../../src/desk/server/serve-desk.js'
import { buildFolder } from '../../src/installation.js'
import { make } from '../../src/oaktag.js'
import { emptyPlan } from '../../src/plan/starter-plan.js'
import { type Browser, openBrowser } from '../files/browser.js'
import { hasProgram } from '../files/system-program.js'
import { deskFolder } from './desk-folder.js'

/** No page may take it for markup of its own. */
const title = '<img src=x onerror=caught=1>'
const marks = 'marks:\n  - pattern: consonant-digraph\n    line: wavy\n'
const words = 'words:\n  - marsh\n  - reed\n  - thrush\n  - pond\n'
const print = 'print:\n  - layout: word-cards\n    across: 2\n'
const week = `title: Marsh # ours\n\n${words}${marks}${print}`
/** What `oaktag desk` begins with, and what is done to it: the week's other parts stay. */
const made = `${emptyPlan
  .replace('Words of the week', title)
  .replace('words:\n', `${words}${marks}`)}${print}`

describe.runIf(hasProgram('chromium'))('the desk in Chromium', () => {
  let browser: Browser
  beforeAll(async () => {
    browser = await openBrowser()
  })
  afterAll(() => browser.close())

  async function openDesk(text: string, beside: Readonly<Record<string, string>> = {}) {
    const { folder, plan } = deskFolder(text)
    for (const [name, content] of Object.entries(beside)) writeFileSync(join(folder, name), content)
    const desk = await serveDesk({ plan, out: join(folder, 'out'), pageFolder: join(buildFolder, 'desk') })
    onTestFinished(() => desk.close())
    await browser.openAddress(desk.address, 1280)
    const { page } = browser
    return { folder, plan, desk, page, onDisk: () => readFileSync(plan, 'utf8') }
  }

  /** A new plan, as the command begins one. */
  async function openNew() {
    const { folder } = deskFolder('')
    const before = process.cwd()
    process.chdir(folder)
    const controller = new AbortController()
    onTestFinished(() => {
      controller.abort()
      process.chdir(before)
    })
    const address = await new Promise<string>(found => {
      void deskCommand(
        { out: 'out', open: false },
        { signal: controller.signal, tell: async ({ output }) => found(/http:\S+/.exec(output)?.[0] ?? '') },
      )
    })
    await browser.openAddress(address, 1280)
    const plan = join(folder, 'plan.yaml')
    return { folder, plan, page: browser.page, onDisk: () => readFileSync(plan, 'utf8') }
  }

  it('makes a week by pointing, from a new plan, which gives the very sheets that were shown', async () => {
    const { page, plan, folder, onDisk } = await openNew()
    await page.getByLabel('New word').fill('marsh')
    await page.getByText('3 sounds: m·ar·sh').waitFor()
    await page.getByRole('button', { name: 'Add', exact: true }).click()
    await page.getByText('Paste a list').click()
    await page.getByLabel(/one a line/).fill('reed\nthrush\npond')
    await page.getByRole('button', { name: 'Add 3 words' }).click()
    await page.getByRole('link', { name: 'Marks' }).click()
    await page.getByRole('button', { name: 'Mark it consonant digraph' }).click()
    await page.getByText('How it looks').click()
    await page.getByLabel('wavy').check()
    await page.getByRole('navigation').getByRole('link', { name: 'Things to make' }).click()
    await page.getByText('Add something').click()
    await page.getByRole('button', { name: 'Add word cards' }).click()
    await page.getByText('Change it').click()
    await page.getByLabel(/side by side/).fill('2')
    await page.getByLabel('Title').fill(title)
    await page.keyboard.press('Tab')
    await expect.poll(onDisk).toBe(made)
    await page.getByRole('link', { name: 'Sheets' }).click()
    await page.locator('img.sheet').first().waitFor()
    await expect.poll(() => page.locator('section[aria-busy=true]').count(), { timeout: 20_000 }).toBe(0)
    const shown = await browser.evaluate<readonly string[]>(
      `Promise.all([...document.querySelectorAll('.sheet-list img')].map(image => fetch(image.getAttribute('src')).then(response => response.text())))`,
    )
    const answer = await make({ plan, out: join(folder, 'made'), formats: ['svg'] })
    const paths = answer.ok
      ? answer.value.manifest.items.flatMap(item => item.pages.map(({ svg }) => svg))
      : []
    expect(paths.length).toBeGreaterThan(20)
    expect(shown.toSorted()).toEqual(
      paths.map(svg => readFileSync(join(folder, 'made/plan', svg ?? ''), 'utf8')).toSorted(),
    )
    expect(await browser.evaluate('typeof window.caught')).toBe('undefined')
    expect(await page.getByLabel('Title').inputValue()).toBe(title)
    await page
      .getByRole('navigation', { name: 'What is printed' })
      .getByText(/^Word cards/)
      .click()
    expect(await browser.evaluate('document.activeElement.textContent')).toBe('Word cards')
    const cards = page.getByRole('button', { name: /Word cards.*life size/ }).first()
    await cards.click()
    const paper = await page.locator('dialog img').evaluate(image => image.clientWidth / 96)
    expect(paper).toBeCloseTo(8.5, 2)
    await page.keyboard.press('Escape')
    await expect.poll(() => browser.evaluate(nameOfFocused)).toBe(await cards.getAttribute('aria-label'))
    expect(browser.complaints()).toEqual([])
    const here = new URL(page.url()).origin
    expect(browser.requests().filter(url => new URL(url).origin !== here)).toEqual([])
  })

  it('makes the same week by the keyboard alone, and says what it does', async () => {
    const { page, onDisk } = await openNew()
    const tabTo = async (name: RegExp) => {
      for (let count = 0; count < 150; count += 1) {
        const focused = await browser.evaluate<string>(nameOfFocused)
        if (name.test(focused)) return
        await page.keyboard.press('Tab')
      }
      throw new Error(`the key Tab never comes to ${name}`)
    }
    await page.getByLabel('New word').waitFor()
    await tabTo(/^Title$/)
    await page.keyboard.type(title)
    await page.keyboard.press('Enter')
    const said = () => page.getByRole('status').textContent()
    await expect.poll(said).toBe('Changed: the title.')
    await tabTo(/^New word$/)
    // Faster than they are written down: none is lost, and they keep their order.
    for (const word of ['marsh', 'reed', 'thrush', 'pond']) {
      await page.keyboard.type(word)
      await page.keyboard.press('Enter')
    }
    await expect.poll(said).toBe('Added: the word pond.')
    await tabTo(/^Skip/)
    await tabTo(/^Marks$/)
    await page.keyboard.press('Enter')
    await tabTo(/^Mark it consonant digraph$/)
    await page.keyboard.press('Enter')
    await expect.poll(said).toBe('Changed: a mark on consonant digraph.')
    // What was pressed is gone; the keyboard goes on at the next of its kind.
    await expect.poll(() => browser.evaluate(nameOfFocused)).toMatch(/^Mark it /)
    await tabTo(/^Skip/)
    await tabTo(/^How it looks/)
    await page.keyboard.press('Enter')
    await tabTo(/^none chosen$/)
    // Five styles on, as fast as the arrow keys go through a choice.
    for (let count = 0; count < 5; count += 1) await page.keyboard.press('ArrowRight')
    await expect.poll(onDisk).toContain('line: wavy')
    await tabTo(/^Skip/)
    await tabTo(/^Things to make$/)
    await page.keyboard.press('Enter')
    await tabTo(/^Add something$/)
    await page.keyboard.press('Enter')
    await tabTo(/^Add word cards$/)
    await page.keyboard.press('Enter')
    await expect.poll(onDisk).toContain('layout: word-cards')
    await tabTo(/^Skip/)
    await tabTo(/^Change it/)
    await page.keyboard.press('Enter')
    await tabTo(/side by side/)
    await page.keyboard.type('2')
    await page.keyboard.press('Tab')
    // The same text gives the same sheets.
    await expect.poll(onDisk).toBe(made)
  })

  it('keeps the keyboard where it is when words move, go and come back', async () => {
    const { page, onDisk } = await openDesk(week)
    const focused = () => browser.evaluate<string>(nameOfFocused)
    const said = () => page.getByRole('status').textContent()
    await page.getByRole('button', { name: 'Take out pond' }).press('Enter')
    await expect.poll(said).toBe('Pond taken out.')
    await expect.poll(focused).toBe('Take out thrush')
    await page.getByRole('button', { name: /^Undo/ }).press('Enter')
    await expect.poll(onDisk).toBe(week)
    // Nothing more can be undone: the keyboard goes on beside it.
    await expect.poll(focused).toBe('Redo pond taken out')
    await page.getByRole('button', { name: 'Move marsh down' }).focus()
    for (const place of [2, 3, 4]) {
      await page.keyboard.press('Enter')
      await expect.poll(() => page.getByLabel(`Word ${place}`).inputValue()).toBe('marsh')
    }
    // At the end it can only go up: the keyboard is there.
    await expect.poll(focused).toBe('Move marsh up')
    for (const place of [3, 2, 1]) {
      await page.keyboard.press('Enter')
      await expect.poll(() => page.getByLabel(`Word ${place}`).inputValue()).toBe('marsh')
    }
    await expect.poll(onDisk).toBe(week)
    await page.getByRole('button', { name: /^Undo/ }).press('Enter')
    await expect.poll(onDisk).toBe(week.replace('  - marsh\n  - reed\n', '  - reed\n  - marsh\n'))
    await page.getByRole('button', { name: /^Redo/ }).press('Enter')
    await expect.poll(onDisk).toBe(week)
    await page.getByLabel('New word').fill('wren')
    await page.getByRole('button', { name: 'Add', exact: true }).press('Enter')
    await expect.poll(focused).toBe('New word')
    await page.getByRole('button', { name: 'Close the desk' }).press('Enter')
    await expect.poll(focused).toBe('Yes, close it')
    await page.keyboard.press('Tab')
    await page.keyboard.press('Enter')
    await expect.poll(focused).toBe('Close the desk')
  })

  it('edits a list beside the plan in its file, and what it cannot hold in the plan', async () => {
    const { page, folder, onDisk } = await openDesk(week.replace('  - reed\n', '  - list.txt\n  - reed\n'), {
      'list.txt': '# from Ms Crake\nfinch\ngnat\nrun\n',
    })
    const list = () => readFileSync(join(folder, 'list.txt'), 'utf8')
    await page.getByLabel('Word 1 of list.txt').fill('wren')
    await expect.poll(list).toBe('# from Ms Crake\nwren\ngnat\nrun\n')
    await page.getByRole('button', { name: 'Take out gnat' }).click()
    await expect.poll(list).toBe('# from Ms Crake\nwren\nrun\n')
    writeFileSync(join(folder, 'list.txt'), '# from Ms Crake\nwren\nrun\nheron\n')
    await page.getByLabel('Word 3 of list.txt').waitFor()
    await page.getByText('Look closer at run').click()
    await page.getByRole('button', { name: 'Bring run into the plan' }).click()
    await expect.poll(list).toBe('# from Ms Crake\nwren\nheron\n')
    await expect.poll(onDisk).toContain('  - list.txt\n  - run\n  - reed\n')
    await expect.poll(() => page.getByLabel('Word 3', { exact: true }).inputValue()).toBe('run')
    await page.getByText('Look closer at run').click()
    const row = page.locator('.word-row', { has: page.locator('#at-words-2') })
    await row.getByLabel(/^Part of speech(?!,)/).selectOption('noun')
    await row.getByLabel(/^Part of speech, number 2/).selectOption('verb')
    await expect.poll(onDisk).toContain('  - word: run\n    part of speech: [noun, verb]\n')
    await page.getByText('noun, verb').first().waitFor()
    const before = onDisk()
    await page.getByRole('button', { name: 'Bring the words into the plan from list.txt' }).click()
    await expect.poll(onDisk).toBe(before.replace('  - list.txt\n', '  - wren\n  - heron\n'))
    await page.getByRole('button', { name: /^Undo/ }).click()
    await expect.poll(onDisk).toBe(before)
    expect(list()).toBe('# from Ms Crake\nwren\nheron\n')
    expect(browser.complaints()).toEqual([])
  })

  it('shows what is picked while the plan does not have it yet, whatever else comes to the page', async () => {
    const { page, plan, onDisk } = await openDesk(week)
    await browser.evaluate("location.hash = '#marks'")
    await page.locator('summary', { hasText: 'How it looks' }).click()
    let letGo = () => {}
    const held = new Promise<void>(done => {
      letGo = done
    })
    await page.route('**/step', async route => {
      await held
      await route.continue()
    })
    await page.getByLabel('dotted').check()
    writeFileSync(plan, `${week}# ours\n`)
    await page.getByRole('button', { name: 'Undo what another program changed' }).waitFor()
    expect(await page.getByLabel('dotted').isChecked()).toBe(true)
    letGo()
    await expect.poll(onDisk).toBe(`${week.replace('wavy', 'dotted')}# ours\n`)
    await page.unroute('**/step')
  })

  it('has no barrier in any view, and never scrolls sideways: at 200 % zoom, on a telephone', async () => {
    // A name as long as may be, without a blank.
    const name = `Otters${'s'.repeat(54)}`
    const groups = `groups:\n  - name: ${name}\n    words: [mud, frog]\n    size: {for: {acuity: 20/200, distance: 25 cm}}\n`
    const wrong = week
      .replace('across: 2', 'across: 200')
      .replace('- thrush', '- word: thrush\n    sounds: th r u sh')
    const more =
      'review: [last.txt]\nspread: vowel-team\nprinter: {passes: two}\naccent: {wh: own}\nclass file: room-7.yaml\n'
    const { page, plan } = await openDesk(
      `${wrong.replace('- pond', '- pond\n  - list.csv\n  - more.txt')}${groups}${more}`,
      {
        'last.txt': 'hill\nbird\n',
        'more.txt': 'gnat\n',
        'list.csv': 'word,clue\nwren,a bird\n',
        'room-7.yaml': 'children: 20\n',
      },
    )
    await page.getByText('plural ponds').first().waitFor()
    for (const view of ['words', 'marks', 'things', 'sheets']) {
      await browser.evaluate(`location.hash = '#${view}'`)
      await page.locator(`#${view}-head`).waitFor()
      await browser.evaluate('document.querySelectorAll("details").forEach(fold => { fold.open = true })')
      expect(await browser.accessibilityFaults(), view).toEqual([])
      for (const width of [640, 390]) {
        await page.setViewportSize({ width, height: 800 })
        expect(
          await browser.evaluate('document.documentElement.scrollWidth'),
          `${view} at ${width}`,
        ).toBeLessThanOrEqual(width)
      }
      await page.setViewportSize({ width: 1280, height: 800 })
    }
    await browser.evaluate("location.hash = '#marks'")
    await page.getByRole('button', { name }).click()
    await page.getByRole('button', { name: `Mark nothing for ${name}` }).click()
    await page.getByText(`These marks are for ${name} alone`).waitFor()
    expect(await browser.accessibilityFaults(), 'marks of a group').toEqual([])
    await page.getByRole('button', { name: /^Undo/ }).click()
    await browser.evaluate("location.hash = '#sheets'")
    await page.getByRole('button', { name: /^Show me.*200/ }).click()
    await expect.poll(() => browser.evaluate('document.activeElement.id')).toBe('at-print-0-across')
    writeFileSync(plan, week.replace('- reed', '- heron'))
    await page.getByRole('navigation').getByRole('link', { name: 'Words' }).click()
    await expect.poll(() => page.getByLabel('Word 2').inputValue()).toBe('heron')
    await page.getByLabel('Word 2').fill('2pots')
    await page.getByText('has a digit in it').waitFor()
    await page.getByLabel('Word 2').press('Enter')
    await page.getByLabel('Word 2').fill('heron stork')
    await page.getByLabel('Word 2').press('Enter')
    expect(await browser.evaluate(nameOfFocused)).toBe('Word 3')
    await expect.poll(() => page.getByLabel('Word 3').inputValue()).toBe('stork')
    expect(readFileSync(plan, 'utf8')).toBe(week.replace('- reed', '- heron\n  - stork'))
    const kept = readFileSync(plan, 'utf8')
    await page.getByRole('button', { name: 'Take out all words' }).click()
    await page.getByText('There are no words yet. Type the first one here').waitFor()
    expect(readFileSync(plan, 'utf8')).not.toContain('heron')
    expect(await browser.evaluate(nameOfFocused)).toBe('New word')
    await page.getByRole('button', { name: 'Undo all words taken out' }).click()
    await expect.poll(() => readFileSync(plan, 'utf8')).toBe(kept)
    await page.getByRole('link', { name: 'Sheets' }).click()
    await page.locator('.sheet-button').first().click()
    await page.locator('dialog img').waitFor()
    expect(await browser.accessibilityFaults(), 'life size').toEqual([])
    await page.keyboard.press('Escape')
    await page.getByRole('button', { name: 'Close the desk' }).click()
    await page.getByRole('button', { name: 'Yes, close it' }).click()
    await page.getByRole('heading', { name: 'The desk is closed' }).waitFor()
  })
})

/** As a screen reader would begin: its label, or what stands in it. */
const nameOfFocused = `(() => {
  const element = document.activeElement
  const label = element.getAttribute('aria-label') ?? element.labels?.[0]?.textContent ?? element.textContent
  return label.trim()
})()`
