/**
 * Words that the lexicon lists as nouns too, by a sense that no child meets (a know, a delicious, to be in the there),
 * so that a plural (knows, deliciouses) would puzzle the class. Read by eye in the 6,000 most familiar words; from
 * general knowledge of plain American English.
 */
export const neverNouns: ReadonlySet<string> = new Set(
  `know get there go come think let take tell say down make over more most find put must keep now see give only least
  ah less none weird sell join teach grab upstairs downstairs holy carry silly begin build settle indeed pretend rough
  sooner dating add picking brave invite lower super hire steady wasting separate ancient delicious ill remove collect
  recall interrupt latest hurting cheating dreaming seek cancel smooth starving worrying gather kicking pretending
  begging jumping traveling skinny digging tracking backwards temporary handy dining affect annoying arguing homeless
  paranoid multiple impress absurd floating hostile dug waking almighty cease petty chased compare sweating judging
  wandering climbing exclusive jolly ruining expose nowadays collecting tearing dental incoming shallow martial
  frightening blocking spectacular cozy defeated chewing spying defensive stalking goofy waving underestimate speeding
  smelling coughing partial rubbing affirmative wounded desperate impossible ready bad nothing tonight whoa very
  beautiful happy sad was were been am are is not when then very sitting talking hoping asking because to
  for bigger smaller faster older smart clear young wise keen tired afraid alive asleep alone able sure glad buy
  become believe bring ask eat forget forgive hear learn lose marry meant met own remember said sell sent sold spend
  told took understand went agree allow appear apply arrive avoid belong borrow choose continue decide deserve destroy
  enjoy enter exist expect explain follow happen imagine improve include introduce invent listen prefer prepare prove
  provide receive remain remind require save seem send solve suggest suppose survive throw wear write die exaggerate still last worse worst best grand
  thick deaf unconscious unfortunate faithful lit pale closer frank lee due butch sick wrong`.split(/\s+/),
)
