/** A mark of the plan: its place in the key, and how it looks. */
import type { Data, Path } from '../messages.js'
import { folded, keyIn, textChange, textOf } from '../plan-values.js'
import { shownOfMark } from '../shown-keys.js'
import { idOf, useDesk } from './desk-state.js'
import { ChoiceField, Fold, TextField } from './fields.js'
import { LeftInFile } from './left-in-file.js'
import { Colours, Pictured } from './mark-styles.js'
import { markTitle, targetIn, wholeWords } from './mark-title.js'
import { useMarks } from './marked-list.js'
import { usePatternTitle } from './pattern-title.js'
import { ProblemsOf } from './problems.js'
import { RowTools } from './row-tools.js'

/** Whether its two letters may stand apart, as in cake. */
function joins(entry: Data): boolean {
  return textOf(entry, 'letters').includes('_') || folded(textOf(entry, 'pattern')) === 'silent-e'
}

interface MarkRowProps {
  readonly entry: Data
  readonly index: number
}

export function MarkRow({ entry, index }: MarkRowProps) {
  const { names, change } = useDesk()
  const marks = useMarks()
  const plain = usePatternTitle()
  const title = markTitle(entry, plain)
  const look = marks.looks[index] ?? null
  const idAt = (...steps: Path) => idOf([...marks.path, index, ...steps])
  const path = (...spellings: readonly string[]) => [...marks.path, index, keyIn(entry, ...spellings)]
  const set = (spellings: readonly string[], says: string) => (value: string) =>
    change(`${says} of ${title}`, textChange(entry, path(...spellings), value))
  const { key } = targetIn(entry)
  const line = textOf(entry, 'line')
  const outline = textOf(entry, 'outline')
  const color = textOf(entry, 'color', 'colour')
  return (
    <li class="mark-row">
      <div class="mark-head">
        <h3 id={idAt()} tabIndex={-1}>
          {look !== null && <img class="look" src={look} alt="" />} {title}
        </h3>
        <RowTools
          list={marks.path}
          index={index}
          count={marks.entries.length}
          title={title}
          after="shown-head"
        />
      </div>
      <ProblemsOf path={[...marks.path, index]} />
      <Fold
        keep={idAt('looks')}
        summary={
          <>
            How it looks<span class="only-heard"> {title}</span>
          </>
        }
      >
        <Pictured
          legend="Line"
          kind="line"
          choices={names.lines}
          value={line}
          id={idAt('line')}
          pick={set(['line'], 'the line')}
        />
        <Pictured
          legend="Outline"
          kind="outline"
          choices={names.outlines}
          value={outline}
          id={idAt('outline')}
          pick={set(['outline'], 'the outline')}
        />
        <Colours value={color} id={idAt('color')} pick={set(['color', 'colour'], 'the colour')} />
        <div class="fields">
          <TextField
            label="Words for the key"
            value={textOf(entry, 'label')}
            placeholder={title}
            id={idAt('label')}
            commit={set(['label'], 'the wording')}
          />
          <TextField
            label="Small letters beside it"
            value={textOf(entry, 'tag')}
            id={idAt('tag')}
            commit={set(['tag'], 'the small letters')}
          />
          {!wholeWords.includes(key) && (
            <ChoiceField
              label="Where in the word"
              value={textOf(entry, 'place')}
              none="anywhere"
              choices={['beginning', 'middle', 'end']}
              id={idAt('place')}
              commit={set(['place'], 'the place')}
            />
          )}
          {!wholeWords.includes(key) && line !== '' && (
            <ChoiceField
              label="Under g, p and y the line"
              value={textOf(entry, 'descenders')}
              none="as usual: stays clear below them"
              choices={[
                { value: 'clear', label: 'stays clear below them' },
                { value: 'break', label: 'breaks for them' },
              ]}
              id={idAt('descenders')}
              commit={set(['descenders'], 'the line under g, p and y')}
            />
          )}
          {joins(entry) && (
            <ChoiceField
              label="The two letters are joined by"
              value={textOf(entry, 'link')}
              none="as usual: a bracket"
              choices={[
                { value: 'bracket', label: 'a bracket' },
                { value: 'arc', label: 'an arc' },
              ]}
              id={idAt('link')}
              commit={set(['link'], 'what joins the two letters')}
            />
          )}
          {folded(textOf(entry, 'pattern')) === 'consonant-digraph' && (
            <ChoiceField
              label="Inside blends too (the sh of shrub)"
              value={textOf(entry, 'inside blends')}
              none="as usual: no"
              choices={['yes', 'no']}
              id={idAt('inside blends')}
              commit={set(['inside blends'], 'marking inside blends')}
            />
          )}
        </div>
      </Fold>
      <LeftInFile data={entry} shown={shownOfMark} path={[...marks.path, index]} />
    </li>
  )
}
