/**
 * Loads the chunks that the command is bundled into, each with what V8 made of it when oaktag was built: reading that
 * takes a fraction of compiling anew. Each version of V8 has files of its own; one that has none yet compiles, in silence.
 * What runs here runs before everything else, so it is plain CommonJS, which starts sooner than modules do.
 */
import buffer = require('node:buffer')
import fs = require('node:fs')
import path = require('node:path')
import v8 = require('node:v8')
import vm = require('node:vm')
import nodeModule = require('node:module')

/** A chunk as the bundler writes it: the body of a CommonJS module in a function of these. */
type ChunkBody = (
  exports: object,
  require: (name: string) => unknown,
  module: { exports: object },
  filename: string,
  dirname: string,
  importChunk: (name: string) => Promise<unknown>,
) => void

interface ChunkLoader {
  /** What the chunk exports, once all that it waits for is there. */
  readonly load: (name: string) => Promise<unknown>
}

/** Chunks that wait for the shaper, by name, each with all that it requires: what the bundler tells beside them. */
interface Waiting {
  readonly shaper: string
  readonly waiting: Readonly<Record<string, readonly string[]>>
}

/** @param scripts those compiled before, where the same chunks are run again */
function chunkLoader(folder: string, scripts = new Map<string, vm.Script>()): ChunkLoader {
  const modules = new Map<string, { exports: object }>()
  const ofPackages = nodeModule.createRequire(path.join(folder, 'chunk.cjs'))
  const { shaper, waiting }: Waiting = JSON.parse(fs.readFileSync(path.join(folder, 'waiting.json'), 'utf8'))

  const load = async (name: string): Promise<unknown> => {
    // As for any import, what asks comes to its end first.
    await undefined
    const needed = waiting[name]
    if (needed !== undefined) {
      const opened: { readonly ready?: Promise<void> } = required(shaper)
      // V8 looks through the shaper's WebAssembly beside this; meanwhile the chunks are read.
      for (const each of needed) scriptOf(each)
      await opened.ready
    }
    return required(name)
  }

  function required(name: string): object {
    const known = modules.get(name)
    if (known !== undefined) return known.exports
    const module = { exports: {} }
    modules.set(name, module)
    const filename = path.join(folder, name)
    const body: ChunkBody = scriptOf(name).runInThisContext()
    const require = (asked: string): unknown =>
      asked.startsWith('./') ? required(asked.slice(2)) : ofPackages(asked)
    const imported = (asked: string): Promise<unknown> => {
      if (asked.startsWith('./')) return load(asked.slice(2))
      // What imports modules is not opened for Node's own.
      return nodeModule.isBuiltin(asked) ? Promise.resolve(ofPackages(asked)) : import(asked)
    }
    body(module.exports, require, module, filename, folder, imported)
    return module.exports
  }

  function scriptOf(name: string): vm.Script {
    const script = scripts.get(name) ?? compiled(path.join(folder, name))
    scripts.set(name, script)
    return script
  }

  return { load }
}

function compiled(filename: string): vm.Script {
  return new vm.Script(textOf(fs.readFileSync(filename)), { filename, ...cachedData(cacheFile(filename)) })
}

/** Most chunks are ASCII, which needs no decoding. */
function textOf(bytes: Buffer): string {
  return bytes.toString(buffer.isAscii(bytes) ? 'latin1' : 'utf8')
}

const asV8HasThem = ['--heap-growing-percent=0', '--semi-space-growth-factor=2', '--parallel-scavenge']

/** Where what this V8 compiles of a chunk is kept. */
function cacheFile(filename: string): string {
  return `${filename}.${process.versions.v8}-${process.arch}.cache`
}

/**
 * Writes what this V8 has compiled of chunks of which nothing is kept yet: where oaktag came as a package, which is made with
 * one version of Node, it starts sooner from its second run on. Where nobody may write to the installation, nothing is said.
 *
 * @param begunWith V8's flags as each run sets them at its beginning
 */
function keepCompiled(
  folder: string,
  scripts: ReadonlyMap<string, vm.Script>,
  begunWith: readonly string[] = [],
): void {
  const missing = [...scripts].filter(
    // It is said of those that came with one, taken or not.
    ([name, { cachedDataRejected }]) =>
      cachedDataRejected === undefined && !fs.existsSync(cacheFile(path.join(folder, name))),
  )
  if (missing.length === 0) return
  // V8 takes cached data for the flags with which they were made: a long run has set some of its own (`collect-sooner.ts`).
  for (const flag of [...asV8HasThem, ...begunWith]) v8.setFlagsFromString(flag)
  try {
    fs.accessSync(folder, fs.constants.W_OK)
    for (const [name, script] of missing) {
      const file = cacheFile(path.join(folder, name))
      // Another run may read it at any time: it is there whole, or not at all.
      const begun = `${file}.${process.pid}.cache`
      fs.writeFileSync(begun, script.createCachedData())
      fs.renameSync(begun, file)
    }
  } catch {
    return
  }
}

function cachedData(file: string): { readonly cachedData?: Buffer } {
  try {
    return { cachedData: fs.readFileSync(file) }
  } catch {
    return {}
  }
}

export = { chunkLoader, cacheFile, keepCompiled }
