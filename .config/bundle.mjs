// Bundles the compiled command into chunks, each loaded when something of it is asked for: a command then opens a dozen
// files instead of hundreds. `src/chunk-loader.cts` loads them. The licences of what went into them lie beside them.
import { copyFileSync, mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { basename, join } from 'node:path'
import { rolldown } from 'rolldown'
import { licencesOf } from './licences.mjs'
import { beside, isShaper, quickStarts } from './quick-starts.mjs'

/** Native, or with data of their own beside them: these stay packages. */
const keptApart = ['sharp', 'pdfkit']
const shaper = 'shaper.cjs'

export async function bundle({ root, build, folder }) {
  const bundled = await rolldown({
    input: { cli: join(build, 'src/cli.js'), shaper: 'harfbuzzjs' },
    cwd: root,
    platform: 'node',
    external: keptApart,
    // A path for an address: it is only ever asked for what lies beside or above it, and Node makes no address of it.
    transform: { define: { 'import.meta.dirname': '__dirname', 'import.meta.url': '__filename' } },
    checks: { ineffectiveDynamicImport: false, emptyImportMeta: false },
    plugins: quickStarts,
  })
  const { output } = await bundled.generate({
    format: 'cjs',
    entryFileNames: '[name].cjs',
    chunkFileNames: '[name].cjs',
  })
  rmSync(folder, { recursive: true, force: true })
  mkdirSync(folder, { recursive: true })
  for (const { fileName, code } of output) writeFileSync(join(folder, fileName), asChunk(code))
  const { resolve } = createRequire(join(root, 'package.json'))
  for (const file of beside) copyFileSync(resolve(file), join(folder, basename(file)))
  const holder = output.find(({ moduleIds }) => moduleIds.some(isShaper)).fileName
  const waiting = Object.fromEntries(
    output
      .map(({ fileName }) => [fileName, reachedFrom(fileName, output)])
      .filter(([, reached]) => reached.includes(holder)),
  )
  writeFileSync(join(folder, 'waiting.json'), JSON.stringify({ shaper, waiting }))
  writeFileSync(join(folder, 'LICENSES.txt'), licencesOf(output))
}

/** The body of a function that the loader calls. What is asked for by `import` the loader fetches: chunks may have to wait. */
function asChunk(code) {
  const body = code
    .replace(/^#!.*/, '')
    .replaceAll(/Promise\.resolve\(\)\.then\(\(\) => require\(("\.\/[^"]+")\)\)/g, 'importChunk($1)')
    .replaceAll(/\bimport\((["'][^"']+["'])\)/g, 'importChunk($1)')
  return `(function (exports, require, module, __filename, __dirname, importChunk) {${inAscii(body)}\n})`
}

/** What is ASCII is read three times as fast. Other signs are written as escapes, which mean another thing in raw texts alone. */
function inAscii(body) {
  if (/String\.raw`[^`]*[^\n -~\t\r][^`]*`/.test(body)) return body
  return body.replaceAll(/[^\n -~\t\r]/g, sign => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`)
}

/** A chunk and all that it requires, itself or through others, each behind what it requires. */
function reachedFrom(name, output, reached = new Set(), seen = new Set()) {
  if (seen.has(name)) return [...reached]
  seen.add(name)
  const chunk = output.find(({ fileName }) => fileName === name)
  for (const each of chunk?.imports ?? []) reachedFrom(each, output, reached, seen)
  if (chunk !== undefined) reached.add(name)
  return [...reached]
}
