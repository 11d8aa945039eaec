#!/usr/bin/env node
/** The command as it is installed: its bundle where there is one, else the modules that it was bundled from. */
import fs = require('node:fs')
import path = require('node:path')
import type vm = require('node:vm')
import chunks = require('./chunk-loader.cjs')
import later = require('./compile-later.cjs')

const folder = path.join(__dirname, '../command')
if (fs.existsSync(path.join(folder, 'waiting.json'))) startBundle()
else void import('./cli.js')

function startBundle(): void {
  later.compileLater()
  const scripts = new Map<string, vm.Script>()
  process.on('exit', () => chunks.keepCompiled(folder, scripts))
  void chunks.chunkLoader(folder, scripts).load('cli.cjs')
}
