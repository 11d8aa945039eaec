/**
 * Which letters may spell which sounds: one grapheme a line, each of its sounds with a word that shows it.
 * This is the part that is decided by hand; how likely each pair is, is learned (grapheme-weights.ts).
 * `-` is no sound. A condition stands in brackets; conditions.ts says what it means.
 * The conventions behind the choices, with their reasons, are in conventions.ts.
 */
export const inventory = `
a     AE hat | EY paper | AA father | AO ball | AH about | EH any | IH message | - basically [between consonants] | AY naive
aa    AA salaam | AH isaac
aar   AA R bazaar | EH R aaron
ae    EY reggae | EH aesthetic | IY algae | AY maestro | AH michael
aer   EH R aerial | ER aerobics
ah    AA hurrah | AH sarah
ai    EY rain | EH said | AH mountain | AY aisle | AE plaid | IH bargain
aigh  EY straight
air   EH R hair
ao    AW lao
aoh   OW pharaoh
aor   AO R extraordinary
ar    AA R car | AO R warm | EH R care | ER dollar
arr   AA R barred [closed] | ER arrive
arrh  ER diarrhea
au    AO sauce | AE aunt | AH because | AA because | EY gauge | OW chauffeur | AW sauerkraut
augh  AO caught | AA caught
aur   AO R dinosaur | ER restaurant
aw    AO law | AA awful
ay    EY day | EH says | AY papaya | IY yesterday
aye   AY aye | EY faye
ayer  EH R prayer
b     B bat
bb    B rabbit
bp    P subpoena
bt    T debt
c     K cat | S city | CH cello | SH appreciate
cc    K soccer | CH cappuccino
cch   K zucchini
ce    SH ocean | S noticeable [before a o u]
ch    CH chin | K school | SH chef | HH chanukah | - yacht
ci    SH special | CH ancient
ck    K duck
cqu   K W acquire | K lacquer
ct    T indict
cz    Z czar | CH czech
d     D dog | JH education
dd    D ladder
ddh   D buddha
dg    JH badger
dge   JH bridge
dh    D gandhi
di    JH soldier
dj    JH adjust
e     EH bed | IY me | AH taken | IH pretty | EY cafe | AA entree | - make [silent e]
ea    IY sea | EH head | EY great | IH really
eah   AE yeah
ear   IH R year | IY R ear | EH R bear | AA R heart | ER earth
earr  IH R earring | IY R earring
eau   Y UW beauty | OW bureau | AH bureaucratic
ed    D played [past] | T jumped [past]
ee    IY see | IH been | EY matinee
eer   IH R deer | IY R seer
eh    EH eh
ei    IY ceiling | EY vein | AY either | EH heifer | AH foreign | IH forfeit
eigh  EY eight | AY height
eir   EH R their | IH R weird
eo    IY people | EH leopard | AH luncheon | OW yeoman
eor   IH R theory
er    ER her | EH R there [closed] | IH R hero [not at the beginning] | IY R here [closed] | AA R sergeant
err   ER deferred | EH R err [closed]
et    EY ballet [final]
eu    UW neutral | Y UW feud | OY freud
eur   Y UH R europe | UH R neural | ER amateur
ew    UW flew | Y UW few | OW sew
ey    IY key | EY they | EH they're | AY geyser
eye   AY eye
f     F fan | V of
ff    F puff
ft    F often
g     G gap | JH gem | ZH genre
ge    JH pigeon [before a o u] | ZH bourgeois [before a o u]
gg    G egg | JH exaggerate
gh    G ghost | F laugh | P hiccough | - hugh
gi    JH region [before a o u]
gm    M phlegm
gn    N sign | N Y lasagna
gu    G guess [before a e i o]
gue   G league [final]
h     HH hat | - honest [first or after a vowel]
i     IH sit | AY mind | IY ski | AH animal | Y million | - aspirin [between consonants]
ia    IH marriage | AH parliament | AY diamond
ie    IY field | AY pie | EH friend | IH sieve | AH mischief
ier   IH R pier | IY R tier
ieu   UW lieu
iew   Y UW view
igh   AY night
ir    ER bird | IH R souvenir [closed]
irr   ER squirrel
j     JH jam | Y hallelujah | ZH bonjour | HH navajo
k     K kit
kh    K khaki
kk    K trekked
kn    N knee
l     L leg | AH L ticklish
ld    D could
le    AH L table [after a consonant]
lf    F half
lk    K walk
ll    L bell | - tortilla
lm    M calm
ln    N lincoln
lv    V halve
m     M mud | AH M prism
mb    M lamb
mm    M hammer
mn    M autumn | N mnemonic
n     N net | NG finger | AH N didn't | N Y senor
ng    NG sing
ngh   NG dinghy
ngue  NG tongue [final]
nn    N dinner
o     AA hot | OW go | AO dog | AH son | UW do | UH wolf | IH women | W AH one | - chocolate [between consonants]
oa    OW boat | AO broad
oar   AO R board | ER cupboard
oe    OW toe | UW shoe | AH does | IY phoenix | EH oedipus
oh    OW oh | AA john
oi    OY coin | W AY choir | AH tortoise | W AA croissant
oir   W AA R memoir
olo   ER colonel
oo    UW moon | UH book | AH blood | OW brooch
ooh   UW pooh
oor   AO R door | UH R moor | UW R poor
or    AO R for | ER word
orr   ER correct | AO R abhorred [closed]
orrh  ER hemorrhage
ou    AW out | UW soup | AH young | OW soul | UH could | AO cough | AA cough | Y UW houston | IH luscious
ough  OW though | UW through | AO bought | AA bought | AW drought
our   AO R four | UH R tour | ER journey | UW R velour
ow    OW snow | AW cow | AA knowledge
oy    OY boy | AY coyote
p     P pig
pb    B cupboard
ph    F phone | P shepherd | V stephen
pn    N pneumonia
pp    P happy
pph   F sapphire
ps    S psalm
pt    T receipt
q     K iraq
qu    K W quick | K mosquito
que   K antique [final]
r     R red | ER hour [after a vowel sound]
re    ER acre [after a consonant]
rh    R rhyme
ro    ER iron
rr    R carrot
rrh   R hemorrhage
s     S sun | Z rose | SH sugar | ZH measure | IH Z boss's [word end] | AH Z fox's [word end]
sc    S scene | SH fascist
sch   SH kirsch
sci   SH conscious
se    SH nauseous [before a o u]
sh    SH ship | ZH cashmere
shi   SH fashion
si    ZH vision | SH tension
ss    S grass | Z scissors | SH pressure
ssi   SH mission
st    S listen
sw    S sword
t     T top | CH picture | SH negotiate
tch   CH match
te    CH righteous [before a o u]
th    TH thin | DH this | T thomas | T TH eighth | - asthma
ti    SH nation | CH question | ZH equation
ts    Z tsar | S tsunami
tsch  CH kitsch
tt    T kitten
tth   TH matthew
tw    T two
u     AH cup | UW flu | Y UW music | UH put | Y AH regular | IH busy | EH bury | W language | AH W usually | - awfully [between consonants] | Y AH W genuine
ua    Y AH valuable
ue    UW blue | Y UW value
ueue  Y UW queue
ui    UW fruit | IH build | AH biscuit
uo    UW buoy
uor   UH R fluorescent | AO R fluoride
uoy   OY buoyant
ur    ER turn | UH R jury | Y UH R cure | Y ER figure
urr   ER hurry
uu    Y UW vacuum
uy    AY buy
v     V van
vv    V savvy
w     W wet
wh    W when | HH who | HH W wheat
wr    R write
x     K S box | G Z exam | Z xylophone | G ZH luxury
xc    K S excellent
xh    G Z exhibit | K S exhibition
xi    K SH anxious
y     Y yes | IY happy | AY my | IH gym | AH vinyl
ye    AY bye [word end]
yr    ER martyr
z     Z zip | S waltz | T S nazi | ZH seizure
zz    Z buzz | T S pizza
`
