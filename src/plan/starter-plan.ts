/** The schema that editors hold the plan against; `oaktag new` writes it beside the plan, so that none asks the network. */
export const SCHEMA_FILE = '.oaktag.schema.json'

/**
 * What `oaktag new` writes: a week at the marsh, worth printing as it stands, each key explained where it stands first.
 * Two parts of the week are made otherwise, to show how.
 * Bingo is for children in pairs: 10 boards of 12 words, and one of them wins at the 9th call of 16.
 */
export const starterPlan = `# yaml-language-server: $schema=${SCHEMA_FILE}
# A plan for one week's words. Change what you like, then run: oaktag make THIS-FILE
# What stands behind a # is a note. To switch on a line that begins with "# ", take the # and the space after it away.
# More of any key: oaktag help KEY. All keys: oaktag list keys.

title: Along the marsh
class: Room 7, Heron Lane School
seed: 12                      # another number deals the boards anew; the same number, the same boards
paper: letter                 # "oaktag list papers" shows what else there is
font: andika                  # "oaktag list fonts"
# class file: room-7.yaml     # what you decide about words, your printer and your class, for every week
# accent: r-less              # where your class does not say the r of marsh
# count sounds: every phoneme # otherwise they are counted as taught

words:                        # or the path of a .txt file (a word a line) or a .csv file (with a header row)
  - reed
  - word: marsh
    clue: wet, grassy land
    # sounds: m ar sh         # your own division wins over ours; silent letters so: c a k (e)
    # syllables: marsh
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
  - finch
  - snake
  - leaf
  - gnat

marks:                        # in the order in which the key shows them; "oaktag list patterns" shows all names
  - pattern: consonant-digraph
    inside blends: no         # yes: the sh of shrub is marked too
  - pattern: digraph-blend
  - pattern: silent-letters
    line: wavy                # "oaktag list lines"; a mark without a style takes the next black one
  - letters: ea               # exact letters instead of a pattern
    # place: middle           # only there
    outline: rounded          # "oaktag list outlines"
    label: ea, one team       # your words for the key
    # color: "#00618a"        # a colour, in quotes; nothing is coloured unless you say so
  # - part of speech: noun    # whole words, each with a small tag in the corner; also plural: add es,
  #   tag: n                  # sounds: 4, syllables: 2; with line: or outline: the word has one instead

week: yes                     # the whole week: pages for the board, notes, lists, key, practice, cards, a sort, a game,
                              # a check, a page for home. Leave some out so: week: {without: [home-page, dictation]}
# children: 22                # in your class: so many boards are dealt, and the first page says how many to print

print:                        # what else you want, or parts of the week made otherwise; see "oaktag list layouts"
  - layout: word-cards
    across: 3
    down: 4
    # copies: 2
    # back: name              # what stands on the backs
    # border: dashed round    # "oaktag list borders"
  - layout: bingo
    boards: 10                # for children in pairs
    grid: 4x3
    win at: 9                 # one board wins at this call, if you call in the order of the caller's sheet

# groups:                     # other children, same week
#   - name: Otters
#     words: [mud, pond, frog, duck, reed, crab, fish, ship, nest, wing]
#     size: large
`

/** What `oaktag desk` begins with: a page for her own words. Nothing in it has to be taken out first. */
export const emptyPlan = `# yaml-language-server: $schema=${SCHEMA_FILE}
# A plan for one week's words. The page of oaktag desk writes it, and so can any editor.
# More of any key: oaktag help KEY. All keys: oaktag list keys.

title: Words of the week

words:

week: yes                     # the whole week; leave some out so: week: {without: [home-page, dictation]}
`
