/**
 * After how many weeks a list comes back: after 1, 3 and 7, then every 4 weeks: 11, 15, …
 *
 * What was read for it: the abstract of Cepeda, Pashler, Vul, Wixted and Rohrer 2006 (Psychological Bulletin 132, 354–380;
 * 839 measurements of 317 experiments): the gap after which most is kept grows with the time that it is to be kept. The
 * abstract of Cepeda, Coburn, Rohrer, Wixted, Mozer and Pashler 2009 (Experimental Psychology 56, 236–246): with longer gaps
 * what is kept grows sharply at first and then declines gradually. Of Cepeda, Vul, Rohrer, Wixted and Pashler 2008
 * (Psychological Science 19, 1095–1102) a summary by somebody else: the best gap is 20 to 40 % of a week, and 5 to 10 % of a
 * year. The abstract of Kang, Lindsey, Mozer and Pashler 2014 (Psychonomic Bulletin & Review, on words of another language
 * over four weeks): gaps that grow leave as much at the end as equal ones, and much more on the way there. The abstract of
 * Sobel, Cepeda and Kapler 2011 (Applied Cognitive Psychology 25, 763–767): fifth-graders who met new words again a week
 * later knew more of them five weeks after that.
 *
 * What follows for a class that has a list a week: the first gap is a week, the shortest there is. The gaps grow, each twice
 * the last: 1, 2, 4 weeks (that it is twice is our own choice). None is longer than 4 weeks: of a year, which a school year
 * comes near to, 5 to 10 % are 3 to 5 weeks. A list that waits too long loses little, one that comes back too soon much; so
 * no word comes back before its time, and of a list too long for the room some words come back now and others next time.
 */
const growingGaps = [1, 2, 4] as const
const lastGap = 4

/** How many weeks after its own a list comes back while the gaps grow: 1, 3, 7. */
const firstTimes: readonly number[] = growingGaps.map((_, index) =>
  growingGaps.slice(0, index + 1).reduce((sum, gap) => sum + gap, 0),
)

export function isDue(weeksAgo: number): boolean {
  const grown = firstTimes.at(-1)!
  return firstTimes.includes(weeksAgo) || (weeksAgo > grown && (weeksAgo - grown) % lastGap === 0)
}

/** The rule, a clause for messages. */
export const dueInWords = 'a list comes back after 1, 3 and 7 weeks, then every 4 weeks'
