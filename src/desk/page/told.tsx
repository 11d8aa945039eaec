/** What the study tells of a word, in the words of the study. */
import type { DeskWord } from '../messages.js'

export function Told({ word }: { readonly word: DeskWord }) {
  const { syllables, partsOfSpeech, partsAreGuessed, plural, source, yours } = word
  return (
    <ul class="told">
      <li class="sounds">{word.sounds}</li>
      <li>
        {syllables.length === 1 ? '1 syllable' : `${syllables.length} syllables`}
        {syllables.length > 1 && `: ${syllables.join('·')}`}
      </li>
      <li>
        {partsOfSpeech.join(', ') || 'part of speech unknown'}
        {partsAreGuessed && ' (a guess)'}
      </li>
      {plural !== null && (
        <li>
          plural {plural.form} ({plural.rule})
        </li>
      )}
      {word.clue !== undefined && <li>clue: {word.clue}</li>}
      {source === 'guess' && <li class="unsure">not in our dictionary: its sounds are a guess</li>}
      {word.notes.map(note => (
        <li key={note} class="unsure">
          {note}
        </li>
      ))}
      {yours.length > 0 && <li class="yours">yours: {yours.join(', ')}</li>}
    </ul>
  )
}
