import { accessSync, constants, statfsSync } from 'node:fs'
import { dirname, join, relative } from 'node:path'
import { defineConfig } from 'vitest/config'
import { BaseSequencer } from 'vitest/node'
import { isFreshBuild } from './fresh-build.js'

const root = new URL('..', import.meta.url).pathname

/** What takes long though its file is short begins first, so that no worker waits for it at the end. */
class LongestFirst extends BaseSequencer {
  override async sort(files: Parameters<BaseSequencer['sort']>[0]) {
    const sorted = await super.sort(files)
    const isLong = ({ moduleId }: (typeof sorted)[number]) => /tests\/(?:soak|demo|commands)\//.test(moduleId)
    return [...sorted.filter(isLong), ...sorted.filter(file => !isLong(file))]
  }
}

/**
 * What tests write lies in memory, where the system has room for it there: a run waits until its manifest is on the disk
 * itself, and hundreds of tests would wait with it. Elsewhere it lies where temporary files do.
 */
const inMemory = '/dev/shm'
if (process.env.TMPDIR === undefined && hasRoom(inMemory)) process.env.TMPDIR = inMemory

function hasRoom(folder: string): boolean {
  try {
    accessSync(folder, constants.W_OK)
    const { bavail, bsize } = statfsSync(folder)
    return bavail * bsize > 2 ** 30
  } catch {
    return false
  }
}

/**
 * What is compiled: where nothing of it is younger than the build, tests take it from there, as Node runs it. That is a sixth
 * quicker than what vitest transforms from the sources. Who watches the tests changes the sources under them: then they are
 * taken from these.
 */
const compiled = ['src', 'layouts', 'fonts']
const isBuilt =
  process.argv.includes('run') && isFreshBuild({ root, folders: compiled, built: '.build/src/oaktag.js' })

const fromBuild = {
  name: 'from-build',
  enforce: 'pre' as const,
  resolveId(source: string, importer: string | undefined): string | undefined {
    if (importer === undefined || !source.startsWith('.') || !source.endsWith('.js')) return undefined
    const path = relative(root, join(dirname(importer), source))
    return compiled.includes(path.split('/')[0]!) ? join(root, '.build', path) : undefined
  },
}

export default defineConfig({
  plugins: isBuilt ? [fromBuild] : [],
  resolve: {
    // The library as a stranger imports it, from the sources that are being tested.
    alias: { oaktag: isBuilt ? `${root}.build/src/oaktag.js` : `${root}src/oaktag.ts` },
  },
  test: {
    root,
    include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
    // Files share what they import: satori, the typefaces and the lexicon are opened once a worker, not once a file.
    isolate: false,
    server: { deps: { external: [/\/\.build\//] } },
    sequence: { sequencer: LongestFirst },
    // All cores: vitest would leave one to itself, and on two cores that is half the machine.
    maxWorkers: '100%',
    // Sheets and their pixels leave much behind that is young: more room for it took 6 to 14 % off two files' processor time.
    execArgv: ['--min-semi-space-size=32', '--max-semi-space-size=64'],
    testTimeout: 120_000,
    hookTimeout: 300_000,
  },
})
