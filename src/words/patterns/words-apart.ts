/**
 * Words that look as if they were made from another word and are not, or no longer are to a child: read by eye in the
 * findings over the familiar words. Common practice, no source.
 */
function wordSet(words: string): ReadonlySet<string> {
  return new Set(words.trim().split(/\s+/))
}

/** No ending -ed, -ing, -er, -est, -s or -es. */
export const notInflected = wordSet(`
  corner butter ladder hammer summer dinner supper pepper letter matter better offer master bitter tender copper latter
  utter otter forest honest earnest interest morning its us
`)

/** No prefix. */
export const notPrefixed = wordSet(`
  under uncle unit until only into inch indeed imp index
`)

/** No suffix. */
export const notSuffixed = wordSet(`
  only early family reply apply supply belly bully witness harness moment
`)

/** No compound. */
export const notCompound = wordSet(`
  mushroom carpet season
`)
