/** What `find` prints: a line a word, or what to do where there is none. */
import { piecesInWords, type ShownWord, type WayOut } from '../door/find.js'
import { wrapLine } from './wrap-line.js'

/** Words in a column, their sounds and a remark beside them. */
export function describeFound(shown: readonly ShownWord[]): string {
  const pieces = shown.map(({ word }) => piecesInWords(word))
  const wordWidth = Math.max(...shown.map(({ word }) => word.text.length))
  const piecesWidth = Math.max(...pieces.map(text => text.length))
  return shown
    .flatMap(({ word, remark }, index) => {
      const sounds = remark === '' ? pieces[index]! : pieces[index]!.padEnd(piecesWidth)
      return wrapLine(`${word.text.padEnd(wordWidth)}  ${sounds}${remark === '' ? '' : `  ${remark}`}`, 80)
    })
    .join('\n')
}

/** @param files as typed behind --taught and --for */
export function describeNothing(
  ways: readonly WayOut[],
  files: { readonly taught?: string | undefined; readonly for?: string | undefined },
): string {
  if (ways.length === 0) return 'No familiar word fits that.'
  const named = (option: string) => {
    if (option === '--taught') return `--taught ${files.taught ?? '(the class file)'}`
    return option === '--for' ? `--for ${files.for}` : option
  }
  const lines = ways.map(({ does, options, words }) => {
    const typed = options.map(named).join(' and ')
    const change = does === 'leave out' ? `without ${typed}` : `with ${typed} instead`
    return { change, words: words === 1 ? '1 word fits' : `${words} words fit` }
  })
  const width = Math.max(...lines.map(({ change }) => change.length))
  return [
    'No familiar word fits all of that, but:',
    ...lines.map(({ change, words }) => `  ${change.padEnd(width)}  ${words}`),
  ].join('\n')
}
