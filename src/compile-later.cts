/**
 * V8 compiles anew, to run faster, what has run for a while. Of a run that takes a second most of that never pays: it is a fifth
 * of the processor's time. So a function has to run three times as long before it is worth it; a run of ten seconds loses
 * nothing either. It is a flag of the whole process, which no value depends on, and is called otherwise in each V8; where it
 * is not known, V8 does as it always does. It is set before anything is compiled, since cached data are taken for the flags with
 * which they were made.
 */
import v8 = require('node:v8')

/** By the first number of V8's version: three times what it does by itself. */
const flags: Readonly<Record<string, string>> = {
  11: '--interrupt-budget=400000',
  12: '--invocation-count-for-turbofan=9000',
  13: '--invocation-count-for-turbofan=9000',
}

function laterFlag(version = process.versions.v8): string | undefined {
  return flags[version.split('.')[0]!]
}

function compileLater(): void {
  const flag = laterFlag()
  if (flag !== undefined) v8.setFlagsFromString(flag)
}

export = { compileLater, laterFlag }
