/** A mark of the plan: its place in the key, and how it looks. */
import type { Data } from '../messages.js'
import { keyIn, textChange, textOf } from '../plan-values.js'
import { idOf, useDesk } from './desk-state.js'
import { ChoiceField, Fold, TextField } from './fields.js'
import { LeftInFile } from './left-in-file.js'
import { Colours, Pictured } from './mark-styles.js'
import { RowTools } from './row-tools.js'

const wholeWords = ['part of speech', 'plural', 'sounds', 'syllables']

const shownOfMark = [
  ...['pattern', 'letters', ...wholeWords, 'place', 'inside blends'],
  ...['line', 'outline', 'color', 'colour', 'label', 'tag'],
]

/** `digraph-blend`, `letters ea`, `part of speech: noun` */
function targetIn(entry: Data): { readonly key: string; readonly value: string } {
  const keys = ['pattern', 'letters', ...wholeWords]
  const key = keys.find(each => textOf(entry, each) !== '') ?? ''
  return { key, value: textOf(entry, key) }
}

function titleOf(entry: Data): string {
  const { key, value } = targetIn(entry)
  return key === 'pattern' ? value : key === 'letters' ? `letters ${value}` : `${key}: ${value}`
}

interface MarkRowProps {
  readonly entry: Data
  readonly index: number
  readonly count: number
}

export function MarkRow({ entry, index, count }: MarkRowProps) {
  const { plan, names, change } = useDesk()
  const title = titleOf(entry)
  const look = plan.looks[index] ?? null
  const path = (...spellings: readonly string[]) => ['marks', index, keyIn(entry, ...spellings)]
  const set = (spellings: readonly string[], says: string) => (value: string) =>
    change(`${says} of ${title}`, textChange(entry, path(...spellings), value))
  const { key } = targetIn(entry)
  const line = textOf(entry, 'line')
  const outline = textOf(entry, 'outline')
  const color = textOf(entry, 'color', 'colour')
  return (
    <li class="mark-row">
      <div class="mark-head">
        <h3 id={idOf(['marks', index])} tabIndex={-1}>
          {look !== null && <img class="look" src={look} alt="" />} {title}
        </h3>
        <RowTools list="marks" index={index} count={count} title={title} after="shown-head" />
      </div>
      <Fold
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
          id={idOf(['marks', index, 'line'])}
          pick={set(['line'], 'the line')}
        />
        <Pictured
          legend="Outline"
          kind="outline"
          choices={names.outlines}
          value={outline}
          id={idOf(['marks', index, 'outline'])}
          pick={set(['outline'], 'the outline')}
        />
        <Colours
          value={color}
          id={idOf(['marks', index, 'color'])}
          pick={set(['color', 'colour'], 'the colour')}
        />
        <div class="fields">
          <TextField
            label="Words for the key"
            value={textOf(entry, 'label')}
            placeholder={title}
            id={idOf(['marks', index, 'label'])}
            commit={set(['label'], 'the wording')}
          />
          <TextField
            label="Small letters beside it"
            value={textOf(entry, 'tag')}
            id={idOf(['marks', index, 'tag'])}
            commit={set(['tag'], 'the small letters')}
          />
          {!wholeWords.includes(key) && (
            <ChoiceField
              label="Where in the word"
              value={textOf(entry, 'place')}
              none="anywhere"
              choices={['beginning', 'middle', 'end']}
              id={idOf(['marks', index, 'place'])}
              commit={set(['place'], 'the place')}
            />
          )}
          {textOf(entry, 'pattern') === 'consonant-digraph' && (
            <ChoiceField
              label="Inside blends too (the sh of shrub)"
              value={textOf(entry, 'inside blends')}
              none="no"
              choices={['yes', 'no']}
              commit={set(['inside blends'], 'inside blends')}
            />
          )}
        </div>
      </Fold>
      <LeftInFile data={entry} shown={shownOfMark} path={['marks', index]} />
    </li>
  )
}
