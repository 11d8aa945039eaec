/**
 * All tables in one file, of which nothing is read but the list of names until a table is asked for.
 *
 * The mark, then a line that tells how many bytes the list of names has, the list (a line a table: its name, a tab,
 * its length in bytes), then the tables: a row a line, fields parted by tabs, heads and empty lines left out.
 */
export type Rows = readonly (readonly string[])[]

const mark = 'OAKTAG TABLES 1\n'

/** @param tables rows by name: `syllables/exceptions` */
export function packTables(tables: ReadonlyMap<string, Rows>): Buffer {
  const bodies = [...tables].map(([name, rows]) => ({
    name,
    body: Buffer.from(rows.map(fields => fields.join('\t')).join('\n')),
  }))
  const names = Buffer.from(bodies.map(({ name, body }) => `${name}\t${body.length}\n`).join(''))
  return Buffer.concat([Buffer.from(`${mark}${names.length}\n`), names, ...bodies.map(({ body }) => body)])
}

export interface PackedTables {
  /** @throws Error where no table has this name */
  readonly rowsOf: (name: string) => Rows
  /** The first row that begins with this field and has others, found where it lies: for a few words of a long table. */
  readonly rowBeginning: (name: string, first: string) => readonly string[] | undefined
  /** The first field of each row, for a table that is a list. */
  readonly wordsOf: (name: string) => readonly string[]
  readonly names: readonly string[]
}

/** @throws Error when the bytes are no tables of this version */
export function tablesIn(bytes: Buffer): PackedTables {
  if (bytes.toString('latin1', 0, mark.length) !== mark) {
    throw new Error('The tables were packed by another version. Run "npm run build" to pack them anew.')
  }
  const namesStart = bytes.indexOf('\n', mark.length) + 1
  let start = namesStart + Number(bytes.toString('latin1', mark.length, namesStart - 1))
  const places = new Map<string, readonly [start: number, end: number]>()
  for (const line of bytes.toString('utf8', namesStart, start).split('\n').slice(0, -1)) {
    const [name = '', length] = line.split('\t')
    places.set(name, [start, start + Number(length)])
    start += Number(length)
  }
  const bodyOf = (name: string): Buffer => {
    const place = places.get(name)
    if (place === undefined) throw new Error(`There is no table "${name}". Run "npm run build" to pack it.`)
    return bytes.subarray(place[0], place[1])
  }
  const linesOf = (name: string): readonly string[] => {
    const text = bodyOf(name).toString('utf8')
    return text === '' ? [] : text.split('\n')
  }
  return {
    names: [...places.keys()],
    rowsOf: name => linesOf(name).map(line => line.split('\t')),
    rowBeginning: (name, first) => {
      const body = bodyOf(name)
      const beginning = Buffer.from(`${first}\t`)
      const isAtOnce = body.subarray(0, beginning.length).equals(beginning)
      const start = isAtOnce ? 0 : body.indexOf(`\n${first}\t`) + 1
      if (start === 0 && !isAtOnce) return undefined
      const end = body.indexOf('\n', start)
      return body.toString('utf8', start, end < 0 ? body.length : end).split('\t')
    },
    wordsOf: name =>
      linesOf(name).map(line => (line.includes('\t') ? line.slice(0, line.indexOf('\t')) : line)),
  }
}
