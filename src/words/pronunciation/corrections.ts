/**
 * Where the CMU Pronouncing Dictionary's entry is a slip: a sound lost or added that no speaker of General American
 * loses or adds. Each stands instead of the dictionary's own. From memory, against the word's parts (court + ship).
 */
const table = `
antimatter   AE2 N T IY0 M AE1 T ER0
backstreet   B AE1 K S T R IY2 T
beyond       B IH0 Y AA1 N D
caterpillars K AE1 T ER0 P IH2 L ER0 Z
colouring    K AH1 L ER0 IH0 NG
consciences  K AA1 N SH AH0 N S IH0 Z
courtship    K AO1 R T SH IH2 P
disembodied  D IH2 S IH0 M B AA1 D IY0 D
forerunner   F AO1 R R AH2 N ER0
hotshot      HH AA1 T SH AA2 T
hotshots     HH AA1 T SH AA2 T S
housewarming HH AW1 S W AO2 R M IH0 NG
insignificant IH2 N S IH0 G N IH1 F IH0 K AH0 N T
mansions     M AE1 N SH AH0 N Z
nightshade   N AY1 T SH EY2 D
nightshirt   N AY1 T SH ER2 T
nightshirts  N AY1 T SH ER2 T S
outshine     AW2 T SH AY1 N
pirouette    P IH2 R UW0 EH1 T
plainclothes P L EY1 N K L OW2 DH Z
solely       S OW1 L L IY0
southpaw     S AW1 TH P AO2
spacesuit    S P EY1 S S UW2 T
spacesuits   S P EY1 S S UW2 T S
synapse      S IH1 N AE0 P S
tensions     T EH1 N SH AH0 N Z
tern         T ER1 N
thundershower TH AH1 N D ER0 SH AW2 ER0
thundershowers TH AH1 N D ER0 SH AW2 ER0 Z
trowel       T R AW1 AH0 L
unknowns     AH0 N N OW1 N Z
unpaved      AH0 N P EY1 V D
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
