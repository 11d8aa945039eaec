/**
 * Letters that are hard to mark: ligatures, letters that reach down or hang over their neighbours, narrow and wide
 * ones, capitals, accents, split patterns. Each word with the letters in question in brackets.
 */
const written = [
  '[fi]sh',
  'puf[fi]n',
  'pu[ff]in',
  'pu[ff]',
  'flu[ff]y',
  'wa[ffle]',
  'wa[f]fle',
  '[fl]int',
  '[gh]ost',
  'lau[gh]',
  'n[igh]t',
  'h[igh]',
  'wa[tch]',
  'pi[tch]er',
  'bri[dge]',
  'jett[y]',
  'fogg[y]',
  '[y]acht',
  '[j]etty',
  '[qu]ay',
  's[qu]id',
  'la[mb]',
  'cli[mb]',
  '[wr]eck',
  'r[ee]d',
  'she[ll]',
  'bu[tt]er',
  'e[gg]s',
  'dri[pp]ing',
  'stri[ng]',
  '[M]arsh',
  '[T]ern',
  '[Wr]en',
  '[Qu]ay',
  't[i]dal',
  's[l]eet',
  'p[ie]r',
  "gu[ll's]",
  'caf[é]',
  'thr[ough]',
  't[i]d[e]',
  'p[a]g[e]',
  't[y]p[e]',
] as const

export interface AwkwardSpan {
  readonly written: string
  readonly word: string
  readonly ranges: readonly { readonly start: number; readonly end: number }[]
}

export const awkwardSpans: readonly AwkwardSpan[] = written.map(text => {
  let word = ''
  let start = 0
  const ranges: { start: number; end: number }[] = []
  for (const character of text) {
    if (character === '[') start = word.length
    else if (character === ']') ranges.push({ start, end: word.length })
    else word += character
  }
  return { written: text, word, ranges }
})
