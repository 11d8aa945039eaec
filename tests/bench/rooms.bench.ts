/**
 * Where the time of the reference job goes, room by room of the sources, so that the rows add up to the whole: V8 looks a few thousand
 * times where the process is, and each look falls into one row. Run on its own, or by `npm run bench`.
 *
 * The modules are run as they are compiled, not bundled, for a bundle tells of no room; so loading them takes longer than the
 * command does. What runs on threads of its own (V8's compilers, the disk's) is waited for, not counted.
 */
import { spawnSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { buildFolder } from '../../src/installation.js'
import { boardsPlan } from './reference-job.js'

export interface RoomRow {
  readonly room: string
  readonly milliseconds: number
  readonly percent: string
}

interface Profile {
  readonly nodes: readonly {
    readonly id: number
    readonly callFrame: { readonly functionName: string; readonly url: string }
    readonly children?: readonly number[]
  }[]
  readonly samples: readonly number[]
  readonly timeDeltas: readonly number[]
}

/** By the address of the module; the first that fits. */
const rooms: readonly (readonly [RegExp, string])[] = [
  [/node_modules\/(satori|yoga)/, 'boxes laid out (satori)'],
  [/node_modules\/harfbuzzjs|wasm:/, 'letters shaped (HarfBuzz), boxes counted (Yoga)'],
  [/node_modules\/@resvg|\/files\/raster\//, 'shapes into pixels (resvg)'],
  [/\/files\/png\//, 'PNG'],
  [/\/files\/proof\//, 'proof page'],
  [/\/files\/page\//, 'SVG, and outlines read'],
  [/\/files\//, 'files and manifest'],
  [/\/src\/plan\//, 'plan read'],
  [/\/src\/words\//, 'words studied'],
  [/\/src\/sets\//, 'boards dealt, calls found'],
  [/\/src\/pieces\/|\/fonts\//, 'words fitted and drawn'],
  [/\/src\/sheets\/|\/layouts\//, 'layouts and sheets'],
  [/^node:internal\/(modules|bootstrap|main|process|vm)/, 'Node starts, modules loaded'],
  [/node_modules/, 'other packages'],
]

export function benchRooms(): readonly RoomRow[] {
  const folder = mkdtempSync(join(tmpdir(), 'oaktag-bench-'))
  try {
    writeFileSync(join(folder, 'boards.yaml'), boardsPlan(30))
    const looks = ['--cpu-prof', '--cpu-prof-name=looks.json', '--cpu-prof-interval=500']
    const args = [...looks, join(buildFolder, 'src/cli.js'), 'make', 'boards.yaml', '--quiet']
    const run = spawnSync(process.execPath, args, { cwd: folder, encoding: 'utf8' })
    if (run.status !== 0) throw new Error(run.stderr)
    return rowsOf(JSON.parse(readFileSync(join(folder, 'looks.json'), 'utf8')))
  } finally {
    rmSync(folder, { recursive: true, force: true, maxRetries: 5 })
  }
}

function rowsOf({ nodes, samples, timeDeltas }: Profile): readonly RoomRow[] {
  const nodeOf = new Map(nodes.map(node => [node.id, node]))
  const callerOf = new Map(
    nodes.flatMap(({ id, children = [] }) => children.map(child => [child, id] as const)),
  )
  /** What V8 and Node do for somebody is done by whoever called them. */
  const roomOf = (id: number | undefined): string => {
    const frame = id === undefined ? undefined : nodeOf.get(id)?.callFrame
    if (frame === undefined) return 'Node itself: disk, promises'
    if (frame.functionName === '(garbage collector)') return 'garbage collected'
    if (frame.functionName === '(idle)') return 'waited'
    if (frame.functionName === '(program)') return 'V8 itself'
    const room = rooms.find(([address]) => address.test(frame.url))?.[1]
    if (room !== undefined) return room
    return /^(node:|$)/.test(frame.url) ? roomOf(callerOf.get(id!)) : 'the flow from step to step'
  }
  const taken = new Map<string, number>()
  for (const [index, id] of samples.entries()) {
    const room = roomOf(id)
    taken.set(room, (taken.get(room) ?? 0) + timeDeltas[index]! / 1000)
  }
  const whole = [...taken.values()].reduce((sum, ms) => sum + ms, 0)
  const row = (room: string, ms: number): RoomRow => ({
    room,
    milliseconds: Math.round(ms),
    percent: ((100 * ms) / whole).toFixed(1),
  })
  const sorted = [...taken].sort((a, b) => b[1] - a[1])
  return [...sorted.map(([room, ms]) => row(room, ms)), row('all', whole)]
}

if (process.argv[1] === import.meta.filename) console.table(benchRooms())
