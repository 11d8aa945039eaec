/** A group of children: what is theirs alone, and what they share with the class. */
import type { Change, Data } from '../messages.js'
import { pastedWords, wordEntry } from '../pasted-words.js'
import {
  entriesOf,
  isListFile,
  keyIn,
  listChange,
  ownWordsKey,
  sizeChange,
  textChange,
  textOf,
  valueAt,
} from '../plan-values.js'
import { shownOfGroup } from '../shown-keys.js'
import { idOf, useDesk } from './desk-state.js'
import { ChoiceField, Fold, NumberField, TextField } from './fields.js'
import { contrastChoices } from './item-options.js'
import { LeftInFile } from './left-in-file.js'
import { PicturedChoice } from './option-fields.js'
import { ProblemsOf } from './problems.js'
import { ReviewField } from './review.js'
import { RowTools } from './row-tools.js'
import { SizeField } from './size-field.js'

export interface GroupCardProps {
  readonly group: Data
  readonly index: number
  readonly count: number
}

export function GroupCard({ group, index, count }: GroupCardProps) {
  const { names, change } = useDesk()
  const isNamedAlone = typeof group === 'string'
  const name = isNamedAlone ? group : textOf(group, 'name')
  const key = (own: string) => ['groups', index, keyIn(group, own)]
  const set = (own: string, says: string) => (value: string) =>
    change(`${says} of ${name}`, textChange(group, key(own), value, 'name'))
  return (
    <li class="group-row">
      <div class="mark-head">
        <h4 id={idOf(['groups', index])} tabIndex={-1}>
          {name}
        </h4>
        <RowTools list={['groups']} index={index} count={count} title={name} after="new-group" />
      </div>
      <p>{inShort(group)}</p>
      <ProblemsOf path={['groups', index]} />
      <Fold
        keep={`group ${index}`}
        summary={
          <>
            Change it<span class="only-heard"> the group {name}</span>
          </>
        }
      >
        <div class="fields">
          <TextField
            label="Name"
            value={name}
            id={idOf(['groups', index, 'name'])}
            commit={value =>
              change(
                `the name of ${name}`,
                isNamedAlone
                  ? [{ kind: 'set', path: ['groups', index], value }]
                  : textChange(group, key('name'), value),
              )
            }
          />
          <NumberField
            label="Children in it"
            value={textOf(group, 'children')}
            least={1}
            most={500}
            id={idOf(['groups', index, 'children'])}
            commit={set('children', 'the number of children')}
          />
        </div>
        <OwnWords group={group} index={index} name={name} />
        <p id={idOf(['groups', index, 'marks'])} tabIndex={-1}>
          {valueAt(group, 'marks') === undefined
            ? 'Its words are marked as those of the class'
            : 'It has marks of its own'}
          ; that is changed under <a href="#marks">Marks</a>.
        </p>
        <SizeField
          id={idOf(['groups', index, 'size'])}
          value={valueAt(group, 'size')}
          usual="as the class"
          write={value =>
            change(`the size of the words of ${name}`, sizeChange(group, key('size'), value, 'name'))
          }
        />
        <div class="fields">
          <PicturedChoice
            name="font"
            label="Typeface"
            value={textOf(group, 'font')}
            none="as the class"
            choices={names.fonts.map(each => each.name)}
            id={idOf(['groups', index, 'font'])}
            item={{ layout: 'word-cards' }}
            of="front"
            commit={set('font', 'the typeface')}
          />
          <PicturedChoice
            name="contrast"
            label="Ink and card"
            value={textOf(group, 'contrast')}
            none="as the class"
            choices={contrastChoices}
            id={idOf(['groups', index, 'contrast'])}
            item={{ layout: 'word-cards' }}
            of="front"
            commit={set('contrast', 'the colours')}
          />
        </div>
        <ReviewField
          holder={group}
          path={key('review')}
          whose={name}
          none="as the class"
          textAs="name"
          id={idOf(['groups', index, 'review'])}
        />
        <LeftInFile data={group} shown={shownOfGroup} path={['groups', index]} />
      </Fold>
    </li>
  )
}

/** What is theirs, in a line. */
function inShort(group: Data): string {
  const words = valueAt(group, ownWordsKey(group))
  const count = entriesOf(words).length
  const size = valueAt(group, 'size')
  const marks = valueAt(group, 'marks')
  const told = [
    words === undefined
      ? 'The words of the class'
      : `${count === 1 ? '1 word' : `${count} words`} of its own${ownWordsKey(group) === 'words' ? '' : ' beside those of the class'}`,
    ...(marks === undefined ? [] : ['marks of its own']),
    ...(size === undefined || size === 'normal'
      ? []
      : [
          typeof size === 'string'
            ? `${size === 'large' ? 'large print' : size}`
            : 'print for one child’s sight',
        ]),
  ]
  return `${told.join(', ')}.`
}

/** Those of the class, others, or others beside them. */
function OwnWords({
  group,
  index,
  name,
}: {
  readonly group: Data
  readonly index: number
  readonly name: string
}) {
  const { change } = useDesk()
  const has = ownWordsKey(group)
  const words = valueAt(group, has)
  const entries = entriesOf(words)
  const path = ['groups', index, keyIn(group, has)]
  const isPlain = entries.every(each => typeof each === 'string' && !isListFile(each))
  const kind = words === undefined ? '' : has
  const pick = (next: string) => {
    const gone: readonly Change[] = words === undefined ? [] : [{ kind: 'remove', path }]
    const come: readonly Change[] =
      next === '' ? [] : [{ kind: 'set', path: ['groups', index, next], value: entries, textAs: 'name' }]
    return change(`the words of ${name}`, [...gone, ...come])
  }
  return (
    <div class="fields">
      <ChoiceField
        label="Its words"
        value={kind}
        none="those of the class"
        choices={[
          { value: 'words', label: 'its own, not those of the class' },
          { value: 'more words', label: 'those of the class and more' },
        ]}
        id={`${idOf(['groups', index])}-kind-of-words`}
        commit={pick}
      />
      {kind !== '' && isPlain && (
        <TextField
          label="Words, with a space between"
          value={entries.join(' ')}
          id={idOf(['groups', index, has])}
          commit={typed =>
            change(`the words of ${name}`, listChange(group, path, pastedWords(typed).map(wordEntry)))
          }
        />
      )}
      {kind !== '' && (
        <p id={isPlain ? undefined : idOf(['groups', index, has])} tabIndex={isPlain ? undefined : -1}>
          Each of them stands under <a href="#words">Words</a> with its study.
        </p>
      )}
    </div>
  )
}
