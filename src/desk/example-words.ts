/** Words of ours, to see what things look like before she has typed any. */
export const exampleWords: readonly string[] = [
  'reed',
  'marsh',
  'heron',
  'spring',
  'knot',
  'stream',
  'thrush',
  'lake',
  'beach',
  'wren',
]
