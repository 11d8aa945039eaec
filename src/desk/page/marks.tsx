/** Which patterns are marked, in which order, and how each looks; her words drawn with them. */
import { useEffect, useState } from 'preact/hooks'
import type { Change, Data, DeskWord, Path, ToldEntry } from '../messages.js'
import { folded, keyIn, listOf, ownWordsKey, studiedWords, textOf, valueAt } from '../plan-values.js'
import { useDesk } from './desk-state.js'
import { Listed, type ListPlace } from './listed.js'
import { MarkRow } from './mark-row.js'
import { MarkedList, type MarksPlace } from './marked-list.js'
import { ByLetters, ByWord, Shown } from './more-marks.js'
import { Pick } from './pick-letters.js'
import { WordPicture } from './word-picture.js'

export function Marks() {
  const { plan, led } = useDesk()
  const groups = listOf(plan.data, 'groups')
  const [who, setWho] = useState(groupIn(led))
  useEffect(() => {
    if (led.length > 0) setWho(groupIn(led))
  }, [led])
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

/** Whose marks a path leads to; the class where it is no group. */
function groupIn([key = '', index, own]: Path): number {
  const isOfGroup = folded(String(key)) === 'groups' && own !== undefined && folded(String(own)) === 'marks'
  return isOfGroup && typeof index === 'number' ? index : -1
}

function nameOf(group: Data): string {
  return typeof group === 'string' ? group : textOf(group, 'name')
}

/** Lists of words, each with what is told of its entries. */
interface ShownList {
  readonly place: ListPlace
  readonly told: readonly ToldEntry[]
}

/** A list of the plan, and those in files that it names. */
function useLists(path: Path, entries: readonly Data[], told: readonly ToldEntry[]): readonly ShownList[] {
  const { files } = useDesk().plan
  const named = files.filter(({ name }) => entries.includes(name))
  return [
    { place: { path, holds: 'keys', entries }, told },
    ...named.map(({ name, entries: own, words, isTable }): ShownList => {
      const place = { path: ['words'], file: name, holds: isTable ? 'cells' : 'word', entries: own } as const
      return { place, told: words }
    }),
  ]
}

function OfClass() {
  const { plan } = useDesk()
  const lists = useLists(['words'], listOf(plan.data, 'words'), plan.words)
  return (
    <MarksOf
      marks={{ path: ['marks'], entries: listOf(plan.data, 'marks'), looks: plan.looks }}
      lists={lists}
    />
  )
}

function OfGroup({ group, index }: { readonly group: Data; readonly index: number }) {
  const { plan, change } = useDesk()
  const name = nameOf(group)
  const told = plan.groups[index]
  const key = ownWordsKey(group)
  const path = ['groups', index, keyIn(group, 'marks')]
  const own = useLists(['groups', index, keyIn(group, key)], listOf(group, key), told?.words ?? [])
  const ofClass = useLists(['words'], listOf(plan.data, 'words'), plan.words).map(list => ({
    ...list,
    told: list.told.map(word => markedFor(word, told?.ofClass ?? [])),
  }))
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
  if (valueAt(group, 'marks') === undefined)
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
        lists={told !== undefined && told.ofClass.length > 0 ? ofClass : own}
      />
    </>
  )
}

/** A word of the class as it is marked for a group. */
function markedFor(word: ToldEntry, marked: readonly DeskWord[]): ToldEntry {
  return word !== null && 'text' in word ? (marked.find(({ text }) => text === word.text) ?? word) : word
}

interface MarksOfProps {
  readonly marks: MarksPlace
  readonly lists: readonly ShownList[]
}

function MarksOf({ marks, lists }: MarksOfProps) {
  const words = lists.flatMap(({ place, told }, at) =>
    studiedWords(told).map(({ word, index }) => ({ word, index, place, id: `${at} ${index}` })),
  )
  const [picked, setPicked] = useState<string>()
  const chosen = words.find(({ id }) => id === picked)
  return (
    <MarkedList.Provider value={marks}>
      <ul class="preview" aria-label="Your words as they are marked">
        {words.map(({ word, id }) => (
          <li key={id}>
            <button
              type="button"
              class="pick-word"
              aria-expanded={picked === id}
              onClick={() => setPicked(picked === id ? undefined : id)}
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
        <Listed.Provider value={chosen.place}>
          <Pick
            key={chosen.id}
            entry={chosen.place.entries[chosen.index] ?? ''}
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
