import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { manifestOf } from '../../../src/files/manifest.js'
import { proofPage } from '../../../src/files/proof/proof-page.js'
import { proofParts } from '../../../src/files/proof/proof-parts.js'
import { papers } from '../../../src/sheets/papers.js'
import { type Browser, openBrowser } from '../browser.js'
import { item, sheet } from '../marsh-sheets.js'
import { hasProgram } from '../system-program.js'

const screen = papers.find(({ name }) => name === 'screen 16:9')!
const size = { widthMm: screen.heightMm, heightMm: screen.widthMm }
const pages = [1, 2, 3].map(number =>
  sheet({ kind: 'screen', title: `step ${number}`, pieces: [], cuts: [], ...size }),
)
const items = [
  item({ name: 'cards', title: 'Cards' }),
  item({ name: 'board-pages', title: 'Board pages', paper: { ...screen, ...size }, sheets: pages }),
]
const html = proofPage({
  manifest: {
    oaktag: '0.1.0',
    title: 'Along the marsh',
    class: '',
    seed: 12,
    items: items.map(each => manifestOf(each, { formats: ['svg'], dpi: 300 })),
  },
  parts: proofParts(items),
  warnings: [],
})

describe('pages for the screen on the proof page', () => {
  it('are counted apart from what is printed', () => {
    expect(html).toContain('and 3 pages for the screen')
    expect(html).toContain('<p class="count">3 pages for the screen, size screen 16:9</p>')
  })

  it('have a button of their own, which shows where the script runs', () => {
    expect(html.match(/data-show="item-board-pages"[^>]*hidden>Show on the screen/g)).toHaveLength(1)
    expect(html).not.toContain('data-show="item-cards"')
  })
})

describe.runIf(hasProgram('chromium'))('pages for the screen in Chromium', () => {
  let folder: string
  let browser: Browser
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'oaktag-screen-'))
    await writeFile(join(folder, 'index.html'), html)
    browser = await openBrowser()
  })
  afterAll(async () => {
    await browser.close()
    await rm(folder, { recursive: true })
  })

  const open = async () => {
    await browser.open(join(folder, 'index.html'), 1280)
    // A key pressed by hand: a browser lets nothing else fill the screen.
    await browser.evaluate("document.querySelector('[data-show]').focus()")
    await browser.press('Enter')
  }
  const shown = () =>
    browser.evaluate<readonly string[]>(
      "[...document.querySelectorAll('.sheet')].filter(each => each.checkVisibility()).map(each => each.querySelector('title').textContent)",
    )

  it('fill the window, one at a time', async () => {
    await open()
    expect(await shown()).toEqual(['step 1'])
    const [wide, high] = await browser.evaluate<readonly number[]>(
      "(({ width, height }) => [width / innerWidth, height / innerHeight])(document.querySelector('.now svg').getBoundingClientRect())",
    )
    expect([wide, high]).toEqual([1, 1])
  })

  it('are turned by arrow keys, stop at the last and the first, and by a click', async () => {
    await open()
    await browser.press('ArrowRight')
    expect(await shown()).toEqual(['step 2'])
    await browser.press('End')
    await browser.press('ArrowRight')
    expect(await shown()).toEqual(['step 3'])
    await browser.press('ArrowLeft')
    expect(await shown()).toEqual(['step 2'])
    await browser.evaluate(
      "document.querySelector('.now svg').dispatchEvent(new MouseEvent('click', { bubbles: true, cancelable: true }))",
    )
    expect(await shown()).toEqual(['step 3'])
  })

  it('give the page back at Escape, with the focus where it was', async () => {
    await open()
    await browser.press('ArrowRight')
    await browser.press('Escape')
    expect(await shown()).toHaveLength(4)
    expect(await browser.evaluate('document.activeElement.dataset.show')).toBe('item-board-pages')
  })

  it('do all that within the page’s policy, and leave no fault of accessibility', async () => {
    await open()
    await browser.press('ArrowRight')
    await browser.press('Escape')
    expect(browser.complaints()).toEqual([])
    expect(browser.requests()).toEqual([])
    expect(await browser.accessibilityFaults()).toEqual([])
  })
})
