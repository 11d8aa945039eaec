/**
 * Nouns whose plural no spelling rule gives. Compiled by hand from general knowledge of the language; the
 * published checks hold it against two independent libraries and explain each difference.
 */

/** Changed inside, or with an ending of their own: singular, then the plurals in use, the commoner first. */
const changedInside: Readonly<Record<string, string>> = {
  man: 'men',
  woman: 'women',
  foot: 'feet',
  tooth: 'teeth',
  goose: 'geese',
  mouse: 'mice',
  louse: 'lice',
  dormouse: 'dormice',
  titmouse: 'titmice',
  passerby: 'passersby',
}

const ownEnding: Readonly<Record<string, string>> = {
  child: 'children',
  ox: 'oxen',
  person: 'people persons',
  money: 'moneys monies',
  die: 'dice dies',
  alumnus: 'alumni',
  stimulus: 'stimuli',
  bacillus: 'bacilli',
  nucleus: 'nuclei',
  radius: 'radii radiuses',
  cactus: 'cactuses cacti',
  fungus: 'fungi funguses',
  syllabus: 'syllabuses syllabi',
  octopus: 'octopuses octopi',
  hippopotamus: 'hippopotamuses hippopotami',
  platypus: 'platypuses platypi',
  crocus: 'crocuses croci',
  larva: 'larvae',
  alga: 'algae',
  pupa: 'pupae pupas',
  nebula: 'nebulae nebulas',
  vertebra: 'vertebrae vertebras',
  antenna: 'antennas antennae',
  formula: 'formulas formulae',
  axis: 'axes',
  basis: 'bases',
  crisis: 'crises',
  oasis: 'oases',
  thesis: 'theses',
  testis: 'testes',
  analysis: 'analyses',
  diagnosis: 'diagnoses',
  ellipsis: 'ellipses',
  emphasis: 'emphases',
  hypothesis: 'hypotheses',
  metamorphosis: 'metamorphoses',
  nemesis: 'nemeses',
  neurosis: 'neuroses',
  parenthesis: 'parentheses',
  synopsis: 'synopses',
  synthesis: 'syntheses',
  antithesis: 'antitheses',
  prognosis: 'prognoses',
  genesis: 'geneses',
  phenomenon: 'phenomena phenomenons',
  criterion: 'criteria criterions',
  bacterium: 'bacteria',
  datum: 'data',
  medium: 'mediums media',
  stratum: 'strata',
  erratum: 'errata',
  addendum: 'addenda',
  aquarium: 'aquariums aquaria',
  curriculum: 'curriculums curricula',
  memorandum: 'memorandums memoranda',
  millennium: 'millenniums millennia',
  referendum: 'referendums referenda',
  appendix: 'appendixes appendices',
  index: 'indexes indices',
  vertex: 'vertices vertexes',
  vortex: 'vortices vortexes',
  matrix: 'matrices matrixes',
  codex: 'codices',
  bureau: 'bureaus bureaux',
  plateau: 'plateaus plateaux',
  tableau: 'tableaux tableaus',
  chateau: 'chateaus chateaux',
  beau: 'beaus beaux',
  seraph: 'seraphim seraphs',
  cherub: 'cherubs cherubim',
  kibbutz: 'kibbutzim',
  graffito: 'graffiti',
}

/** The same form for one and for many. A second form in use stands after it. */
const sameForm: Readonly<Record<string, string>> = Object.fromEntries(
  `sheep deer reindeer moose bison swine salmon trout cod offspring
  aircraft spacecraft hovercraft watercraft series species means headquarters crossroads barracks gallows
  corps chassis rendezvous bourgeois swiss chinese japanese vietnamese portuguese lebanese
  plankton haddock halibut innings shambles dice`
    .split(/\s+/)
    .map(word => [word, word] as const),
)

const sameFormOrRegular: Readonly<Record<string, string>> = {
  fish: 'fish fishes',
  elk: 'elk elks',
  shrimp: 'shrimp shrimps',
  squid: 'squid squids',
  herring: 'herring herrings',
  mackerel: 'mackerel mackerels',
  tuna: 'tuna tunas',
  bass: 'bass basses',
  antelope: 'antelope antelopes',
  buffalo: 'buffalo buffaloes buffalos',
  caribou: 'caribou caribous',
  quail: 'quail quails',
  catfish: 'catfish catfishes',
  goldfish: 'goldfish goldfishes',
  jellyfish: 'jellyfish jellyfishes',
  starfish: 'starfish starfishes',
  shellfish: 'shellfish shellfishes',
  swordfish: 'swordfish swordfishes',
  crayfish: 'crayfish crayfishes',
  flatfish: 'flatfish flatfishes',
}

/** Nouns that have no singular of their own in this sense. */
export const alwaysPlural: ReadonlySet<string> = new Set(
  `scissors jeans trousers pants shorts pajamas pyjamas tights leggings overalls dungarees tweezers pliers
  tongs shears binoculars goggles spectacles sunglasses eyeglasses clothes belongings surroundings thanks
  cattle police panties undies knickers slacks briefs suspenders headphones earphones outskirts remains
  riches congratulations greetings goods premises savings valuables vitals whereabouts fireworks folks odds
  suds measles mumps`.split(/\s+/),
)

