/** The list of words, each with its study beside it. */
import { listOf } from '../plan-values.js'
import { EmptyStart, TakeOutAll } from './all-words.js'
import { ClassWays } from './class-ways.js'
import { useDesk } from './desk-state.js'
import { NewWord, Paste } from './new-words.js'
import { Told } from './told.js'
import { WordPicture } from './word-picture.js'
import { WordRow } from './word-row.js'

/** The server studies no more of them. */
const mostShown = 300

export function Words() {
  const { plan } = useDesk()
  const words = listOf(plan.data, 'words')
  return (
    <section aria-labelledby="words-head">
      <h2 id="words-head">Words</h2>
      <p class="lead">
        Type a word and press Enter. Beside it stands what it shows; open it to look closer or to say it is
        otherwise in your class.
      </p>
      {words.length === 0 && <EmptyStart />}
      <ol class="words">
        {words.slice(0, mostShown).map((entry, index) => (
          // An entry is its place in the list: a word that is being typed must stay the same field.
          <WordRow
            key={index}
            entry={entry}
            index={index}
            count={words.length}
            told={plan.words[index] ?? null}
          />
        ))}
        <NewWord />
      </ol>
      {words.length > mostShown && (
        <p>
          The list has {words.length} words; the first {mostShown} are shown here, all of them are in the
          file.
        </p>
      )}
      <Paste />
      {words.length > 1 && <TakeOutAll count={words.length} />}
      <ClassWays />
      {plan.otherWords.length > 0 && (
        <section aria-labelledby="other-words">
          <h3 id="other-words">Words that stand elsewhere</h3>
          <p>
            These come from a list in a file, where they are changed, or from a group, whose words stand under{' '}
            <a href="#things">Things to make</a>.
          </p>
          <ul class="others">
            {plan.otherWords.map(word => (
              <li key={word.text}>
                <WordPicture word={word} /> <Told word={word} />
              </li>
            ))}
          </ul>
        </section>
      )}
    </section>
  )
}
