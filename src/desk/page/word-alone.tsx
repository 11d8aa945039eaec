/** A word of a list that holds words alone: more can be said of it in the plan. */
import type { Change, DeskWord } from '../messages.js'
import { listOf } from '../plan-values.js'
import { useDesk } from './desk-state.js'
import { Fold } from './fields.js'
import { Findings } from './found.js'
import { useList } from './listed.js'

export function WordAlone({ index, word }: { readonly index: number; readonly word: DeskWord }) {
  const { plan, change } = useDesk()
  const { path, file = '', entries, idAt, inList, newWordId } = useList()
  const words = listOf(plan.data, 'words')
  const at = words.indexOf(file)
  const bring = () => {
    if (entries.length === 1) document.getElementById('new-word')?.focus()
    else document.getElementById(index === entries.length - 1 ? newWordId : idAt(index))?.focus()
    const changes: readonly Change[] = [
      { kind: 'insert', path: ['words'], at: at + 1, values: [word.text] },
      // A file without a word is no list any more.
      ...(entries.length === 1
        ? [{ kind: 'remove', path: ['words', at] } as const]
        : inList([{ kind: 'remove', path: [...path, index] }])),
    ]
    return change(`${word.text} brought into the plan`, changes)
  }
  return (
    <Fold
      summary={
        <>
          Look closer<span class="only-heard"> at {word.text}</span>
        </>
      }
    >
      <Findings word={word} />
      {word.said.length > 0 && <p>Said {word.said.join(' or ')}.</p>}
      <p>
        {file} holds words alone, one a line. To give this one a clue, or to divide it otherwise, bring it
        into the plan.
      </p>
      {at >= 0 && (
        <p>
          <button type="button" onClick={() => void bring()}>
            Bring {word.text} into the plan
          </button>
        </p>
      )}
    </Fold>
  )
}
