/** What `oaktag list` can list, in its order. */
export const listKinds = [
  'keys',
  'papers',
  'fonts',
  'patterns',
  'layouts',
  'lines',
  'outlines',
  'borders',
] as const
export type ListKind = (typeof listKinds)[number]
