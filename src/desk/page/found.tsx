/** What a word shows, each finding with its reason, and what of it is hers. */
import type { ComponentChildren } from 'preact'
import { findingsUnder, withFinding, withoutFinding } from '../findings.js'
import type { DeskWord, Shown } from '../messages.js'
import { useList } from './listed.js'
import { usePatternTitle } from './pattern-title.js'
import type { PickProps } from './pick-letters.js'

export function Found({ entry, index, word }: PickProps) {
  const { path, holds, idAt, change } = useList()
  const title = usePatternTitle()
  const at = [...path, index]
  const not = findingsUnder(entry, 'not')
  const refuse = ({ pattern, letters }: Shown) =>
    change(`${title(pattern)} of ${word.text}`, withFinding(entry, at, 'not', `${pattern} ${letters}`))
  const takeBack = (key: 'not' | 'also', finding: string) =>
    change(`${title(finding)} of ${word.text}`, withoutFinding(entry, at, key, finding))
  // The cells of a spreadsheet hold no list.
  if (holds === 'cells') return <Findings word={word} />
  return (
    <Findings
      word={word}
      id={idAt(index, 'not')}
      tool={each =>
        each.yours ? (
          <button type="button" onClick={() => void takeBack('also', `${each.pattern} ${each.letters}`)}>
            Take back<span class="only-heard"> {title(each.pattern)}</span>
          </button>
        ) : (
          <button type="button" onClick={() => void refuse(each)}>
            Not in my class
            <span class="only-heard">
              : {title(each.pattern)} in {word.text}
            </span>
          </button>
        )
      }
    >
      {not.map(each => (
        <li key={`not ${each}`} class="refused">
          <s>{title(each)}</s> <span class="yours">yours: not found</span>
          <button type="button" onClick={() => void takeBack('not', each)}>
            Find it again<span class="only-heard"> {title(each)}</span>
          </button>
        </li>
      ))}
    </Findings>
  )
}

export interface FindingsProps {
  readonly word: DeskWord
  readonly id?: string
  /** What can be done with a finding. */
  readonly tool?: (finding: Shown) => ComponentChildren
  readonly children?: ComponentChildren
}

export function Findings({ word, id, tool, children }: FindingsProps) {
  const title = usePatternTitle()
  return (
    <div class="found">
      <h3 id={id} tabIndex={-1}>
        What it shows
      </h3>
      <ul>
        {word.patterns.map(each => (
          <li key={`${each.pattern} ${each.start} ${each.letters}`}>
            <b>{title(each.pattern)}</b> {each.letters} (
            {each.place === 'whole' ? 'the whole word' : each.place})
            {each.yours && <span class="yours"> yours</span>}
            <small>{each.why}</small>
            {tool?.(each)}
          </li>
        ))}
        {children}
      </ul>
    </div>
  )
}
