/** The lists of words, each word with its study beside it. */
import type { Data, DeskFile } from '../messages.js'
import { keyIn, listOf, ownWordsKey, textOf, valueAt } from '../plan-values.js'
import { EmptyStart, TakeOutAll } from './all-words.js'
import { ClassWays } from './class-ways.js'
import { idOf, useDesk } from './desk-state.js'
import { ListOfWords } from './list-of-words.js'
import { Told } from './told.js'
import { WordPicture } from './word-picture.js'

export function Words() {
  const { plan } = useDesk()
  const words = listOf(plan.data, 'words')
  const groups = listOf(plan.data, 'groups')
  const hasOthers = groups.some(group => listOf(group, ownWordsKey(group)).length > 0)
  return (
    <section aria-labelledby="words-head">
      <h2 id="words-head">Words</h2>
      <p class="lead">
        Type a word and press Enter. Beside it stands what it shows; open it to look closer or to say it is
        otherwise in your class.
      </p>
      {words.length === 0 && !hasOthers && <EmptyStart />}
      <ListOfWords
        place={{ path: [keyIn(plan.data, 'words')], holds: 'keys', entries: words }}
        words={plan.words}
      />
      {words.length > 1 && <TakeOutAll count={words.length} />}
      <ClassWays />
      {plan.files.map(file => (
        <FileWords key={file.name} file={file} />
      ))}
      {groups.map((group, index) => (
        <GroupWords key={index} group={group} index={index} />
      ))}
      {plan.oldWords.length > 0 && <OldWords />}
    </section>
  )
}

function FileWords({ file }: { readonly file: DeskFile }) {
  const { name, entries, words, isTable, why } = file
  const id = idOf(['file', name])
  return (
    <section aria-labelledby={id}>
      <h3 id={id} tabIndex={-1}>
        Words of {name}
      </h3>
      {why === undefined ? (
        <>
          <p class="lead">
            What you change here is written into {name}
            {isTable ? ', in its rows and columns.' : ', which holds words alone, one a line.'}
          </p>
          <ListOfWords
            place={{ path: ['words'], file: name, holds: isTable ? 'cells' : 'word', entries }}
            words={words}
            whose={name}
          />
        </>
      ) : (
        <p class="wrong">{why}</p>
      )}
    </section>
  )
}

/** A group without words of its own has those of the class. */
function GroupWords({ group, index }: { readonly group: Data; readonly index: number }) {
  const { plan } = useDesk()
  const key = ownWordsKey(group)
  if (valueAt(group, key) === undefined) return null
  const name = textOf(group, 'name')
  const id = `words-of-group-${index}`
  return (
    <section aria-labelledby={id}>
      <h3 id={id}>Words of {name}</h3>
      {key === 'more words' && <p class="lead">These come beside the words of the class.</p>}
      <ListOfWords
        place={{ path: ['groups', index, keyIn(group, key)], holds: 'keys', entries: listOf(group, key) }}
        words={plan.groups[index]?.words ?? []}
        whose={name}
      />
    </section>
  )
}

function OldWords() {
  const { plan } = useDesk()
  return (
    <section aria-labelledby="old-words">
      <h3 id="old-words">Words that come back</h3>
      <p class="lead">
        From earlier weeks. Which weeks, and how many words of them, is said under{' '}
        <a href="#things">Things to make</a>.
      </p>
      <ul class="others">
        {plan.oldWords.map((word, at) => (
          <li key={at}>
            <WordPicture word={word} /> <Told word={word} />
          </li>
        ))}
      </ul>
    </section>
  )
}
