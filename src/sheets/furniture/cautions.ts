/** What a grown-up should know before cutting: printed on the cover, plain sentences, local rules first. */
export const cautions: readonly string[] = [
  'Your school’s own rules and the child’s own plan come first.',
  'A grown-up works the trimmer and latches the blade after every use.',
  'A grown-up works the laminator. Laminated corners are sharp: round them.',
  'Small pieces are not for children under three.',
]

/** Goes with every set in large print. */
export const largePrintCaution =
  'The print size is a starting point: the child’s own vision specialist decides.'
