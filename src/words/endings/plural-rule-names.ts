/** The rules for plurals as a plan names them: by what is done to the word, or by the whole rule as `study` gives it. */

interface NamedRule {
  readonly name: string
  /** Rules that `pluralOf` gives. */
  readonly rules: readonly string[]
  /** The rule ends with a word of its own: `already plural: one goose`. */
  readonly open?: true
}

const namedRules: readonly NamedRule[] = [
  { name: 'add s', rules: ['add s', 'ch says k: add s', 'a name keeps its y: add s'] },
  { name: 'add es', rules: ['add es after ch, sh, s, x, z', 'ends in o: add es'] },
  { name: 'y to i', rules: ['y to i, add es'] },
  { name: 'f to v', rules: ['f to v, add es', 'fe to ve, add s'] },
  { name: 'double the z', rules: ['double the z, add es'] },
  { name: 'changes inside', rules: ['changes inside'] },
  { name: 'irregular ending', rules: ['irregular ending'] },
  { name: 'stays the same', rules: ['stays the same'] },
  { name: 'two forms in use', rules: ['two forms in use', 'two spellings'] },
  { name: 'always plural', rules: ['always plural: stays the same'] },
  { name: 'not counted', rules: ['not counted: stays the same'] },
  { name: 'a letter', rules: ['a letter: add an apostrophe and s'] },
  { name: 'as the teacher writes it', rules: ['as the teacher writes it'] },
  { name: 'first word changes', rules: ['first word changes: '], open: true },
  { name: 'already plural', rules: ['already plural: one '], open: true },
]

/** What `plural:` of a mark may say. */
export const pluralRuleNames: readonly string[] = [
  ...new Set(namedRules.flatMap(({ name, rules, open }) => (open === true ? [name] : [name, ...rules]))),
]

/** Whether a word's rule is the one named. */
export function followsPluralRule(rule: string, name: string): boolean {
  if (rule === name) return true
  const named = namedRules.find(each => each.name === name)
  return named?.rules.some(each => (named.open === true ? rule.startsWith(each) : rule === each)) ?? false
}

/** What is done to the word, by its short name: `f to v` for leaf and knife alike. */
export function pluralRuleName(rule: string): string {
  return namedRules.find(({ name }) => followsPluralRule(rule, name))?.name ?? rule
}
