/** What `oaktag new` writes: a week at the marsh, with every key that a teacher is likely to want, explained. */
export const starterPlan = `# A plan for one week's words. Change what you like, then run:
#   oaktag make THIS-FILE
# What stands behind a # is a note. Some of the notes can be switched on: take the # and the space after it away.

title: Along the marsh
class: Room 7, Heron Lane School
seed: 12                      # another number deals the boards anew; the same number, the same boards
paper: letter                 # "oaktag list papers" shows what else there is
font: andika                  # "oaktag list fonts"

words:                        # or the path of a .txt file (a word a line) or a .csv file (with a header row)
  - reed
  - word: marsh
    clue: wet, grassy land
    # sounds: m ar sh         # your own division wins over ours; silent letters so: c a k (e)
    # picture: marsh.png      # your own picture, PNG, JPEG or SVG, beside this file
  - heron
  - spring
  - knot
  - stream
  - thrush
  - lake
  - beach
  - wren
  - duck
  - shrub

marks:                        # in the order in which the key shows them; "oaktag list patterns" shows all names
  - pattern: consonant-digraph
  - pattern: digraph-blend
  - pattern: silent-letters
    line: wavy                # "oaktag list lines", "oaktag list outlines"
  - letters: ea               # exact letters instead of a pattern
    outline: rounded
    label: ea, one team       # your words for the key
    # color: "#00618a"        # a colour, in quotes; nothing is coloured unless you say so
  # - part of speech: noun    # whole words, each with a small tag in the corner; also plural: add es,
  #   tag: n                  # sounds: 4, syllables: 2; with line: or outline: the word has one instead

print:                        # "oaktag list layouts" shows what can be made
  - layout: word-cards
    across: 3
    down: 4
  - layout: bingo
    boards: 24
    grid: 3x3
  - layout: key

# groups:                     # other children, same week
#   - name: Otters
#     words: [mud, pond, frog]
#     size: large
`
