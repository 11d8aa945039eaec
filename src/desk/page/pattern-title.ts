import { useDesk } from './desk-state.js'

/** What patterns are called in a sentence, alone or with their letters behind them: `silent-letters kn`. */
export function usePatternTitle(): (name: string) => string {
  const { patterns } = useDesk().names
  return name => {
    const [own = '', ...rest] = name.split(' ')
    const title = patterns.find(each => each.name === own.toLowerCase())?.title ?? own
    return [title, ...rest].join(' ')
  }
}
