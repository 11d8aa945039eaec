// Changes that the bundle makes to packages, so that they do nothing at their start that nobody has asked for yet. What
// they give stays the same (`tests/house/bundled-command.test.ts`); where a package no longer holds what is changed, the
// build stops and says so.

export const isShaper = id => /harfbuzzjs[\\/]dist[\\/]index\.mjs$/.test(id)

/**
 * HarfBuzz is ready only when its WebAssembly is, for which a module may wait, but not what `require` loads: in the bundle
 * it says what to wait for, and the loader of chunks does.
 */
const shaperThatIsWaitedFor = changed('shaper-that-is-waited-for', isShaper, [
  [
    'init(await createHarfBuzz());',
    "export const ready = createHarfBuzz({ locateFile: name => import.meta.dirname + '/' + name }).then(init);",
  ],
])

/** The width of a text takes the rules of all scripts, a fifth of a start; plain ASCII, which is all our help, takes none. */
const widthsWithoutRules = changed('widths-without-rules', id => /string-width[\\/]index\.js$/.test(id), [
  [
    /^const segmenter = new Intl\.Segmenter\(\);$/m,
    'const segmenter = { segment: text => new Intl.Segmenter().segment(text) };',
  ],
  [/^(const rgiEmojiRegex = )(.*);$/m, '$1{ test: text => $2.test(text) };', 'in version 8 alone'],
  [
    /^(export default function stringWidth\((\w+), .*)$/m,
    "$1\n\tif (typeof $2 === 'string' && /^[ -~]*$/.test($2)) return $2.length;",
  ],
])

/** yargs writes the whole help page for every command that it calls, to have it at hand for one that fails later. */
const helpWhenAsked = changed('help-when-asked', id => /yargs[\\/]build[\\/]lib[\\/]command\.js$/.test(id), [
  ['yargs.getInternalMethods().getUsageInstance().cacheHelpMessage();', ''],
])

/** yargs looks for a package from the folder of the chunk upwards, for its version; ours is told it. */
const versionThatIsTold = changed(
  'version-that-is-told',
  id => /yargs[\\/]build[\\/]lib[\\/]yargs-factory\.js$/.test(id),
  [['yargs.version();', "yargs.version('');"]],
)

/** Node's own `assert` and yargs open the streams of the terminal when they are loaded: here, only where they are used. */
const streamsWhenUsed = changed(
  'streams-when-used',
  id => /yargs[\\/]lib[\\/]platform-shims[\\/]esm\.mjs$/.test(id),
  [
    [
      /^import \{ notStrictEqual, strictEqual \} from 'assert';?$/m,
      `const notStrictEqual = (...args) => { if (Object.is(args[0], args[1])) process.getBuiltinModule('node:assert').notStrictEqual(...args); };
const strictEqual = (...args) => { if (!Object.is(args[0], args[1])) process.getBuiltinModule('node:assert').strictEqual(...args); };`,
    ],
    // Which is a path in the bundle.
    ['fileURLToPath(import.meta.url)', 'import.meta.url'],
    [
      "stdColumns: typeof process.stdout.columns !== 'undefined' ? process.stdout.columns : null",
      'get stdColumns() { return process.stdout.columns ?? null }',
    ],
  ],
)

/**
 * satori is given no typeface and no text (`src/pieces/faces/lay-out-face.ts`): what reads typefaces, shapes letters and breaks
 * lines stays out of the bundle; who needs it after all is told. Its engine, which it carries as text in its own source, is read
 * from the file that lies beside it.
 */
const satoriOfBoxes = changed('satori-of-boxes', id => /satori[\\/]dist[\\/]index\.js$/.test(id), [
  [
    /\bimport (\w+) from"@shuding\/opentype\.js";/,
    `const leftOut = () => { throw new Error('satori has no typefaces here: see .config/quick-starts.mjs') };
const $1 = { parse: leftOut, Glyph: leftOut };`,
  ],
  [/\bimport\{inflateSync as (\w+)\}from"fflate";/, 'const $1 = () => leftOut();'],
  [/\bimport (\w+) from"linebreak";/, 'const $1 = function () { leftOut(); };'],
  [/\bvar (\w+)=\$t\(Qr\(\),1\),/, 'var $1={get default(){return leftOut()}},'],
  ['await Promise.all([dc(),ir()])', 'await Promise.all([dc(),g.fonts.length>0?ir():undefined])'],
  // Its HarfBuzz.
  [/\bw="AGFzbQ[\w+/=]{400000,}"/, 'w=leftOut()'],
  [
    /\bwc="AGFzbQ[\w+/=]{400000,}",ky=[^;]*?,lc=ky\}\);/,
    "lc=readFileSync(import.meta.dirname + '/layout.wasm')});",
  ],
  [/^/, "import { readFileSync } from 'node:fs'\n"],
])

/**
 * resvg has Node write a whole report to learn which C library the system has; what tells of libraries, as a file, says it. The
 * compiled part of it stays a package, found from where resvg itself lies.
 */
const resvgWithoutReport = changed('resvg-without-report', id => /resvg-js[\\/]js-binding\.js$/.test(id), [
  [
    /function isMusl\(\)\{(.*?)\}(?=switch\(platform\))/,
    'function isMusl(){try{return readFileSync("/usr/bin/ldd","utf8").includes("musl")}catch{$1}}',
  ],
  [/\brequire\((?="(?:@resvg\/|\.\/resvgjs))/g, 'ofResvg('],
  [
    /^"use strict";/,
    '"use strict";const {createRequire}=require("node:module"),ofResvg=createRequire(createRequire(__filename).resolve("@resvg/resvg-js"));',
  ],
])

/** WebAssembly that goes with what is bundled, and lies beside it. */
export const beside = ['harfbuzzjs/dist/harfbuzz.wasm', 'satori/layout.wasm']

export const quickStarts = [
  shaperThatIsWaitedFor,
  widthsWithoutRules,
  helpWhenAsked,
  versionThatIsTold,
  streamsWhenUsed,
  satoriOfBoxes,
  resvgWithoutReport,
]

/** @param changes what is found, what stands there instead, and where it may be missing, why */
function changed(name, concerns, changes) {
  return {
    name,
    transform(code, id) {
      if (!concerns(id)) return null
      return changes.reduce((text, [from, to, mayBeMissing]) => {
        if (!holds(text, from) && mayBeMissing === undefined)
          throw new Error(`${id} no longer holds ${from}: see .config/quick-starts.mjs`)
        return text.replace(from, to)
      }, code)
    },
  }
}

const holds = (text, part) => (typeof part === 'string' ? text.includes(part) : part.test(text))