/** Not counted: a plural is hardly ever met, so a child would not be asked for one. */
export const notCounted: ReadonlySet<string> = new Set(
  `furniture homework housework schoolwork information luggage baggage equipment advice traffic news
  mathematics maths math physics gymnastics athletics economics politics genetics linguistics ethics
  aerobics mechanics electronics acoustics tennis chess golf soccer hockey wildlife weather cutlery
  machinery scenery poultry mankind software hardware underwear laughter sunshine moonlight sunlight
  daylight knowledge rice mud butter music electricity garbage rubbish happiness sadness fun health wealth
  gravity clothing jewelry research nonsense applause luck courage oxygen hydrogen`.split(/\s+/),
)

/** f or fe to ves: a short closed list (common practice, no source). Compounds of these follow them. */
export const fToVes: readonly string[] =
  'calf half elf self shelf leaf sheaf loaf thief wolf wife knife life'.split(' ')

/** Both forms are in use; the commoner first (the choice is from memory of American dictionaries). */
export const fTwoForms: ReadonlyMap<string, readonly [string, string]> = new Map([
  ['scarf', ['scarves', 'scarfs']],
  ['hoof', ['hooves', 'hoofs']],
  ['dwarf', ['dwarves', 'dwarfs']],
  ['wharf', ['wharves', 'wharfs']],
])

/** They end like one of the list above and are no compound of it. */
export const fKeeps: ReadonlySet<string> = new Set(['lowlife', 'still-life', 'behalf'])

export const oAddsEs: ReadonlySet<string> = new Set(
  'potato tomato hero superhero antihero echo torpedo veto embargo no go negro'.split(' '),
)

export const oTwoForms: ReadonlyMap<string, readonly [string, string]> = new Map(
  `volcano:es tornado:es mosquito:es mango:es cargo:s zero:s domino:es halo:s motto:s flamingo:s desperado:es
  grotto:es innuendo:es memento:s fresco:es lasso:s banjo:s manifesto:s avocado:s hobo:es tuxedo:s portico:es
  archipelago:s dodo:s ghetto:s`
    .split(/\s+/)
    .map(entry => {
      const [word = '', first] = entry.split(':')
      return [word, first === 'es' ? [`${word}es`, `${word}s`] : [`${word}s`, `${word}es`]]
    }),
)

/** -man that is no man: the plural adds s. */
export const manAddsS: ReadonlySet<string> = new Set(
  `human german roman norman ottoman talisman shaman caiman cayman brahman superhuman subhuman nonhuman
  mussulman toman desman roman mormon yeman hetman ataman turkoman`.split(/\s+/),
)

/** Words in -s that are one thing; without this table an s that follows e or a consonant is taken for a plural. */
export const singularInS: ReadonlySet<string> = new Set(
  `gas bias atlas canvas alias texas kansas christmas pancreas pampas lens mars biceps triceps forceps
  summons ares pus yes mantis lens herpes rabies diabetes hercules molasses bus plus minus isosceles sas
  cosmos chaos ethos pathos asbestos thermos rhinoceros albatross mas vas carcass sis mrs ms dais ibis
  bathos cutlass reis gris las apropos oops alas whereas perhaps always`.split(/\s+/),
)

/** One thing that ends in -men; other words in -men are plurals of -man. */
export const endsInMen: ReadonlySet<string> = new Set(
  'specimen omen abdomen regimen stamen acumen ramen amen cyclamen dolmen bitumen albumen lumen foramen'.split(
    ' ',
  ),
)

/** ch is /k/: for words whose pronunciation is not given. */
export const chIsK: ReadonlySet<string> = new Set(
  'stomach monarch epoch patriarch matriarch oligarch eunuch loch tech czech mach hitech almanach pibroch'.split(
    ' ',
  ),
)

export type IrregularKind = 'changes inside' | 'irregular ending' | 'stays the same'

export interface IrregularPlural {
  readonly forms: readonly string[]
  readonly kind: IrregularKind
}

export const irregularPlurals: ReadonlyMap<string, IrregularPlural> = new Map([
  ...entries(changedInside, 'changes inside'),
  ...entries(ownEnding, 'irregular ending'),
  ...entries(sameForm, 'stays the same'),
  ...entries(sameFormOrRegular, 'stays the same'),
])

/** Plural to singular, for the irregular ones: feet, children, wolves are read as plurals already. */
export const singularOfIrregular: ReadonlyMap<string, string> = new Map(
  [...irregularPlurals]
    .filter(([, plural]) => plural.kind !== 'stays the same')
    .flatMap(([singular, plural]) => plural.forms.map(form => [form, singular] as const)),
)

function entries(
  table: Readonly<Record<string, string>>,
  kind: IrregularKind,
): readonly (readonly [string, IrregularPlural])[] {
  return Object.entries(table).map(([word, forms]) => [word, { forms: forms.split(' '), kind }])
}

/** Verb forms that are things to count as well: two readings, three servings. From general knowledge. */
export const countedDoings: ReadonlySet<string> = new Set(
  `being opening reading writing drawing painting building meeting feeling hearing finding heading saving beating cutting
  setting offering ending blessing filling bearing crossing gathering dealing beginning ruling casting lining happening
  showing closing teaching listing rating testing greeting hanging serving spelling swelling shaving topping coating
  wrapping trimming helping outing fitting recording landing warning sighting marking printing etching clearing
  turning carving covering leaning longing lodging footing posting saying stocking railing`.split(/\s+/),
)
