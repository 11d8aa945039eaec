import type { Entry, Reader } from '../yaml/entry.js'
import { sampleOf } from './sample.js'
import type { Key, KeyText, Takes, ValueReader } from './takes.js'

export type { Key, ValueReader }

export function reading<T>(takes: Takes, read: Reader<T>): ValueReader<T> {
  return Object.assign((entry: Entry) => read(entry), { takes })
}

export function key<T>(
  does: string,
  read: ValueReader<T>,
  { example = sampleOf(read.takes), since = '0.1.0', ...more }: Partial<Omit<KeyText, 'does'>> = {},
): Key<T> {
  const text = { does, example, since, ...more }
  return Object.assign((entry: Entry) => read(entry), { takes: read.takes, text })
}
