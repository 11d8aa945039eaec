/** Which patterns are marked, in which order, and how each looks; her words drawn with them. */
import { useState } from 'preact/hooks'
import type { Change, Data, ToldEntry } from '../messages.js'
import { keyIn, listOf, ownWordsKey, studiedWords, textOf, valueAt } from '../plan-values.js'
import { useDesk } from './desk-state.js'
import { Listed, type ListPlace } from './listed.js'
import { MarkRow } from './mark-row.js'
import { MarkedList, type MarksPlace } from './marked-list.js'
import { ByLetters, ByWord, Shown } from './more-marks.js'
import { Pick } from './pick-letters.js'
import { WordPicture } from './word-picture.js'

export function Marks() {
  const { plan } = useDesk()
  const groups = listOf(plan.data, 'groups')
  const [who, setWho] = useState(-1)
  const group = groups[who]
  return (
    <section aria-labelledby="marks-head">
      <h2 id="marks-head" tabIndex={-1}>
        Marks
      </h2>
      <p class="lead">
        What is marked, in the order of the key. A mark that you give no line or outline takes the next black
        one that any copier keeps apart.
      </p>
      {groups.length > 0 && (
        <fieldset class="whose" aria-label="Whose words are marked">
          {['The class', ...groups.map(each => nameOf(each))].map((name, at) => (
            <button key={at} type="button" aria-pressed={at - 1 === who} onClick={() => setWho(at - 1)}>
              {name}
            </button>
          ))}
        </fieldset>
      )}
      {group === undefined ? <OfClass /> : <OfGroup key={who} group={group} index={who} />}
    </section>
  )
}

function nameOf(group: Data): string {
  return typeof group === 'string' ? group : textOf(group, 'name')
}

function OfClass() {
  const { plan } = useDesk()
  return (
    <MarksOf
      marks={{ path: ['marks'], entries: listOf(plan.data, 'marks'), looks: plan.looks }}
      list={{ path: ['words'], holds: 'keys', entries: listOf(plan.data, 'words') }}
      told={plan.words}
    />
  )
}

function OfGroup({ group, index }: { readonly group: Data; readonly index: number }) {
  const { plan, change } = useDesk()
  const name = nameOf(group)
  const told = plan.groups[index]
  const path = ['groups', index, keyIn(group, 'marks')]
  const own = valueAt(group, 'marks')
  const give = (marks: readonly Data[]) => {
    document.getElementById('marks-head')?.focus()
    const changes: readonly Change[] = [{ kind: 'set', path, value: marks, textAs: 'name' }]
    return change(`the marks of ${name}`, changes)
  }
  const takeBack = () => {
    document.getElementById('marks-head')?.focus()
    return change(`the marks of ${name}`, [{ kind: 'remove', path }])
  }
  const marksOfClass = listOf(plan.data, 'marks')
  if (own === undefined)
    return (
      <div class="begin">
        <p>Words for {name} are marked as those of the class.</p>
        <button type="button" disabled={marksOfClass.length === 0} onClick={() => void give(marksOfClass)}>
          Mark them otherwise
        </button>{' '}
        <button type="button" onClick={() => void give([])}>
          Mark nothing for {name}
        </button>
      </div>
    )
  const key = ownWordsKey(group)
  const hasWords = told !== undefined && told.ofClass.length === 0
  return (
    <>
      <p>
        These marks are for {name} alone.{' '}
        <button type="button" onClick={() => void takeBack()}>
          Mark them as those of the class
        </button>
      </p>
      <MarksOf
        marks={{ path, entries: listOf(group, 'marks'), looks: told?.looks ?? [] }}
        list={
          hasWords
            ? { path: ['groups', index, keyIn(group, key)], holds: 'keys', entries: listOf(group, key) }
            : { path: ['words'], holds: 'keys', entries: listOf(plan.data, 'words') }
        }
        told={hasWords ? told.words : (told?.ofClass ?? [])}
      />
    </>
  )
}

interface MarksOfProps {
  readonly marks: MarksPlace
  readonly list: ListPlace
  readonly told: readonly ToldEntry[]
}

function MarksOf({ marks, list, told }: MarksOfProps) {
  const words = studiedWords(told)
  const [picked, setPicked] = useState<number>()
  const chosen = words.find(({ index }) => index === picked)
  return (
    <MarkedList.Provider value={marks}>
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
        <Listed.Provider value={list}>
          <Pick
            key={chosen.index}
            entry={list.entries[chosen.index] ?? ''}
            index={chosen.index}
            word={chosen.word}
          />
        </Listed.Provider>
      )}
      {marks.entries.length === 0 && words.length > 0 && (
        <p>Nothing is marked by your choice yet. Pick from what your words show:</p>
      )}
      <ol class="marks">
        {marks.entries.map((entry, index) => (
          <MarkRow key={index} entry={entry} index={index} />
        ))}
      </ol>
      {words.length > 0 && <Shown words={words.map(each => each.word)} />}
      <ByLetters />
      {words.length > 0 && <ByWord words={words.map(each => each.word)} />}
    </MarkedList.Provider>
  )
}
