/**
 * Where the CMU Pronouncing Dictionary's entry is a slip: a sound lost or added that no speaker of General American
 * loses or adds, or a vowel that the rest of its family has not (want, wanted). Each stands instead of the
 * dictionary's own. From memory, against the word's parts (court + ship).
 */
const table = `
antimatter   AE2 N T IY0 M AE1 T ER0
backstreet   B AE1 K S T R IY2 T
beyond       B IH0 Y AA1 N D
caterpillars K AE1 T ER0 P IH2 L ER0 Z
cliques      K L IY1 K S
colouring    K AH1 L ER0 IH0 NG
consciences  K AA1 N SH AH0 N S IH0 Z
courtship    K AO1 R T SH IH2 P
disembodied  D IH2 S IH0 M B AA1 D IY0 D
falling      F AO1 L IH0 NG
forerunner   F AO1 R R AH2 N ER0
giraffe      JH AH0 R AE1 F
giraffes     JH AH0 R AE1 F S
honking      HH AA1 NG K IH0 NG
honks        HH AA1 NG K S
hotshot      HH AA1 T SH AA2 T
hotshots     HH AA1 T SH AA2 T S
housewarming HH AW1 S W AO2 R M IH0 NG
insignificant IH2 N S IH0 G N IH1 F IH0 K AH0 N T
mansions     M AE1 N SH AH0 N Z
narrowed     N AE1 R OW0 D
narrower     N AE1 R OW0 ER0
narrowing    N AE1 R OW0 IH0 NG
narrowly     N AE1 R OW0 L IY0
narrows      N AE1 R OW0 Z
nightshade   N AY1 T SH EY2 D
nightshirt   N AY1 T SH ER2 T
nightshirts  N AY1 T SH ER2 T S
ostrich      AA1 S T R IH0 CH
outshine     AW2 T SH AY1 N
pirouette    P IH2 R UW0 EH1 T
plainclothes P L EY1 N K L OW2 DH Z
poor         P UH1 R
poorer       P UH1 R ER0
poorest      P UH1 R AH0 S T
poorhouse    P UH1 R HH AW2 S
poorly       P UH1 R L IY0
saturday     S AE1 T ER0 D EY2
saturdays    S AE1 T ER0 D EY2 Z
solely       S OW1 L L IY0
solemnly     S AA1 L AH0 M L IY0
southpaw     S AW1 TH P AO2
spacesuit    S P EY1 S S UW2 T
spacesuits   S P EY1 S S UW2 T S
swamped      S W AA1 M P T
synapse      S IH1 N AE0 P S
tensions     T EH1 N SH AH0 N Z
tern         T ER1 N
thundershower TH AH1 N D ER0 SH AW2 ER0
thundershowers TH AH1 N D ER0 SH AW2 ER0 Z
trowel       T R AW1 AH0 L
unknowns     AH0 N N OW1 N Z
unpaved      AH0 N P EY1 V D
volunteering V AA2 L AH0 N T IH1 R IH0 NG
wanted       W AA1 N T IH0 D
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
