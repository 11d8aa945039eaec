// Bundles the page of the desk for browsers: one script, one style, one page, and the licence of what is in the script.
import { cpSync, mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { rolldown } from 'rolldown'
import { licencesOf } from './licences.mjs'

export async function bundleDesk({ root, folder }) {
  const room = join(root, 'src/desk/page')
  const bundled = await rolldown({
    input: join(room, 'main.tsx'),
    cwd: root,
    platform: 'browser',
    tsconfig: join(root, '.config/tsconfig.page.json'),
    // A page that lacks a part would be blank, and nobody would know why.
    onLog: (level, log, tell) => {
      if (log.code === 'UNRESOLVED_IMPORT') throw new Error(log.message)
      tell(level, log)
    },
  })
  const { output } = await bundled.generate({ format: 'esm', minify: true, entryFileNames: 'page.js' })
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  writeFileSync(join(folder, 'page.js'), output[0].code)
  for (const name of ['page.html', 'page.css']) cpSync(join(room, name), join(folder, name))
  writeFileSync(join(folder, 'LICENSES.txt'), licencesOf(output))
}
