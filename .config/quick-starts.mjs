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
    "export const ready = createHarfBuzz({ locateFile: () => createRequire(import.meta.url).resolve('harfbuzzjs/dist/harfbuzz.wasm') }).then(init);",
  ],
  [/^/, "import { createRequire } from 'node:module'\n"],
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

/** Node's own `assert` opens the streams of the terminal when it is loaded: here, only where something is wrong. */
const assertionsThatFail = changed(
  'assertions-that-fail',
  id => /yargs[\\/]lib[\\/]platform-shims[\\/]esm\.mjs$/.test(id),
  [
    [
      /^import \{ notStrictEqual, strictEqual \} from 'assert';?$/m,
      `const notStrictEqual = (...args) => { if (Object.is(args[0], args[1])) process.getBuiltinModule('node:assert').notStrictEqual(...args); };
const strictEqual = (...args) => { if (!Object.is(args[0], args[1])) process.getBuiltinModule('node:assert').strictEqual(...args); };`,
    ],
  ],
)

/** satori's rules for breaking lines are unpacked when they are loaded; oaktag breaks its lines itself. */
const lineRulesWhenAsked = changed(
  'line-rules-when-asked',
  id => /linebreak[\\/]dist[\\/]module\.mjs$/.test(id),
  [
    [
      /^const (\S+\$classTrie) = (new \S+\(\S+\));$/m,
      'let lineRules;\nconst $1 = { get: point => (lineRules ??= $2).get(point) };',
    ],
  ],
)

/** satori brings a HarfBuzz of its own and makes it ready at its start: it is of use only to who gives satori typefaces. */
const shaperOfSatoriWhenAsked = changed(
  'shaper-of-satori-when-asked',
  id => /satori[\\/]dist[\\/]index\.js$/.test(id),
  [
    [/\bvar (\w+)=(\$t\(Qr\(\),1\)),/, 'var $1={get default(){return $2.default}},'],
    ['await Promise.all([dc(),ir()])', 'await Promise.all([dc(),g.fonts.length>0?ir():undefined])'],
  ],
)

export const quickStarts = [
  shaperThatIsWaitedFor,
  widthsWithoutRules,
  helpWhenAsked,
  assertionsThatFail,
  lineRulesWhenAsked,
  shaperOfSatoriWhenAsked,
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
