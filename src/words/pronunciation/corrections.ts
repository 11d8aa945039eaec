/**
 * Where the CMU Pronouncing Dictionary's entry is a slip: a sound lost or added that no speaker of General American
 * loses or adds, or a vowel that the word's parts have not. Each stands instead of the dictionary's own. From memory,
 * against the parts (court + ship, door + knob).
 */
const table = `
airlock      EH1 R L AA2 K
antimatter   AE2 N T IY0 M AE1 T ER0
anybody      EH1 N IY0 B AA2 D IY0
backstreet   B AE1 K S T R IY2 T
beautifully  B Y UW1 T AH0 F AH0 L IY0
beyond       B IH0 Y AA1 N D
caterpillars K AE1 T ER0 P IH2 L ER0 Z
cliques      K L IY1 K S
colouring    K AH1 L ER0 IH0 NG
consciences  K AA1 N SH AH0 N S IH0 Z
courtship    K AO1 R T SH IH2 P
diaper       D AY1 AH0 P ER0
disembodied  D IH2 S IH0 M B AA1 D IY0 D
doorknob     D AO1 R N AA2 B
doorknobs    D AO1 R N AA2 B Z
dudes        D UW1 D Z
elementary   EH2 L AH0 M EH1 N T ER0 IY0
emotionally  IH0 M OW1 SH AH0 N AH0 L IY0
excellency   EH1 K S AH0 L AH0 N S IY0
forerunner   F AO1 R R AH2 N ER0
fundraising  F AH1 N D R EY2 Z IH0 NG
growling     G R AW1 L IH0 NG
hotshot      HH AA1 T SH AA2 T
hotshots     HH AA1 T SH AA2 T S
housewarming HH AW1 S W AO2 R M IH0 NG
insignificant IH2 N S IH0 G N IH1 F IH0 K AH0 N T
makeover     M EY1 K OW2 V ER0
mansions     M AE1 N SH AH0 N Z
mowing       M OW1 IH0 NG
nightshade   N AY1 T SH EY2 D
nightshirt   N AY1 T SH ER2 T
nightshirts  N AY1 T SH ER2 T S
onward       AA1 N W ER0 D
ostrich      AA1 S T R IH0 CH
outshine     AW2 T SH AY1 N
pirouette    P IH2 R UW0 EH1 T
plainclothes P L EY1 N K L OW2 DH Z
rainforest   R EY1 N F AO2 R AH0 S T
reunion      R IY0 Y UW1 N Y AH0 N
reunions     R IY0 Y UW1 N Y AH0 N Z
reunite      R IY2 Y UW0 N AY1 T
reunited     R IY2 Y UW0 N AY1 T IH0 D
reunites     R IY2 Y UW0 N AY1 T S
reuniting    R IY2 Y UW0 N AY1 T IH0 NG
saltwater    S AO1 L T W AO2 T ER0
saturday     S AE1 T ER0 D EY2
saturdays    S AE1 T ER0 D EY2 Z
solely       S OW1 L L IY0
southpaw     S AW1 TH P AO2
spacesuit    S P EY1 S S UW2 T
spacesuits   S P EY1 S S UW2 T S
storefront   S T AO1 R F R AH2 N T
synapse      S IH1 N AE0 P S
tensions     T EH1 N SH AH0 N Z
tern         T ER1 N
thunderbolt  TH AH1 N D ER0 B OW2 L T
thundershower TH AH1 N D ER0 SH AW2 ER0
thundershowers TH AH1 N D ER0 SH AW2 ER0 Z
trowel       T R AW1 AH0 L
unknowns     AH0 N N OW1 N Z
unpaved      AH0 N P EY1 V D
warlock      W AO1 R L AA2 K
warlocks     W AO1 R L AA2 K S
wormhole     W ER1 M HH OW2 L
wormholes    W ER1 M HH OW2 L Z
`

export const corrections: ReadonlyMap<string, string> = new Map(
  table
    .trim()
    .split('\n')
    .map(line => {
      const [word = '', ...sounds] = line.split(/ +/)
      return [word, sounds.join(' ')] as const
    }),
)
