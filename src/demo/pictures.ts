import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import sharp from 'sharp'
import { installationFolder } from '../installation.js'
import { stylesPage, toPng } from '../oaktag.js'
import { deskPicture } from './desk-picture.js'

/** The README's pictures: small copies of demo sheets, made after `npm run demo` by `npm run pictures`. */
const pictures = [
  { name: 'word-cards', sheet: 'marsh/word-cards/word-cards-01' },
  { name: 'bingo', sheet: 'marsh/bingo/bingo-01' },
  { name: 'marked-list', sheet: 'marsh/marked-list/marked-list-01' },
  { name: 'key', sheet: 'marsh/key/key-01' },
  { name: 'large-print', sheet: 'marsh/word-cards-otters/word-cards-otters-01' },
  { name: 'cover', sheet: 'harbour/word-cards/word-cards-03' },
  { name: 'path-board', sheet: 'marsh/path-board/path-board-01' },
  { name: 'chain-cards', sheet: 'marsh/chain-cards/chain-cards-01' },
  { name: 'callers-sheet', sheet: 'marsh/bingo/bingo-13' },
  { name: 'board-page', sheet: 'pond/board-pages/board-pages-05' },
  { name: 'lesson-notes', sheet: 'pond/lesson-notes/lesson-notes-01' },
  { name: 'practice', sheet: 'pond/practice-marks/practice-marks-01' },
] as const

const WIDTH_PX = 420

const folder = join(installationFolder, '.pictures')
await mkdir(folder, { recursive: true })
for (const { name, sheet } of pictures)
  await sharp(join(installationFolder, 'out', `${sheet}.png`))
    .resize({ width: WIDTH_PX })
    .extend({ top: 1, bottom: 1, left: 1, right: 1, background: '#999999' })
    .png({ palette: true, colours: 32, effort: 10 })
    .toFile(join(folder, `${name}.png`))

/** As a tired copier leaves it: 300 DPI, every pixel black or white, half-covered is where it turns. */
await sharp(await toPng(stylesPage()))
  .threshold(128)
  .png({ palette: true, colours: 2, effort: 10 })
  .toFile(join(folder, 'styles.png'))
const hasDesk = await deskPicture(join(folder, 'desk.png'))
process.stdout.write(`${pictures.length + (hasDesk ? 2 : 1)} pictures in .pictures\n`)
if (!hasDesk) process.stdout.write('The desk’s own stays as it is: Chromium is not installed.\n')
