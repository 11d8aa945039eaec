/** The desk as she has it before her: a week made from an empty page by pointing, and again by the keyboard alone. */
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it, onTestFinished } from 'vitest'
import { serveDesk } from '../../src/desk/server/serve-desk.js'
import { buildFolder } from '../../src/installation.js'
import { make } from '../../src/oaktag.js'
import { emptyPlan } from '../../src/plan/starter-plan.js'
import { type Browser, openBrowser } from '../files/browser.js'
import { hasProgram } from '../files/system-program.js'
import { deskFolder } from './desk-folder.js'

/** What `oaktag desk` begins with, but for the week's many sheets, and a title that no page may take for its own markup. */
const empty = emptyPlan
  .replace('Words of the week', '"<img src=x onerror=caught=1>" # ours')
  .replace(/^week: .*\n/m, '')
const words = 'words:\n  - marsh\n  - reed\n  - thrush\n  - pond\n'
const marks = 'marks:\n  - pattern: consonant-digraph\n    line: wavy\n'
const print = 'print:\n  - layout: word-cards\n    across: 2\n'
const week = empty.replace('words:\n', `${words}${marks}${print}`)

describe.runIf(hasProgram('chromium'))('the desk in Chromium', () => {
  let browser: Browser
  beforeAll(async () => {
    browser = await openBrowser()
  })
  afterAll(() => browser.close())

  async function openDesk(text: string, widthPx = 1280) {
    const { folder, plan } = deskFolder(text)
    const desk = await serveDesk({ plan, out: join(folder, 'out'), pageFolder: join(buildFolder, 'desk') })
    onTestFinished(() => desk.close())
    await browser.openAddress(desk.address, widthPx)
    const { page } = browser
    return { folder, plan, desk, page, onDisk: () => readFileSync(plan, 'utf8') }
  }

  it('makes a week by pointing, whose plan gives the sheets that were shown', async () => {
    const { page, plan, folder, onDisk } = await openDesk(empty)
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
    await page.keyboard.press('Tab')
    await expect.poll(onDisk).toBe(week)
    await page.getByRole('link', { name: 'Sheets' }).click()
    await page.locator('img.sheet').first().waitFor()
    await expect.poll(() => page.locator('section[aria-busy=true]').count()).toBe(0)
    const shown = await page.locator('img.sheet').first().getAttribute('src')
    const drawn = await browser.evaluate<string>(`fetch('${shown}').then(response => response.text())`)
    await make({ plan, out: join(folder, 'made'), formats: ['svg'] })
    expect(drawn).toBe(readFileSync(join(folder, 'made/week/word-cards/word-cards-01.svg'), 'utf8'))
    expect(await browser.evaluate('typeof window.caught')).toBe('undefined')
    expect(await page.getByLabel('Title').inputValue()).toBe('<img src=x onerror=caught=1>')
    const told = page.waitForRequest(/\/seen$/)
    await page
      .getByRole('button', { name: /Word cards.*life size/ })
      .first()
      .click()
    // What she sees is to come first.
    expect((await told).postDataJSON().seen[0]).toEqual({ item: 'word-cards', sheet: 0 })
    const paper = await page.locator('dialog img').evaluate(image => image.clientWidth / 96)
    expect(paper).toBeCloseTo(8.5, 2)
    expect(browser.complaints()).toEqual([])
    const here = new URL(page.url()).origin
    expect(browser.requests().filter(url => new URL(url).origin !== here)).toEqual([])
  })

  it('makes the same week by the keyboard alone, and says what it does', async () => {
    const { page, onDisk } = await openDesk(empty)
    const tabTo = async (name: RegExp) => {
      for (let count = 0; count < 150; count += 1) {
        const focused = await browser.evaluate<string>(nameOfFocused)
        if (name.test(focused)) return
        await page.keyboard.press('Tab')
      }
      throw new Error(`the key Tab never comes to ${name}`)
    }
    await page.getByLabel('New word').waitFor()
    await tabTo(/^New word$/)
    const said = () => page.getByRole('status').textContent()
    await page.keyboard.type('marsh')
    await page.keyboard.press('Enter')
    await expect.poll(said).toBe('Added: the word marsh.')
    // Faster than they are written down: none is lost, and they keep their order.
    for (const word of ['reed', 'thrush', 'pond']) {
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
    await expect.poll(onDisk).toBe(week)
    await tabTo(/^Skip/)
    await tabTo(/^Words$/)
    await page.keyboard.press('Enter')
    await tabTo(/^Move marsh down$/)
    for (const place of [2, 3, 4]) {
      await page.keyboard.press('Enter')
      await expect.poll(() => page.getByLabel(`Word ${place}`).inputValue()).toBe('marsh')
    }
    // At the end it can only go up: the keyboard is there.
    await expect.poll(() => browser.evaluate(nameOfFocused)).toBe('Move marsh up')
    for (const place of [3, 2, 1]) {
      await page.keyboard.press('Enter')
      await expect.poll(() => page.getByLabel(`Word ${place}`).inputValue()).toBe('marsh')
    }
    await expect.poll(onDisk).toBe(week)
    await page.keyboard.press('Shift+Tab')
    await tabTo(/^Skip/)
    await tabTo(/^Undo/)
    await page.keyboard.press('Enter')
    await expect.poll(onDisk).toBe(week.replace('  - marsh\n  - reed\n', '  - reed\n  - marsh\n'))
    await tabTo(/^Redo/)
    await page.keyboard.press('Enter')
    await expect.poll(onDisk).toBe(week)
  })

  it('has no barrier in any view, and never scrolls sideways: at 200 % zoom, on a telephone', async () => {
    const groups =
      'groups:\n  - name: Otters\n    words: [mud, frog]\n    size: {for: {acuity: 20/200, distance: 25 cm}}\n'
    const wrong = week
      .replace('across: 2', 'across: 200')
      .replace('- pond', '- word: pond\n    sounds: p o n d')
    const { page, plan } = await openDesk(`${wrong}${groups}`)
    await page.getByText('plural ponds').waitFor()
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
    await page.getByRole('button', { name: /^Show me/ }).click()
    await expect.poll(() => browser.evaluate('document.activeElement.id')).toBe('at-print-0-across')
    writeFileSync(plan, week.replace('- reed', '- heron'))
    await page.getByRole('navigation').getByRole('link', { name: 'Words' }).click()
    await expect.poll(() => page.getByLabel('Word 2').inputValue()).toBe('heron')
    await page.getByLabel('Word 2').fill('2pots')
    await page.getByText('has a digit in it').waitFor()
    await page.getByLabel('Word 2').press('Enter')
    await page.getByLabel('Word 2').fill('heron stork')
    await page.getByLabel('Word 2').press('Enter')
    await expect.poll(() => page.getByLabel('Word 3').inputValue()).toBe('stork')
    expect(readFileSync(plan, 'utf8')).toBe(week.replace('- reed', '- heron\n  - stork'))
    const kept = readFileSync(plan, 'utf8')
    await page.getByRole('button', { name: 'Take out all words' }).click()
    await page.getByText('There are no words yet. Type the first one here').waitFor()
    expect(readFileSync(plan, 'utf8')).not.toContain('heron')
    expect(await browser.evaluate(nameOfFocused)).toBe('New word')
    await page.getByRole('button', { name: 'Undo all words taken out' }).click()
    await expect.poll(() => readFileSync(plan, 'utf8')).toBe(kept)
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
