/** What a change at the desk takes until it is seen: from the key to the picture that the browser has decoded. */
import { openBrowser } from '../files/browser.js'
import { hasProgram } from '../files/system-program.js'

export interface OnScreen {
  readonly byWordMs: readonly number[]
  readonly byLineMs: readonly number[]
}

/** Longer than a page needs to say what it shows, and a desk to make all that is left of a week. */
const AT_REST_MS = 1500

/** Undefined where there is no Chromium. */
export async function changesOnScreen(
  address: string,
  { words, lines }: { readonly words: readonly string[]; readonly lines: readonly string[] },
): Promise<OnScreen | undefined> {
  if (!hasProgram('chromium')) return undefined
  const browser = await openBrowser()
  const atRest = async () => {
    // Where the word is, and the first sheets beside it.
    await browser.evaluate('scrollTo(0, 0)')
    await new Promise(done => setTimeout(done, AT_REST_MS))
  }
  const until = (change: string) => browser.evaluate<number>(`(${untilSeen})(() => { ${change} })`)
  try {
    await browser.openAddress(address, 1280)
    await browser.page.locator('.strip img').first().waitFor()
    const byWordMs: number[] = []
    for (const word of words) {
      await atRest()
      byWordMs.push(await until(typing(word)))
    }
    await browser.evaluate('location.hash = "#marks"')
    await browser.page.locator('input[type=radio]').first().waitFor({ state: 'attached' })
    const byLineMs: number[] = []
    for (const line of lines) {
      await atRest()
      byLineMs.push(await until(picking(line)))
    }
    return { byWordMs, byLineMs }
  } finally {
    await browser.close()
  }
}

/** Runs in the page: makes the change and waits until the first sheet in view is another, and can be painted. */
const untilSeen = `async change => {
  const isInView = ({ top, bottom }) => bottom > 0 && top < innerHeight
  const sheet = [...document.querySelectorAll('.strip img')].find(each => isInView(each.getBoundingClientRect()))
  const before = sheet.src
  const start = performance.now()
  change()
  while (sheet.src === before) {
    if (performance.now() - start > 5000) throw new Error('no other sheet came')
    await new Promise(requestAnimationFrame)
  }
  await sheet.decode()
  await new Promise(requestAnimationFrame)
  return performance.now() - start
}`

function typing(word: string): string {
  return `const field = document.querySelector('[aria-label="Word 1"]')
    field.value = '${word}'
    field.dispatchEvent(new Event('input', { bubbles: true }))
    field.dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }))`
}

function picking(line: string): string {
  return `[...document.querySelectorAll('.mark-row label')]
    .find(label => label.textContent.trim() === '${line}').querySelector('input').click()`
}
