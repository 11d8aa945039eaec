/** A word looked at closely: its division by pointing, every finding with its reason, and what is hers. */
import type { ComponentChildren } from 'preact'
import { isParted, partedAt, writtenPieces } from '../divided.js'
import { findingsUnder, withFinding, withoutFinding } from '../findings.js'
import type { Data, DeskWord, Shown } from '../messages.js'
import { isKeys, keyIn, textChange, textOf, valueAt } from '../plan-values.js'
import { idOf, useDesk } from './desk-state.js'
import { ChoiceField, Fold, TextField } from './fields.js'
import { Pick } from './pick-letters.js'

const partNames = [
  'noun',
  'verb',
  'adjective',
  'adverb',
  'pronoun',
  'preposition',
  'conjunction',
  'determiner',
  'interjection',
  'number',
]

export interface WordCloserProps {
  readonly entry: Data
  readonly index: number
  readonly word: DeskWord
}

export function WordCloser({ entry, index, word }: WordCloserProps) {
  const { plan, change } = useDesk()
  const key = (...names: readonly string[]) => ['words', index, keyIn(entry, ...names)]
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
  const syllables = word.syllables.map(each => ({ letters: each, silent: false }))
  const isPlainWord = /^\p{L}+$/u.test(letters)
  const parts = textOf(entry, 'part of speech', 'parts of speech')
  const meant = textOf(entry, 'meant')
  const noPlural = textOf(entry, 'plural').toLowerCase() === 'none'
  return (
    <Fold
      summary={
        <>
          Look closer<span class="only-heard"> at {word.text}</span>
        </>
      }
      id={idOf(['words', index, 'word'])}
    >
      {word.meanings.length > 0 && (
        <fieldset class="meanings">
          <legend id={idOf(['words', index, 'meant'])} tabIndex={-1}>
            Which {word.text} do you mean?
          </legend>
          {word.meanings.map(({ meaning, said }, at) => (
            <label key={meaning} class="tick">
              <input
                type="radio"
                name={`meant-${index}`}
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
            id={idOf(['words', index, 'sounds'])}
            isYours={has('sounds')}
            write={pieces => set(['sounds'], 'sounds')(writtenPieces(pieces))}
            mayBeSilent
            takeBack={takeBack('sounds', 'sounds')}
          />
          <Division
            title="Syllables"
            word={letters}
            pieces={syllables}
            id={idOf(['words', index, 'syllables'])}
            isYours={has('syllables')}
            write={pieces => set(['syllables'], 'syllables')(pieces.map(each => each.letters).join(' '))}
            takeBack={takeBack('syllables', 'syllables')}
          />
        </div>
      )}
      <div class="fields">
        <ChoiceField
          label="Part of speech"
          value={parts}
          none={`as studied: ${word.partsOfSpeech.join(', ') || 'unknown'}`}
          choices={partNames}
          id={idOf(['words', index, 'part of speech'])}
          commit={set(['part of speech', 'parts of speech'], 'part of speech')}
        />
        <TextField
          label="Plural"
          value={noPlural ? '' : textOf(entry, 'plural')}
          placeholder={noPlural ? 'has none' : (word.plural?.form ?? 'none')}
          id={idOf(['words', index, 'plural'])}
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
          id={idOf(['words', index, 'clue'])}
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
          id={idOf(['words', index, 'sentence'])}
          commit={set(['sentence'], 'sentence')}
        />
        {plan.pictures.length > 0 && (
          <ChoiceField
            label="Your picture of it"
            value={textOf(entry, 'picture')}
            none="none"
            choices={plan.pictures}
            id={idOf(['words', index, 'picture'])}
            commit={set(['picture'], 'picture')}
          />
        )}
      </div>
      <Found entry={entry} index={index} word={word} />
      {word.said.length > 0 && <p>Said {word.said.join(' or ')}.</p>}
      <Pick entry={entry} index={index} word={word} />
    </Fold>
  )
}

interface DivisionProps {
  readonly title: string
  readonly word: string
  readonly pieces: readonly { readonly letters: string; readonly silent: boolean }[]
  readonly id: string
  readonly isYours: boolean
  readonly mayBeSilent?: boolean
  /** What gives the study's own again. */
  readonly takeBack: ComponentChildren
  readonly write: (pieces: readonly { readonly letters: string; readonly silent: boolean }[]) => unknown
}

/** Between every two letters a button parts or joins them. */
function Division({ title, word, pieces, id, isYours, mayBeSilent = false, takeBack, write }: DivisionProps) {
  const letters = [...word]
  return (
    <fieldset class="divided" aria-label={`${title} of ${word}`}>
      <h3 id={id} tabIndex={-1}>
        {title}
        {isYours && <span class="yours">yours</span>}
      </h3>
      <div class="letters">
        {letters.map((letter, at) => (
          <span key={at}>
            {at > 0 && (
              <button
                type="button"
                class="gap"
                aria-pressed={isParted(pieces, at)}
                aria-label={`Part between ${letters.slice(0, at).join('')} and ${letters.slice(at).join('')}`}
                title={isParted(pieces, at) ? 'Join these' : 'Part these'}
                onClick={() => write(partedAt(pieces, at))}
              >
                {isParted(pieces, at) ? '|' : '·'}
              </button>
            )}
            <b>{letter}</b>
          </span>
        ))}
      </div>
      {mayBeSilent && (
        <div class="pieces">
          {pieces.map((piece, at) => (
            <button
              key={at}
              type="button"
              class="piece"
              aria-pressed={piece.silent}
              aria-label={`${piece.letters} says nothing`}
              onClick={() =>
                write(pieces.map((each, index) => (index === at ? { ...each, silent: !each.silent } : each)))
              }
            >
              {piece.silent ? `(${piece.letters})` : piece.letters}
            </button>
          ))}
          <small>Press a piece that says nothing: it goes in brackets and is not counted.</small>
        </div>
      )}
      {takeBack}
    </fieldset>
  )
}

function Found({ entry, index, word }: WordCloserProps) {
  const { change } = useDesk()
  const not = findingsUnder(entry, 'not')
  const refuse = ({ pattern, letters }: Shown) =>
    change(`${pattern} of ${word.text}`, withFinding(entry, index, 'not', `${pattern} ${letters}`))
  const takeBack = (key: 'not' | 'also', finding: string) =>
    change(`${finding} of ${word.text}`, withoutFinding(entry, index, key, finding))
  return (
    <div class="found">
      <h3 id={idOf(['words', index, 'not'])} tabIndex={-1}>
        What it shows
      </h3>
      <ul>
        {word.patterns.map(each => (
          <li key={`${each.pattern} ${each.start} ${each.letters}`}>
            <b>{each.pattern}</b> {each.letters} ({each.place})
            {each.yours && <span class="yours"> yours</span>}
            <small>{each.why}</small>
            {each.yours ? (
              <button type="button" onClick={() => void takeBack('also', `${each.pattern} ${each.letters}`)}>
                Take back<span class="only-heard"> {each.pattern}</span>
              </button>
            ) : (
              <button type="button" onClick={() => void refuse(each)}>
                Not in my class
                <span class="only-heard">
                  : {each.pattern} in {word.text}
                </span>
              </button>
            )}
          </li>
        ))}
        {not.map(each => (
          <li key={`not ${each}`} class="refused">
            <s>{each}</s> <span class="yours">yours: not found</span>
            <button type="button" onClick={() => void takeBack('not', each)}>
              Find it again<span class="only-heard"> {each}</span>
            </button>
          </li>
        ))}
      </ul>
    </div>
  )
}
