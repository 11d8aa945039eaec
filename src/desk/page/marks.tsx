/** Which patterns are marked, in which order, and how each looks; her words drawn with them. */
import { useState } from 'preact/hooks'
import { listOf, studiedWords } from '../plan-values.js'
import { useDesk } from './desk-state.js'
import { MarkRow } from './mark-row.js'
import { ByLetters, ByWord, Shown } from './more-marks.js'
import { Pick } from './pick-letters.js'
import { WordPicture } from './word-picture.js'

export function Marks() {
  const { plan } = useDesk()
  const marks = listOf(plan.data, 'marks')
  const words = studiedWords(plan)
  const [picked, setPicked] = useState<number>()
  const chosen = words.find(({ index }) => index === picked)
  return (
    <section aria-labelledby="marks-head">
      <h2 id="marks-head">Marks</h2>
      <p class="lead">
        What is marked, in the order of the key. A mark without a style takes the next black one that any
        copier keeps apart.
      </p>
      <ul class="preview" aria-label="Your words as they are marked">
        {words.map(({ word, index }) => (
          <li key={index}>
            <button
              type="button"
              class="pick-word"
              aria-expanded={picked === index}
              onClick={() => setPicked(picked === index ? undefined : index)}
            >
              <WordPicture word={word} />
            </button>
          </li>
        ))}
      </ul>
      {words.length === 0 ? (
        <p>
          There are no words yet. Type some under <a href="#words">Words</a>; then the patterns that they show
          can be marked here.
        </p>
      ) : chosen === undefined ? (
        <p>Press a word to pick letters in it and say what is to be marked.</p>
      ) : (
        <Pick
          key={chosen.index}
          entry={listOf(plan.data, 'words')[chosen.index] ?? ''}
          index={chosen.index}
          word={chosen.word}
        />
      )}
      {marks.length === 0 && words.length > 0 && (
        <p>Nothing is marked by your choice yet. Pick from what your words show:</p>
      )}
      <ol class="marks">
        {marks.map((entry, index) => (
          <MarkRow key={index} entry={entry} index={index} count={marks.length} />
        ))}
      </ol>
      {words.length > 0 && <Shown marks={marks} />}
      <ByLetters count={marks.length} />
      {words.length > 0 && <ByWord count={marks.length} />}
    </section>
  )
}
