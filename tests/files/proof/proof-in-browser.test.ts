import { mkdtemp, rm, writeFile } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { pageFonts } from '../../../fonts/page-fonts.js'
import { manifestOf } from '../../../src/files/manifest.js'
import { proofPage } from '../../../src/files/proof/proof-page.js'
import { proofParts } from '../../../src/files/proof/proof-parts.js'
import { type Browser, openBrowser } from '../browser.js'
import { a4, item, sheet } from '../marsh-sheets.js'
import { hasProgram, runProgram } from '../system-program.js'
import { aSheetWithText } from './sheet-with-text.js'

/** Text of a plan that would be script, style or a request if any of it were taken for markup. */
const hostile = [
  '</title><script>window.caught = 1</script>',
  '"><img src="https://example.com/a.png" onerror="window.caught = 2">',
  "'><svg onload='window.caught = 3'>",
  '</style><style>body { background: url(https://example.com/b.png) }</style>',
  'javascript:window.caught=4',
  'alongthemarshandoverthewaterwithoutasinglespaceforalineofanypagetobreakat',
]

const wide = { name: 'a4', widthMm: 297, heightMm: 210 }
const letter = { name: 'letter', widthMm: 215.9, heightMm: 279.4 }
const items = [
  item({ title: hostile[0]!, group: hostile[1]!, notes: hostile, fittingNotes: hostile.slice(4) }),
  item({ name: 'bingo', title: 'Bingo', paper: wide, sheets: boards(7) }),
  item({
    name: 'key',
    title: 'Key',
    sheets: [sheet({ kind: 'key', title: 'Key' })],
    week: { title: 'Dictation', day: 'check', print: '22, one for each child; for you once: answers, cover' },
  }),
  item({
    name: 'list',
    title: 'Marked list',
    paper: a4,
    sheets: [await aSheetWithText()],
    notes: [],
    week: {
      title: 'Practice: sounds',
      day: 'practice',
      print: '22, one for each child; for you once: list to read aloud, answers, class record, cover',
    },
  }),
]

function boards(count: number) {
  const size = { widthMm: wide.widthMm, heightMm: wide.heightMm }
  const fronts = Array.from({ length: count }, (_, index) => sheet({ title: hostile[index % 5]!, ...size }))
  const answers = sheet({ kind: 'caller', title: 'Caller’s sheet', widthMm: 215.9, heightMm: 279.4 })
  return [...fronts, answers]
}

const html = proofPage({
  manifest: {
    oaktag: '0.1.0',
    title: hostile[0]!,
    class: hostile[1]!,
    seed: 12,
    pdf: 'marsh.pdf',
    items: items.map(made => manifestOf({ ...made, paper: letter }, { formats: ['svg'], dpi: 300 })),
  },
  parts: proofParts(items),
  warnings: hostile,
  pageFonts: pageFonts(),
})

const programs = ['chromium', 'pdfinfo'].every(hasProgram)

