/** `--format svg,png --format pdf` and `--only "word cards, bingo"` as one list of names. */
export function commaList(values: readonly string[]): readonly string[] {
  return values
    .flatMap(value => value.split(','))
    .map(value => value.trim())
    .filter(value => value !== '')
}
