import type { Accent } from '../../plan/plan.js'

/**
 * Groups of familiar words that sound the same in General American, as the dictionary has them; read by eye. Left out:
 * two spellings of one word (color, colour), rare words, words unfit for children, and pairs that only some accents
 * merge (caught and cot). A test looks every group up in the dictionary.
 */
const groups = `
to too two | we wee | for four | do due dew | be bee | not knot | here hear | there their they're
so sew sow | right write | him hymn | one won | see sea | would wood | been bin | some sum | or ore oar
way weigh | our hour | by buy bye | wait weight | new knew | made maid | through threw | might mite
course coarse | which witch | real reel | hold holed | son sun | heard herd | whole hole | seen scene
die dye | knows nose | red read | read reed | week weak | dear deer | break brake | hours ours
least leased | war wore | seems seams | died dyed | sweet suite | air heir | sent cent scent | piece peace
past passed | feet feat | road rode rowed | none nun | blue blew | eight ate | plane plain | fair fare
ring wring | sell cell | missed mist | lead led | soul sole | weather whether | board bored | roll role
wine whine | tea tee | bear bare | raise rays | band banned | steal steel | waist waste | hall haul
ways weighs | rain reign | size sighs | sight site | allowed aloud | guest guessed | pair pear pare
sees seas | mail male | pray prey | rights writes | bread bred | tide tied | fourth forth | sale sail
warn worn | tail tale | stairs stares | flower flour | wave waive | throne thrown | loan lone
breaks brakes | wrap rap | packed pact | planes plains | bail bale | council counsel | fairy ferry
stake steak | flu flew | earn urn | pour pore | sore soar | aid aide | principal principle | minor miner
sales sails | toe tow | pole poll | cruise crews | sells cells | medal meddle | manner manor
heal heel he'll | stare stair | cellar seller | rolls roles | cue queue | addition edition | bore boar
chili chilly | aisle isle I'll | ants aunts | tales tails | cord chord | jeans genes | pier peer
vain vein vane | roots routes | waits weights | peak peek | naval navel | toad towed | moose mousse
paws pause | rains reins | altar alter | stakes steaks | sights sites | flea flee | claws clause
flair flare | plum plumb | hangar hanger | laps lapse | sleigh slay | idle idol | gaze gays | pores pours
chords cords | no know | night knight | hair hare | horse hoarse | nights knights | rose rows
groan grown | whale wail | beach beech | creak creek | muscle mussel | berry bury | cereal serial
mane main | meet meat | very vary | weighed wade | sword soared | hi high | I eye | your you're | its it's
whose who's | weave we've | wheel we'll | ewe you yew | hey hay | bolder boulder | bridal bridle
ceiling sealing | fir fur | gate gait | grate great | guys guise | mussels muscles | key quay | links lynx
loot lute | maze maize | mourning morning | paced paste | peal peel | pail pale | pedal peddle
profit prophet | seem seam | sheer shear | tacks tax | teas tease | told tolled | bald bawled
ball bawl | base bass | bough bow | chews choose | days daze | doe dough | fined find | frees freeze
hoes hose | lesson lessen | mind mined | mode mowed | nay neigh | praise prays | roe row | sundae sunday
world whirled | wear where ware | wrote rote | marshal martial
`

/** Those of the groups above that a class tells apart in which wh has its own sound. Common practice, no source. */
const ownWh = new Set('which whale whine whether wheel while whined whales whirled where why'.split(' '))

/** Alike where cot and caught have one vowel. Common practice, no source. */
const alikeWhereMerged = readGroups(`
cot caught | tot taught | stock stalk | hock hawk | nod gnawed | odd awed | rot wrought | collar caller
knotty naughty | chock chalk | sod sawed | clod clawed | wok walk | pod pawed | popper pauper
`)

/** Alike where r is not said before a consonant or at the end. Common practice, no source. */
const alikeWithoutR = readGroups(`
paw pour pore poor | saw sore soar | law lore | raw roar | flaw floor | caught court | sauce source | stalk stork
sought sort | father farther | taught tort | fought fort | spa spar | pa par | ma mar
`)

export const homophoneGroups: readonly (readonly string[])[] = readGroups(groups)

function readGroups(table: string): readonly (readonly string[])[] {
  return table
    .split(/[|\n]/)
    .map(group => group.trim().split(/\s+/))
    .filter(([first]) => first !== '')
}

type SoundAlikes = ReadonlyMap<string, readonly string[]>

function soundAlikes(table: readonly (readonly string[])[]): SoundAlikes {
  const alike = new Map<string, readonly string[]>()
  for (const group of table) {
    for (const word of group) {
      const others = group.filter(other => other !== word)
      alike.set(word.toLowerCase(), [...(alike.get(word.toLowerCase()) ?? []), ...others])
    }
  }
  return alike
}

const inEveryAccent = soundAlikes(homophoneGroups)
const whereMerged = soundAlikes(alikeWhereMerged)
const withoutR = soundAlikes(alikeWithoutR)

/** The other spellings of its sound, if there are any. The word is in lower case. */
export function homophonesOf(word: string, accent?: Accent): readonly string[] {
  const listed = inEveryAccent.get(word) ?? []
  if (accent === undefined) return listed
  return [
    ...(accent.wh === 'own' ? listed.filter(other => ownWh.has(other) === ownWh.has(word)) : listed),
    ...((accent.cotCaught === 'merged' && whereMerged.get(word)) || []),
    ...((!accent.rhotic && withoutR.get(word)) || []),
  ]
}
