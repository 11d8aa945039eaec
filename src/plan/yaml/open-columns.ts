/** Where the lines of a plan may begin: the columns of the lists and keys that are open, line by line. */
import { pairForm, valueText } from './structure-lines.js'

export interface Slip {
  /** From 0. */
  readonly column: number
  readonly message: string
  readonly advice: string
}

export interface PlacedLine {
  /** From 0: where the line was meant to begin. */
  readonly column: number
  readonly content: string
  readonly slip?: Slip
}

interface TypedLine {
  readonly index: number
  readonly column: number
  readonly content: string
}

type Kind = 'dash' | 'pair' | 'text'

interface Level {
  readonly column: number
  readonly kind: 'list' | 'keys'
  /** Its newest line, from 0. */
  index: number
  /** The first key of a list's newest item. */
  firstKey: string
}

/** The keys of a plan under which a list stands. */
const listKeys = ['words', 'marks', 'print', 'groups', 'review', 'taught', 'weeks']

/** Takes the lines in their order, and says of each where it was meant to begin. */
export class OpenColumns {
  private levels: Level[] = []
  /** Levels that the lines so far have left: what is out of column may belong to one of them. */
  private closed: Level[] = []
  /** The key that the line before left without a value; '' for a dash alone; undefined where it left nothing open. */
  private waiting: string | undefined
  /** How far lines from a column on are moved, because the one above them was. */
  private moved = { from: 0, by: 0 }

  /** @param first the column in which the keys of the plan itself stand */
  constructor(private readonly first: number) {}

  place(line: TypedLine): PlacedLine {
    const placed = this.placed(line)
    this.open(line.index, placed.column, placed.content)
    return placed
  }

  private placed(line: TypedLine): PlacedLine {
    const { column, content } = line
    const kind = kindOf(content)
    if (this.levels.length === 0 && kind === 'pair') return this.firstLine(line)
    if (column < this.moved.from) this.moved = { from: 0, by: 0 }
    const colon = this.missingColon(line, kind)
    if (colon !== undefined) return colon
    if (this.levels.length === 0) return { column, content }
    const missing = this.missingDash(line, kind)
    if (missing !== undefined) return missing
    if (this.fits(column, kind)) return { column, content }
    const together = column + this.moved.by
    if (this.moved.by !== 0 && this.fits(together, kind)) return { column: together, content }
    const level = this.nearest(column, kind)
    if (level === undefined) return { column, content }
    this.moved = { from: column, by: level.column - column }
    return { column: level.column, content, slip: outOfColumn(column, level, kind) }
  }

  private firstLine({ column, content }: TypedLine): PlacedLine {
    if (column === this.first) return { column, content }
    const slip: Slip = {
      column,
      message: `this key begins in column ${column + 1}, the others of the plan in column ${this.first + 1}`,
      advice: `Type ${spaces(column - this.first)} less before it.`,
    }
    return { column: this.first, content, slip }
  }

  /** Whether a line may begin here: below an open key, or in line with its neighbours. */
  private fits(column: number, kind: Kind): boolean {
    const above = this.levels.at(-1)!
    if (this.waiting !== undefined && column > above.column) return true
    if (kind === 'text') return column > above.column
    if (kind === 'dash' && this.waiting !== undefined && column === above.column) return true
    const wanted = kind === 'dash' ? 'list' : 'keys'
    return this.levels.some(level => level.column === column && level.kind === wanted)
  }

  /** `print` alone on its line, where the plan's own keys stand. */
  private missingColon({ column, content }: TypedLine, kind: Kind): PlacedLine | undefined {
    if (kind !== 'text' || column !== this.first || !listKeys.includes(foldedKey(content))) return undefined
    const isList = this.waiting !== undefined && listKeys.includes(this.waiting)
    if (isList) return undefined
    const slip: Slip = {
      column: column + content.length,
      message: `a colon is missing behind "${content}"`,
      advice: `Type it: ${content}:`,
    }
    return { column, content: `${content}:`, slip }
  }

