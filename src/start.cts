#!/usr/bin/env node
/** The command as it is installed: its bundle where there is one, else the modules that it was bundled from. */
import fs = require('node:fs')
import path = require('node:path')
import chunks = require('./chunk-loader.cjs')

const folder = path.join(__dirname, '../command')
if (fs.existsSync(path.join(folder, 'waiting.json'))) void chunks.chunkLoader(folder).load('cli.cjs')
else void import('./cli.js')
