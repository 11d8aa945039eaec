import { existsSync } from 'node:fs'
import { copyFile, mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { delimiter, join } from 'node:path'
import { chromium } from 'playwright-core'
import sharp from 'sharp'
import { serveDesk } from '../desk/server/serve-desk.js'
import { buildFolder, installationFolder } from '../installation.js'

const [WIDTH_PX, HEIGHT_PX] = [1180, 760]

/** The README's picture of the desk, where this machine has Chromium; else the one that is there stays. */
export async function deskPicture(file: string): Promise<boolean> {
  const executablePath = (process.env.PATH ?? '')
    .split(delimiter)
    .map(folder => join(folder, 'chromium'))
    .find(existsSync)
  if (executablePath === undefined) return false
  const folder = await mkdtemp(join(tmpdir(), 'oaktag-picture-'))
  const plan = join(folder, 'marsh.yaml')
  await copyFile(join(installationFolder, 'src/demo/plans/marsh.yaml'), plan)
  const desk = await serveDesk({ plan, out: join(folder, 'out'), pageFolder: join(buildFolder, 'desk') })
  const browser = await chromium.launch({ executablePath, args: ['--no-sandbox', '--disable-gpu'] })
  try {
    const page = await browser.newPage({ viewport: { width: WIDTH_PX, height: HEIGHT_PX } })
    await page.goto(desk.address)
    await page.getByRole('link', { name: 'Marks' }).click()
    await page.getByText('How it looks').first().click()
    await page.locator('.strip[aria-busy=false] img').first().waitFor()
    await page.waitForLoadState('networkidle', { timeout: 5000 }).catch(() => undefined)
    await sharp(await page.screenshot())
      .extend({ top: 1, bottom: 1, left: 1, right: 1, background: '#999999' })
      .png({ palette: true, colours: 64, effort: 10 })
      .toFile(file)
  } finally {
    await browser.close()
    desk.close()
    await rm(folder, { recursive: true, force: true })
  }
  return true
}
