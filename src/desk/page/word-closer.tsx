import { writtenPieces } from '../divided.js'
import type { Data, DeskWord } from '../messages.js'
import { isKeys, keyIn, textChange, textOf, valueAt } from '../plan-values.js'
import { shownOfWord } from '../shown-keys.js'
import { useDesk } from './desk-state.js'
import { Division } from './division.js'
import { ChoiceField, Fold, TextField } from './fields.js'
import { Found } from './found.js'
import { LeftInFile } from './left-in-file.js'
import { useList } from './listed.js'
import { PartsField } from './parts-field.js'
import { Pick } from './pick-letters.js'

export interface WordCloserProps {
  readonly entry: Data
  readonly index: number
  readonly word: DeskWord
}

export function WordCloser({ entry, index, word }: WordCloserProps) {
  const { plan } = useDesk()
  const { path, root, file, idAt, change } = useList()
  const key = (...names: readonly string[]) => [...path, index, keyIn(entry, ...names)]
  const set = (names: readonly string[], says: string) => (value: string) =>
    change(`${says} of ${word.text}`, textChange(entry, key(...names), value, 'word'))
  const has = (name: string) => isKeys(entry) && valueAt(entry, name) !== undefined
  const takeBack = (name: string, says: string) =>
    has(name) && (
      <button
        type="button"
        onClick={() => void change(`${says} of ${word.text}`, [{ kind: 'remove', path: key(name) }])}
      >
        Back to the study’s {says}
      </button>
    )
  const letters = word.text
  /** A list in another folder looks for its pictures there. */
  const isBeside = file === undefined || !/[\\/]/.test(file)
  const syllables = word.syllables.map(each => ({ letters: each, silent: false }))
  const isPlainWord = /^\p{L}+$/u.test(letters)
  const meant = textOf(entry, 'meant')
  const noPlural = textOf(entry, 'plural').toLowerCase() === 'none'
  return (
    <Fold
      keep={idAt(index, 'closer')}
      summary={
        <>
          Look closer<span class="only-heard"> at {word.text}</span>
        </>
      }
      id={idAt(index, 'word')}
    >
      {word.meanings.length > 0 && (
        <fieldset class="meanings">
          <legend id={idAt(index, 'meant')} tabIndex={-1}>
            Which {word.text} do you mean?
          </legend>
          {word.meanings.map(({ meaning, said }, at) => (
            <label key={meaning} class="tick">
              <input
                type="radio"
                name={`meant-${root.join('-')}-${index}`}
                checked={meant === '' ? at === 0 : meant.toLowerCase() === meaning}
                onChange={() => set(['meant'], 'the meaning')(at === 0 ? '' : meaning)}
              />
              <span>
                {meaning}, said {said}
              </span>
            </label>
          ))}
        </fieldset>
      )}
      {isPlainWord && (
        <div class="division">
          <Division
            title="Sounds"
            word={letters}
            pieces={word.pieces}
            id={idAt(index, 'sounds')}
            isYours={has('sounds')}
            write={pieces => set(['sounds'], 'sounds')(writtenPieces(pieces))}
            mayBeSilent
            takeBack={takeBack('sounds', 'sounds')}
          />
          <Division
            title="Syllables"
            word={letters}
            pieces={syllables}
            id={idAt(index, 'syllables')}
            isYours={has('syllables')}
            write={pieces => set(['syllables'], 'syllables')(pieces.map(each => each.letters).join(' '))}
            takeBack={takeBack('syllables', 'syllables')}
          />
        </div>
      )}
      <div class="fields">
        <PartsField entry={entry} index={index} text={word.text} studied={word.partsOfSpeech} />
        <TextField
          label="Plural"
          value={noPlural ? '' : textOf(entry, 'plural')}
          placeholder={noPlural ? 'has none' : (word.plural?.form ?? 'none')}
          id={idAt(index, 'plural')}
          commit={set(['plural'], 'plural')}
        />
        {noPlural ? (
          takeBack('plural', 'plural')
        ) : (
          <button type="button" onClick={() => void set(['plural'], 'plural')('none')}>
            It has no plural
          </button>
        )}
        <TextField
          label="Clue"
          value={textOf(entry, 'clue')}
          placeholder={word.clueDraft ?? ''}
          id={idAt(index, 'clue')}
          commit={set(['clue'], 'clue')}
        />
        {word.clueDraft !== undefined && !has('clue') && (
          <button type="button" onClick={() => void set(['clue'], 'clue')(word.clueDraft ?? '')}>
            Take the draft: {word.clueDraft}
          </button>
        )}
        <TextField
          label="Sentence for dictation"
          value={textOf(entry, 'sentence')}
          id={idAt(index, 'sentence')}
          commit={set(['sentence'], 'sentence')}
        />
        {(plan.pictures.length > 0 || has('picture')) && isBeside && (
          <ChoiceField
            label="Your picture of it"
            value={textOf(entry, 'picture')}
            none="none"
            choices={plan.pictures}
            id={idAt(index, 'picture')}
            commit={set(['picture'], 'picture')}
          />
        )}
      </div>
      <LeftInFile data={isKeys(entry) ? entry : null} shown={shownOfWord} path={[...path, index]} />
      <Found entry={entry} index={index} word={word} />
      {word.said.length > 0 && <p>Said {word.said.join(' or ')}.</p>}
      <Pick entry={entry} index={index} word={word} />
    </Fold>
  )
}
