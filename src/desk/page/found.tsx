/** What a word shows, each finding with its reason, and what of it is hers. */
import { findingsUnder, withFinding, withoutFinding } from '../findings.js'
import type { Shown } from '../messages.js'
import { idOf, useDesk } from './desk-state.js'
import type { PickProps } from './pick-letters.js'

export function Found({ entry, index, word }: PickProps) {
  const { change } = useDesk()
  const not = findingsUnder(entry, 'not')
  const refuse = ({ pattern, letters }: Shown) =>
    change(`${pattern} of ${word.text}`, withFinding(entry, index, 'not', `${pattern} ${letters}`))
  const takeBack = (key: 'not' | 'also', finding: string) =>
    change(`${finding} of ${word.text}`, withoutFinding(entry, index, key, finding))
  return (
    <div class="found">
      <h3 id={idOf(['words', index, 'not'])} tabIndex={-1}>
        What it shows
      </h3>
      <ul>
        {word.patterns.map(each => (
          <li key={`${each.pattern} ${each.start} ${each.letters}`}>
            <b>{each.pattern}</b> {each.letters} ({each.place})
            {each.yours && <span class="yours"> yours</span>}
            <small>{each.why}</small>
            {each.yours ? (
              <button type="button" onClick={() => void takeBack('also', `${each.pattern} ${each.letters}`)}>
                Take back<span class="only-heard"> {each.pattern}</span>
              </button>
            ) : (
              <button type="button" onClick={() => void refuse(each)}>
                Not in my class
                <span class="only-heard">
                  : {each.pattern} in {word.text}
                </span>
              </button>
            )}
          </li>
        ))}
        {not.map(each => (
          <li key={`not ${each}`} class="refused">
            <s>{each}</s> <span class="yours">yours: not found</span>
            <button type="button" onClick={() => void takeBack('not', each)}>
              Find it again<span class="only-heard"> {each}</span>
            </button>
          </li>
        ))}
      </ul>
    </div>
  )
}
