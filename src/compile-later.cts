/**
 * V8 compiles anew, to run faster, what has run for a while. Of a run that takes a second most of that never pays: it is a quarter
 * of the processor's time. So a function has to run four times as long before it is worth it, a function of WebAssembly ten times,
 * and less of what it calls is compiled into it; a run of ten seconds loses nothing either. A regular expression is compiled when it
 * has run twenty times, not once: of the 160 of one sheet most run two or three times. What is new has one megabyte, which V8 would
 * let grow to sixteen: memory that a process takes for the first time costs the system more than looking through a megabyte
 * for what is in use; one sheet and thirty boards take 3 % less of the processor, and 20 MB less. These are flags of the whole process,
 * which no value depends on, and some are called otherwise in each V8; where V8 is not known, it does as it always does. They are
 * set once, before anything is compiled: cached data are taken for the flags with which they were made, and V8 stops where what it
 * may compile into a function is changed while it compiles one beside.
 */
import v8 = require('node:v8')

/** A third of what V8 compiles into a function by itself. */
const littleInlined = ['--max-inlined-bytecode-size=150', '--max-inlined-bytecode-size-cumulative=300']
const oftenRead = ['--regexp-tier-up-ticks=20']
const calledOften = ['--invocation-count-for-turbofan=9000', '--wasm-tiering-budget=130000000']

/** satori's layout is one function of twenty thousand bytes, which takes a tenth of a second to compile; ours have at most three. */
const noneOfTheLargest = '--max-optimized-bytecode-size=8000'

/** Until much is made (`collect-sooner.ts`). A megabyte is looked through before another thread is awake to help. */
const littleThatIsNew = ['--semi-space-growth-factor=1', '--no-parallel-scavenge']

const always = [...littleInlined, ...oftenRead, noneOfTheLargest, ...littleThatIsNew]

/** By the first number of V8's version. */
const flags: Readonly<Record<string, readonly string[]>> = {
  11: ['--interrupt-budget=600000', '--wasm-tiering-budget=18000000', ...always],
  12: [...calledOften, ...always],
  13: [...calledOften, ...always],
}

function laterFlags(version = process.versions.v8): readonly string[] {
  return flags[version.split('.')[0]!] ?? []
}

function compileLater(): void {
  for (const flag of laterFlags()) v8.setFlagsFromString(flag)
}

export = { compileLater, laterFlags }
