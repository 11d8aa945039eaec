/** `oaktag help wishes`: what the wishes of `oaktag find` mean. */
export const findNotes = `Letters: sh as spelled; a_e for a split team, with one letter or team between.

Levels: easy is one syllable and familiar (20 times or more in a million words);
middle has one or two syllables and is met 5 times or more in a million; hard is
the rest.

--like: first words with the same vowel spelling in the same frame (as many
sounds, the same kinds of letters at the beginning and at the end), then rhymes.

--for: words with as many syllables and sounds as the plan's, and as familiar. A
class file of the plan that says what is taught counts, with this week's marks.

--taught takes a text file, or a class file with the key "taught:". In it stand,
a line each: patterns (vowel-team), letters (sh, a_e, str), letters with the
sound of a word (ea as in sea), words of earlier lists (ship). Single consonants
are known from the start, short vowels once short-vowel or the letter is on the
list, and consonants that blend once the blend is.`
