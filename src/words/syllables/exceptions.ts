/**
 * Words that the rules would divide otherwise than a dictionary does. A word may stand with two divisions, one for
 * each number of vowel sounds it is said with (ev·ery, ev·er·y). Common practice, no source.
 */
const table = `
ev·ery ev·er·y
an·oth·er
Wednes·day
Eng·lish
Eng·land
go·ril·la
eve·ning
for·ev·er
busi·ness
`

export const exceptions: ReadonlyMap<string, readonly (readonly string[])[]> = new Map(
  table
    .trim()
    .split('\n')
    .map(line => {
      const divisions = line
        .toLowerCase()
        .split(' ')
        .map(division => division.split('·'))
      return [divisions[0]!.join(''), divisions] as const
    }),
)