describe.runIf(programs)('the proof page in Chromium', () => {
  let folder: string
  let file: string
  let browser: Browser
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'oaktag-proof-'))
    file = join(folder, 'index.html')
    await writeFile(file, html)
    browser = await openBrowser()
  })
  afterAll(async () => {
    await browser.close()
    await rm(folder, { recursive: true })
  })

  it('asks for nothing, runs nothing of a plan’s text, and is told of no fault', async () => {
    await browser.open(file, 1280)
    expect(browser.requests()).toEqual([])
    expect(browser.complaints()).toEqual([])
    expect(await browser.evaluate('typeof window.caught')).toBe('undefined')
    expect(await browser.evaluate('document.title')).toBe(hostile[0])
    expect(await browser.evaluate('document.querySelectorAll("script, img, iframe").length')).toBe(1)
  })

  it('refuses script that gets into it all the same', async () => {
    await writeFile(join(folder, 'spoilt.html'), html.replace('</main>', `${hostile[0]}${hostile[1]}</main>`))
    await browser.open(join(folder, 'spoilt.html'), 1280)
    expect(await browser.evaluate('typeof window.caught')).toBe('undefined')
    expect(browser.complaints().join('\n')).toContain('Content Security Policy')
  })

  // 640 px is a window of 1280 at 200 % zoom (WCAG 2.2, 1.4.4); 320 px is the width of 1.4.10.
  it.each([1280, 640, 390, 320])('never scrolls sideways at %i px, small or in true size', async widthPx => {
    for (const fragment of ['', '#sheet-bingo-2', '#item-list']) {
      await browser.open(file, widthPx, fragment)
      await browser.evaluate('document.querySelectorAll("details").forEach(fold => { fold.open = true })')
      expect(await browser.evaluate('document.documentElement.scrollWidth')).toBeLessThanOrEqual(widthPx)
      expect(await browser.evaluate(textCutOff)).toEqual([])
    }
  })

  it('breaks no word of the week’s table on a telephone', async () => {
    await browser.open(file, 390)
    const lines =
      '[...document.querySelectorAll(".week a")].find(link => link.textContent === "Dictation").getClientRects().length'
    expect(await browser.evaluate(lines)).toBe(1)
  })

  it('is set in the project’s own typeface, in both weights', async () => {
    await browser.open(file, 1280)
    expect(await browser.evaluate('[...document.fonts].map(font => font.status)')).toEqual([
      'loaded',
      'loaded',
    ])
  })

  it('has text that stands out from its ground by 4.5 to 1 or more (WCAG 2.2, 1.4.3)', async () => {
    await browser.open(file, 1280, '#sheet-bingo-2')
    await browser.evaluate('document.querySelectorAll("details").forEach(fold => { fold.open = true })')
    const found = await browser.evaluate<readonly { text: string; ratio: number }[]>(contrasts)
    expect(found.length).toBeGreaterThan(30)
    expect(found.filter(({ ratio }) => ratio < 4.5)).toEqual([])
  })

  it('has headings in order, and a name for every picture, link, button and section', async () => {
    await browser.open(file, 1280)
    const levels = await browser.evaluate<readonly number[]>(
      '[...document.querySelectorAll("h1,h2,h3,h4,h5,h6")].map(each => Number(each.tagName[1]))',
    )
    expect(levels[0]).toBe(1)
    expect(levels.slice(1).every(level => level === 2)).toBe(true)
    expect(await browser.evaluate(nameless)).toEqual([])
  })

  it.each([1280, 390])('gives axe-core no fault to find at %i px, folds open and shut', async widthPx => {
    await browser.open(file, widthPx)
    expect(await browser.accessibilityFaults()).toEqual([])
    await browser.evaluate('document.querySelectorAll("details").forEach(fold => { fold.open = true })')
    expect(await browser.accessibilityFaults()).toEqual([])
  })

  it('would be told by axe-core of a button without a name', async () => {
    await writeFile(join(folder, 'nameless.html'), html.replace('</main>', '<button></button></main>'))
    await browser.open(join(folder, 'nameless.html'), 1280)
    expect(await browser.accessibilityFaults()).toEqual(['button-name: <button></button>'])
  })

  it('shows where the keyboard is, and first of all a way past the head', async () => {
    await browser.open(file, 1280)
    for (let step = 0; step < 12; step++) {
      await browser.press('Tab')
      const { inView, outline } = await browser.evaluate<{ inView: boolean; outline: number }>(focus)
      expect(inView).toBe(true)
      expect(outline).toBeGreaterThanOrEqual(2)
      if (step > 0) continue
      expect(await browser.evaluate('document.activeElement.textContent')).toBe('Skip to the sheets')
    }
    await browser.open(file, 1280)
    await browser.press('Tab')
    await browser.press('Enter')
    await browser.press('Tab')
    expect(await browser.evaluate('document.activeElement.closest("main") !== null')).toBe(true)
  })

  it('shows a sheet in true size, and makes it small again at Escape', async () => {
    await browser.open(file, 1280, '#sheet-bingo-2')
    const widthPx = 'document.querySelector("#sheet-bingo-2 svg").getBoundingClientRect().width'
    expect(await browser.evaluate(widthPx)).toBeCloseTo((wide.widthMm / 25.4) * 96, 0)
    await browser.press('Escape')
    expect(await browser.evaluate('location.hash')).toBe('#item-bingo')
    expect(await browser.evaluate(widthPx)).toBeLessThan(250)
    expect(await browser.evaluate('document.activeElement.getAttribute("href")')).toBe('#sheet-bingo-2')
  })

  it('shows every set at once and prints them all, whether or not it was scrolled to', async () => {
    await browser.open(file, 390)
    const hidden = `[...document.querySelectorAll('.item > .sheets svg[role]')].filter(svg => !svg.checkVisibility({ contentVisibilityAuto: true })).length`
    expect(await browser.evaluate(hidden)).toBe(0)
    const inSight = await browser.evaluate<number>(
      "document.querySelectorAll('.item > .sheets > .sheet').length",
    )
    const pdf = join(folder, 'all.pdf')
    await writeFile(pdf, await browser.print())
    expect(runProgram('pdfinfo', [pdf])).toMatch(new RegExp(`Pages:\\s+${inSight}\\n`))
  })

  it.each([
    ['item-bingo', 7],
    ['answers-bingo', 1],
    ['item-list', 1],
  ])('prints with the button of %s its own sheets alone: %i', async (id, pages) => {
    await browser.open(file, 1280)
    if (id.startsWith('answers'))
      await browser.evaluate(`document.getElementById(${JSON.stringify(id)}).open = true`)
    await browser.evaluate('window.print = () => { window.asked = true }')
    await browser.evaluate(`document.querySelector('button[data-print="${id}"]').click()`)
    expect(await browser.evaluate('window.asked')).toBe(true)
    const pdf = join(folder, 'printed.pdf')
    await writeFile(pdf, await browser.print())
    expect(runProgram('pdfinfo', [pdf])).toMatch(new RegExp(`Pages:\\s+${pages}\\n`))
    expect(await browser.evaluate('document.querySelector(".chosen, .choosing")')).toBe(null)
  })
})

