import { type Takes, usuallyNeeded } from './takes.js'

/** The first value that may be written, for an example. */
export function sampleOf(takes: Takes): string {
  switch (takes.kind) {
    case 'text':
      return 'Along the marsh'
    case 'number':
      return String(Math.min(takes.most, Math.max(takes.least, 3)))
    case 'yes or no':
      return 'no'
    case 'names':
      return takes.names.find(name => name !== 'none') ?? 'none'
    case 'form':
      return takes.samples[0]!
    case 'list':
      return takes.alone ? sampleOf(takes.of) : `[${sampleOf(takes.of)}]`
    case 'keys': {
      const { keys } = takes
      const needed = usuallyNeeded(takes)
      const shown = needed.length > 0 ? needed : Object.keys(keys()).slice(0, 1)
      return `{${shown.map(name => `${name}: ${keys()[name]!.text.example}`).join(', ')}}`
    }
    case 'any of':
      return sampleOf(takes.ways[0]!)
  }
}
