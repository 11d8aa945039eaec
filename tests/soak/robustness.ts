/**
 * `npm run soak`, its second part: whatever is read, made or killed ends in success, or in problems with a place and
 * advice, and dice build what they claim. `node .build/tests/soak/robustness.js reads=20000 makes=1000 arguments=200 kills=200 pairs=20 dice=1000 seed=1`
 */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { installationFolder } from '../../src/installation.js'
import { faultsOfWeek, weekByChance } from '../sets/games/dice-by-definition.js'
import { faultsOfReading, qualities, readings, tryToMake } from './any-input.js'
import { type Aim, killOnce, pairInContainers, prepareGround } from './kills.js'
import { argumentLists, plans } from './models/plan-texts.js'

const wanted = new Map(process.argv.slice(2).map(argument => argument.split('=', 2) as [string, string]))
const count = (name: string, usual: number): number => Number(wanted.get(name) ?? usual)
const seed = count('seed', 1)
const mostBytes = 1_000_000_000
let broken = 0
let largestBytes = 0

function say(text: string): void {
  process.stdout.write(`${text}\n`)
}

function tell(what: string, faults: readonly string[], input: unknown): void {
  broken += 1
  say(`BROKEN ${what}: ${faults.join('; ')}\n${JSON.stringify(input)}`)
}

/** Runs the model so often; what breaks the rules is told as small as it can be made, and the search goes on behind it. */
async function search<T>(
  what: string,
  model: fc.Arbitrary<T>,
  runs: number,
  faultsOf: (input: T) => Promise<readonly string[]>,
): Promise<void> {
  const began = process.cpuUsage()
  const start = performance.now()
  let done = 0
  let slowest = 0
  const timed = async (input: T): Promise<readonly string[]> => {
    const before = process.cpuUsage()
    const faults = await faultsOf(input)
    const { user, system } = process.cpuUsage(before)
    slowest = Math.max(slowest, (user + system) / 1e6)
    largestBytes = Math.max(largestBytes, process.memoryUsage().rss)
    return faults
  }
  for (let round = 0; done < runs && round < 20; round++) {
    const property = fc.asyncProperty(model, async input => {
      done += 1
      const faults = await timed(input)
      if (faults.length > 0) throw new Error(faults.join('; '))
    })
    const result = await fc.check(property, { numRuns: runs - done, seed: seed + round })
    if (result.failed) tell(what, [String(result.errorInstance)], result.counterexample)
  }
  const { user, system } = process.cpuUsage(began)
  say(
    `${what}: ${done} in ${Math.round((performance.now() - start) / 1000)} s, ${Math.round((user + system) / 1e6)} s of the processor; ` +
      `the slowest ${slowest.toFixed(1)} s; largest ${Math.round(largestBytes / 1e6)} MB`,
  )
}

await search('reads', readings, count('reads', 20_000), faultsOfReading)

const makes = count('makes', 1000)
for (const quality of qualities) {
  const share = Math.round(quality === 'valid' ? makes / 2 : makes / 4)
  let good = 0
  await search(`makes, ${quality}`, plans(quality), share, async folder => {
    const { faults, ok } = await tryToMake(folder)
    if (ok) good += 1
    return faults
  })
  say(`  of them ${good} made a set`)
}
if (largestBytes > mostBytes) tell('memory', [`${Math.round(largestBytes / 1e6)} MB`], null)

const weeks = count('dice', 1000)
let sets = 0
for (let week = 0; week < weeks; week++) {
  const found = faultsOfWeek(week)
  sets += found.sets
  if (found.faults.length > 0) tell('dice', found.faults, weekByChance(week))
}
say(`dice: ${sets} sets of three, for ${weeks} weeks by chance`)

const home = mkdtempSync(join(tmpdir(), 'oaktag-soak-'))
try {
  for (const [name, text] of Object.entries({
    'week.yaml': 'words: [reed, marsh, pond]\nprint: [word-cards]\n',
    'words.txt': 'reed\nmarsh\n',
    'words.csv': 'word,clue\nreed,tall grass\n',
    'room-7.yaml': 'words: [reed]\n',
  }))
    writeFileSync(join(home, name), text)
  await search('arguments', argumentLists, count('arguments', 200), async typed => {
    const { status, signal, stderr, stdout } = spawnSync(
      process.execPath,
      [join(installationFolder, '.build/src/start.cjs'), ...typed],
      { cwd: home, encoding: 'utf8', input: '', timeout: 60_000 },
    )
    return [
      ...(signal === null && [0, 1, 2].includes(status ?? -1) ? [] : [`it ended with ${status ?? signal}`]),
      ...(/fault of its own|^\s+at .*:\d+:\d+/m.test(stderr + stdout) ? [stderr] : []),
      ...(status !== 0 && stderr.trim() === '' ? ['it says nothing'] : []),
    ]
  })

  const ground = prepareGround(join(home, 'kills'))
  const kills = count('kills', 200)
  let hits = 0
  let slowest = 0
  const leftovers = new Map<string, number>()
  const wholeRunMs = 2500
  for (let index = 0; index < kills; index++) {
    const aims: readonly Aim[] = [
      { afterMs: ((index * 7919) % 1000) * (wholeRunMs / 1000) },
      { at: 'lock', seen: 1 + (Math.floor(index / 4) % 8) },
      { at: 'old', seen: 1 + (Math.floor(index / 4) % 2) },
      { at: index % 8 === 3 ? 'gone' : 'new', seen: 1 },
    ]
    const aim = aims[index % 4]!
    const { faults, hit, left, nextMs } = await killOnce(ground, aim, index)
    if (hit) hits += 1
    slowest = Math.max(slowest, nextMs)
    for (const role of left.map(name => name.split('.').at(-1)!))
      leftovers.set(role, (leftovers.get(role) ?? 0) + 1)
    if (faults.length > 0) tell('kill', faults, aim)
    if ((index + 1) % 20 === 0 || index + 1 === kills) {
      const found = [...leftovers].map(([role, times]) => `${role} ${times}`).join(', ')
      say(
        `kills: ${index + 1}, ${hits} before the run had ended; left for the next run: ${found}; it took at most ${slowest} ms`,
      )
    }
  }

  const pairs = count('pairs', 20)
  let tried = 0
  for (let index = 0; index < pairs; index++) {
    const faults = await pairInContainers(ground)
    if (faults !== undefined) tried += 1
    if (faults !== undefined && faults.length > 0) tell('pair', faults, index)
  }
  say(`pairs at once with process numbers of their own: ${tried}`)
} finally {
  rmSync(home, { recursive: true, force: true })
}
say(broken === 0 ? 'nothing is broken' : `${broken} are broken`)
process.exitCode = broken === 0 ? 0 : 1