  private missingDash({ column, content }: TypedLine, kind: Kind): PlacedLine | undefined {
    if (kind === 'dash') return undefined
    const above = this.levels.at(-1)!
    const hasKeys = this.waiting === 'review' && kind === 'pair'
    const isList = this.waiting !== undefined && listKeys.includes(this.waiting) && !hasKeys
    const begins = isList && column > above.column
    const list = this.levels.findLast(level => level.column === column && level.kind === 'list')
    const isKeyToo = this.levels.some(level => level.column === column && level.kind === 'keys')
    const continues = list !== undefined && !isKeyToo && (kind === 'text' || keyOf(content) === list.firstKey)
    if (!begins && !continues) return undefined
    const dashed = `- ${content}`
    // What follows in the same column belongs to this item, and moves with it.
    this.moved = { from: column, by: 2 }
    return {
      column,
      content: dashed,
      slip: {
        column,
        message: `a dash is missing before "${shortened(keyOf(content) ?? content)}"`,
        advice: `Type a dash and a space before it: ${shortened(dashed)}`,
      },
    }
  }

  /** The list or the keys that the line was meant to stand in: those in the nearest column, the innermost first. */
  private nearest(column: number, kind: Kind): Level | undefined {
    if (kind === 'text') return undefined
    const wanted = kind === 'dash' ? 'list' : 'keys'
    const candidates = [...this.levels, ...this.closed].filter(level => level.kind === wanted)
    const farthest = 3
    return candidates
      .filter(level => Math.abs(level.column - column) <= farthest)
      .toSorted((a, b) => Math.abs(a.column - column) - Math.abs(b.column - column) || b.index - a.index)[0]
  }

  private open(index: number, column: number, content: string): void {
    const kind = kindOf(content)
    const isContinued = kind === 'text' && this.levels.length > 0
    if (isContinued) return
    const left = this.levels.filter(level => level.column > column)
    this.levels = this.levels.filter(level => level.column <= column)
    if (left.length > 0) this.closed = left
    if (kind !== 'dash') {
      // A list may stand in the column of its key; the next key ends it.
      this.levels = this.levels.filter(level => level.column < column || level.kind === 'keys')
      this.enter({ column, kind: 'keys', index, firstKey: '' })
    } else {
      const [dashes = ''] = /^(?:-\s+)+|^-$/.exec(content) ?? []
      const first = keyOf(content.slice(dashes.length))
      this.enter({ column, kind: 'list', index, firstKey: first ?? '' })
      if (first !== undefined)
        this.enter({ column: column + dashes.length, kind: 'keys', index, firstKey: '' })
    }
    const value = valueText(content).replace(/(?:^|\s)#.*$/, '')
    const isOpen = value === '' || content === '-'
    this.waiting = isOpen ? foldedKey(keyOf(content.replace(/^(?:-\s+)+/, '')) ?? '') : undefined
  }

  private enter(level: Level): void {
    const same = this.levels.findIndex(each => each.column === level.column && each.kind === level.kind)
    if (same < 0) this.levels.push(level)
    else this.levels[same] = level
  }
}

function kindOf(content: string): Kind {
  if (/^-(?:\s|$)/.test(content)) return 'dash'
  return pairForm.test(content) ? 'pair' : 'text'
}

function keyOf(content: string): string | undefined {
  return pairForm.exec(content)?.groups?.key
}

function foldedKey(key: string): string {
  return key.toLowerCase().trim()
}

function outOfColumn(column: number, level: Level, kind: Kind): Slip {
  const what = kind === 'dash' ? 'this dash' : 'this key'
  return {
    column,
    message: `${what} begins in column ${column + 1}, those beside it in column ${level.column + 1}`,
    advice: `Type ${spaces(Math.abs(level.column - column))} ${column > level.column ? 'less' : 'more'} before it, so that it stands as on line ${level.index + 1}.`,
  }
}

function spaces(count: number): string {
  return count === 1 ? 'one space' : `${count} spaces`
}

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 39)}…` : text
}
