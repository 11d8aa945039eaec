/**
 * The closed classes: pronouns, determiners, prepositions, conjunctions, modals and forms of be, have and do, numbers,
 * interjections, adverbs of place, time and manner that have no adjective. The order is by use in plain American
 * English, from general knowledge. Possessives (my, their) are pronouns first, as the Common Core State Standards have
 * them (L.1.1d), and demonstratives determiners (L.1.1h).
 */
import { readCodedTable } from './codes.js'

export const closedClasses = readCodedTable(`
p: me myself we us ourselves you yourself yourselves he him himself she it itself they them themselves oneself hers herself
p: mine yours ours theirs who whom whoever whomever someone somebody something anyone anybody anything everyone everybody
p: everything nobody thee thou ye y'all themself ourself whosoever whatsoever
pn: i nothing none self
pd: my your our their its his her thy whose what which whichever whatever another
pdcr: that
dp: this these those many few several some all each any such
dpc: both
dpcr: either neither
dpan: other
d: a an the every
dra: enough
dprn: more most less least
dpra: much
adpr: little
ad: own
e: of at from with into onto upon among amongst amid amidst toward towards during via despite concerning unto
e: underneath versus beside without against throughout alongside atop per
ec: until till except
ce: than
er: in on by about under through across along around behind below beneath between beyond above near inside outside
er: within aboard
ern: over
ren: down
re: up off
erc: after before
reav: past
anve: round
ev: regarding
re: besides
aen: opposite
ecr: as
ecd: for
erp: to
cer: since
cre: but
ce: because
c: and or nor although unless whereas whether if while whilst lest
rc: so however therefore yet when where why how once whenever wherever though
rcn: now
r: not never always often soon then here again away too also ever almost already perhaps maybe quite rather very seldom
r: sometimes somewhere anywhere everywhere nowhere somehow anyhow anyway instead otherwise apart forth
r: afterward afterwards outdoors indoors thus hence moreover furthermore nevertheless nonetheless meanwhile
r: o'clock twice thrice hardly nearly certainly abroad ahead aside aloud anymore altogether likewise ago awhile
r: anytime especially suddenly finally later
ra: just even far together else forward backward
rpn: there
ran: upstairs downstairs only still
rad: inward outward upward downward
rn: upwards downwards forwards backwards indeed
v: am is are was were been isn't aren't wasn't weren't ain't be
v: do does did don't doesn't didn't have has had haven't hasn't hadn't having
v: could would should shall ought couldn't wouldn't shouldn't shan't can't cannot won't mustn't needn't mightn't may
v: let's gonna wanna gotta
vn: can will must might being
pv: i'm i've i'd i'll you're you've you'd you'll he's he'd he'll she's she'd she'll it's it'd it'll we're we've we'd we'll
pv: they're they've they'd they'll that's who's what's who'll who'd that'll
rv: there's here's where's how's when's why's there'll
m: two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen
m: nineteen twenty thirty forty fifty sixty seventy eighty ninety twenty-one twenty-two twenty-three twenty-four
m: twenty-five
mpn: one
mn: zero hundred thousand million billion trillion dozen
arn: first
anm: third fourth fifth sixth seventh eighth ninth tenth
an: eleventh twelfth thirteenth twentieth hundredth
nav: second
arvn: last
ar: next
i: goodnight yup jeez huh oh aha hey hi hooray hurray yay oops ouch ugh yuck phew yippee alas bye uh um hmm shh psst yum yikes gee golly gosh
i: eh ha hah ooh er yo uh-oh bravo aw amen
iv: wow
in: hello goodbye hurrah ah whoa
ir: yep yeah nope nah
irn: yes
drin: no
air: okay
airn: ok
irv: please
rina: well
`)
