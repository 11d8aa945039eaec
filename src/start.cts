#!/usr/bin/env node
/** The command as it is installed: its bundle where there is one, else the modules that it was bundled from. */
import fs = require('node:fs')
import path = require('node:path')
import type vm = require('node:vm')
import chunks = require('./chunk-loader.cjs')
import later = require('./compile-later.cjs')

const folder = path.join(__dirname, '../command')
const studying = ['zlib']
const checking = ['zlib', 'crypto', 'os']
const drawing = ['zlib', 'fs/promises', 'crypto', 'os', 'perf_hooks', 'timers/promises']
/** What commands need of Node. */
const needed: Readonly<Record<string, readonly string[]>> = {
  make: drawing,
  check: checking,
  desk: drawing,
  list: studying,
  study: studying,
  find: studying,
  sorts: studying,
}

if (fs.existsSync(path.join(folder, 'waiting.json'))) startBundle()
else void import('./cli.js')

function startBundle(): void {
  openWhatIsNeeded()
  later.compileLater()
  const scripts = new Map<string, vm.Script>()
  process.on('exit', () => chunks.keepCompiled(folder, scripts, later.laterFlags()))
  // Nothing is left to be waited for, and all is written: Node would take its memory apart, page for page, before it ends.
  process.on('beforeExit', () => process.exit())
  void chunks.chunkLoader(folder, scripts).load('cli.cjs')
}

/** Node's own modules come compiled, for V8 as it is by itself: those opened once its flags are set are compiled again. */
function openWhatIsNeeded(): void {
  for (const name of needed[process.argv[2] ?? ''] ?? []) require(name)
  // Each is opened when it is first asked for.
  for (const stream of ['stdout', 'stderr'] as const) void process[stream]
}
