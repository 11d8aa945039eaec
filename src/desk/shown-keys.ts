/** The keys of a plan that the page has a control for; what else stands in the file is told, and left as it is. */

export const shownOfPlan: readonly string[] = [
  ...['title', 'class', 'words', 'accent', 'count sounds', 'clues', 'marks'],
  ...['paper', 'font', 'children', 'seed', 'week', 'print', 'groups', 'review', 'printer'],
  ...['contrast', 'class file', 'spread'],
]

export const shownOfMark: readonly string[] = [
  ...['pattern', 'letters', 'part of speech', 'plural', 'sounds', 'syllables', 'place', 'inside blends'],
  ...['line', 'outline', 'color', 'colour', 'label', 'tag', 'descenders', 'link'],
]

export const shownOfGroup: readonly string[] = [
  ...['name', 'words', 'more words', 'size', 'marks', 'children', 'font', 'contrast', 'review'],
]

export const shownOfWord: readonly string[] = [
  ...['word', 'clue', 'sentence', 'picture', 'meant', 'sounds', 'syllables', 'part of speech'],
  ...['parts of speech', 'plural', 'not', 'also'],
]
