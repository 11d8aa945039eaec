/** The system's Chromium without a window, driven by playwright-core, for what can only be measured in a browser. */
import { writeFile } from 'node:fs/promises'
import { pathToFileURL } from 'node:url'
import axe from 'axe-core'
import { chromium, type Page } from 'playwright-core'
import { chromiumPath, quiet } from './chromium.js'

export interface Browser {
  /** For what a person does with a page: pointing, typing. */
  readonly page: Page
  /** Opens a file in a viewport this wide, in CSS pixels. */
  open(file: string, widthPx: number, fragment?: string): Promise<void>
  /** Opens what a server of this machine gives. */
  openAddress(url: string, widthPx: number): Promise<void>
  /** The value of an expression in the page. */
  evaluate<T>(expression: string): Promise<T>
  press(key: 'Tab' | 'Escape' | 'Enter' | 'ArrowRight' | 'ArrowLeft' | 'End'): Promise<void>
  screenshot(heightPx: number): Promise<Buffer>
  /** What the browser would print now, at 100 %, on pages of the size that the page asks for. */
  print(): Promise<Buffer>
  /** Opens a file, or the sheet of it that the fragment names, and prints it to a PDF file. */
  printToFile(file: string, pdf: string, fragment?: string): Promise<void>
  /** What the page asked for beside its own file since it was opened. */
  requests(): readonly string[]
  /** What the browser told of the page since it was opened, as a refused script. */
  complaints(): readonly string[]
  /** What axe-core finds against WCAG 2.2 (A and AA) and its own best practice: the rule and the elements. */
  accessibilityFaults(): Promise<readonly string[]>
  close(): Promise<void>
}

export async function openBrowser(): Promise<Browser> {
  const browser = await chromium.launch({ executablePath: chromiumPath(), args: [...quiet] })
  const page = await browser.newPage()
  const session = await page.context().newCDPSession(page)
  let asked: string[] = []
  let told: string[] = []
  page.on('request', request => asked.push(request.url()))
  page.on('console', message => told.push(message.text()))
  page.on('pageerror', error => told.push(error.message))
  page.on('dialog', dialog => {
    told.push(`dialogue: ${dialog.message()}`)
    void dialog.dismiss()
  })
  // The debugger's own evaluation: the page's policy forbids `eval`, which page.evaluate uses for a string.
  const evaluate = async <T>(expression: string): Promise<T> => {
    const { result, exceptionDetails } = await session.send('Runtime.evaluate', {
      expression,
      awaitPromise: true,
      returnByValue: true,
    })
    if (exceptionDetails !== undefined) throw new Error(JSON.stringify(exceptionDetails))
    return result.value
  }
  const open = (file: string, widthPx: number, fragment = ''): Promise<void> =>
    openAddress(`${pathToFileURL(file).href}${fragment}`, widthPx)
  const openAddress = async (url: string, widthPx: number): Promise<void> => {
    await page.setViewportSize({ width: widthPx, height: 800 })
    // A new document even where only the fragment differs.
    await page.goto('about:blank')
    ;[asked, told] = [[], []]
    await page.goto(url)
    await evaluate('document.fonts.ready.then(() => undefined)')
    asked = asked.filter(each => each !== url && each !== url.replace(/#.*/, ''))
  }
  // No margins of ours: those that a teacher's browser has by itself, unless the page asks for none.
  const print = async (): Promise<Buffer> => {
    const { data } = await session.send('Page.printToPDF', { preferCSSPageSize: true })
    return Buffer.from(data, 'base64')
  }
  return {
    page,
    open,
    openAddress,
    evaluate,
    press: key => page.keyboard.press(key),
    screenshot: async heightPx => {
      const width = await evaluate<number>('innerWidth')
      return page.screenshot({ clip: { x: 0, y: 0, width, height: heightPx }, fullPage: true })
    },
    print,
    printToFile: async (file, pdf, fragment) => {
      await open(file, 1280, fragment)
      await writeFile(pdf, await print())
    },
    requests: () => asked.filter(each => !each.startsWith('data:')),
    complaints: () => told,
    accessibilityFaults: async () => {
      await evaluate(axe.source)
      const { violations } = await evaluate<{ readonly violations: readonly axe.Result[] }>('axe.run()')
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`)
    },
    close: () => browser.close(),
  }
}
