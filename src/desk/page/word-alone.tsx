/** A word of a list that holds words alone: more can be said of it in the plan. */
import type { Change, Data, DeskWord, Path } from '../messages.js'
import { keyIn, listOf, ownWordsKey } from '../plan-values.js'
import { useDesk } from './desk-state.js'
import { Fold } from './fields.js'
import { Findings } from './found.js'
import { newWordId as newWordIdOf, useList } from './listed.js'

export function WordAlone({ index, word }: { readonly index: number; readonly word: DeskWord }) {
  const { plan, change } = useDesk()
  const { path, file = '', entries, idAt, inList, newWordId } = useList()
  const named = listNaming(plan.data, file)
  const bring = (list: Path, at: number) => {
    if (entries.length === 1) document.getElementById(newWordIdOf(list))?.focus()
    else document.getElementById(index === entries.length - 1 ? newWordId : idAt(index))?.focus()
    const changes: readonly Change[] = [
      { kind: 'insert', path: list, at: at + 1, values: [word.text] },
      // A file without a word is no list any more.
      ...(entries.length === 1
        ? [{ kind: 'remove', path: [...list, at] } as const]
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
      {named !== undefined && (
        <p>
          <button type="button" onClick={() => void bring(named.path, named.at)}>
            Bring {word.text} into the plan
          </button>
        </p>
      )}
    </Fold>
  )
}

/** The list of the plan that names a file: of the class, or of a group. */
function listNaming(
  data: Data | null,
  file: string,
): { readonly path: Path; readonly at: number } | undefined {
  const ofGroups = listOf(data, 'groups').map((group, index) => {
    const key = ownWordsKey(group)
    return { path: ['groups', index, keyIn(group, key)], at: listOf(group, key).indexOf(file) }
  })
  const ofClass = { path: [keyIn(data, 'words')], at: listOf(data, 'words').indexOf(file) }
  return [ofClass, ...ofGroups].find(({ at }) => at >= 0)
}
