/** The parts of the page, by what stands behind the # of its address. */
export const views = ['words', 'marks', 'things', 'sheets'] as const
export type View = (typeof views)[number]