/** Texts that are wider than the box that holds them. */
const textCutOff = `[...document.querySelectorAll('h1, h2, p, li:not(.sheet), button, summary')]
  .filter(each => each.scrollWidth > each.clientWidth + 1 && getComputedStyle(each).display !== 'inline')
  .map(each => each.textContent)`

/** For every text that is shown, its contrast to what lies behind it: WCAG's relative luminance. */
const contrasts = `(() => {
  const channels = color => color.match(/[\\d.]+/g).map(Number)
  const luminance = color => {
    const [r, g, b] = channels(color).slice(0, 3).map(value => {
      const share = value / 255
      return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4
    })
    return 0.2126 * r + 0.7152 * g + 0.0722 * b
  }
  const ground = element => {
    for (let each = element; each !== null; each = each.parentElement) {
      const color = getComputedStyle(each).backgroundColor
      if (channels(color)[3] !== 0) return color
    }
    return 'rgb(255, 255, 255)'
  }
  const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
  const found = []
  while (walker.nextNode()) {
    const element = walker.currentNode.parentElement
    const text = walker.currentNode.textContent.trim()
    if (text === '' || element.closest('svg, script') !== null || element.getClientRects().length === 0) continue
    const lights = [getComputedStyle(element).color, ground(element)].map(luminance).sort((a, b) => b - a)
    found.push({ text, ratio: (lights[0] + 0.05) / (lights[1] + 0.05) })
  }
  return found
})()`

const nameless = `[...document.querySelectorAll('svg[role=img], a, button, section, summary')]
  .filter(each => {
    const labelled = each.getAttribute('aria-labelledby')
    const label = labelled === null ? each.getAttribute('aria-label') : document.getElementById(labelled)?.textContent
    const own = each.tagName === 'svg' ? each.querySelector(':scope > title')?.textContent : each.textContent
    return (label ?? own ?? '').trim() === ''
  })
  .map(each => each.outerHTML.slice(0, 80))`

const focus = `(() => {
  const at = document.activeElement
  const { top, bottom, width } = at.getBoundingClientRect()
  const { outlineStyle, outlineWidth } = getComputedStyle(at)
  return {
    inView: top < innerHeight && bottom > 0 && width > 0,
    outline: outlineStyle === 'none' ? 0 : parseFloat(outlineWidth),
  }
})()`
