export function weeksAgoInWords(weeks: number): string {
  return weeks === 1 ? 'last week' : `${weeks} weeks ago`
}
