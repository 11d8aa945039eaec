/**
 * Which pronunciation comes first where no rule of preferences.ts can tell. `heteronyms` are spelled alike and are
 * different words, or different uses of one, when said: the teacher chooses, and until she does the first is taken,
 * the commoner in speech to children (common practice, no source). Each use: ARPABET, then in brackets what it means.
 * All are in the dictionary but the quarrel called a row.
 */
export interface Use {
  readonly pronunciation: string
  /** In plain words, empty where there is one meaning. */
  readonly meaning: string
}

const heteronymTable = `
abuse      AH0 B Y UW1 Z (to treat badly) | AH0 B Y UW1 S (bad treatment)
address    AE1 D R EH2 S (where somebody lives) | AH0 D R EH1 S (to speak to)
advocate   AE1 D V AH0 K AH0 T (one who speaks for) | AE1 D V AH0 K EY2 T (to speak for)
ally       AE1 L AY0 (a friend in need) | AH0 L AY1 (to join with)
alternate  AO1 L T ER0 N AH0 T (every other) | AO1 L T ER0 N EY2 T (to take turns)
appropriate AH0 P R OW1 P R IY0 AH0 T (fitting) | AH0 P R OW1 P R IY0 EY2 T (to take)
associate  AH0 S OW1 S IY0 AH0 T (a partner) | AH0 S OW1 S IY0 EY2 T (to connect)
bass       B AE1 S (a fish) | B EY1 S (a low voice)
beloved    B IH0 L AH1 V D (loved) | B IH0 L AH1 V AH0 D (dear)
bow        B OW1 (a knot, or for arrows) | B AW1 (to bend forward)
bowed      B AW1 D (bent forward) | B OW1 D (curved)
bows       B OW1 Z (knots, or for arrows) | B AW1 Z (bends forward)
buffet     B AH0 F EY1 (a meal laid out) | B AH1 F AH0 T (to knock about)
close      K L OW1 Z (to shut) | K L OW1 S (near)
closer     K L OW1 S ER0 (nearer) | K L OW1 Z ER0 (one who shuts)
combat     K AA1 M B AE0 T (a fight) | K AH0 M B AE1 T (to fight)
compact    K AH0 M P AE1 K T (packed) | K AA1 M P AE0 K T (a small case)
complex    K AA1 M P L EH0 K S (a group of buildings) | K AH0 M P L EH1 K S (not simple)
compound   K AA1 M P AW0 N D (made of parts) | K AH0 M P AW1 N D (to add to)
conduct    K AA0 N D AH1 K T (to lead) | K AA1 N D AH0 K T (how one behaves)
conflict   K AA1 N F L IH0 K T (a struggle) | K AH0 N F L IH1 K T (to disagree)
console    K AH0 N S OW1 L (to comfort) | K AA1 N S OW0 L (a control panel)
content    K AH0 N T EH1 N T (pleased) | K AA1 N T EH0 N T (what is inside)
contest    K AA1 N T EH0 S T (a game to win) | K AH0 N T EH1 S T (to argue against)
contract   K AA1 N T R AE2 K T (an agreement) | K AH0 N T R AE1 K T (to shrink)
contrast   K AA1 N T R AE0 S T (a difference) | K AH0 N T R AE1 S T (to compare)
convert    K AH0 N V ER1 T (to change) | K AA1 N V ER0 T (one who has changed)
convict    K AA1 N V IH0 K T (a prisoner) | K AH0 N V IH1 K T (to find guilty)
decrease   D IH0 K R IY1 S (to get smaller) | D IY1 K R IY2 S (a loss)
delegate   D EH1 L AH0 G AH0 T (one who is sent) | D EH1 L AH0 G EY2 T (to hand on)
deliberate D IH0 L IH1 B ER0 AH0 T (on purpose) | D IH0 L IH1 B ER0 EY2 T (to think over)
desert     D EH1 Z ER0 T (dry land) | D IH0 Z ER1 T (to leave)
digest     D AY0 JH EH1 S T (to break down food) | D AY1 JH EH0 S T (a short version)
discount   D IH1 S K AW0 N T (money off) | D IH0 S K AW1 N T (to leave out)
dove       D AH1 V (a bird) | D OW1 V (did dive)
duplicate  D UW1 P L AH0 K AH0 T (a copy) | D UW1 P L AH0 K EY2 T (to copy)
elaborate  IH0 L AE1 B R AH0 T (with many parts) | IH0 L AE1 B ER0 EY2 T (to say more)
escort     EH1 S K AO0 R T (one who goes with) | EH0 S K AO1 R T (to go with)
estimate   EH1 S T AH0 M AH0 T (a careful guess) | EH1 S T AH0 M EY2 T (to guess carefully)
excuse     IH0 K S K Y UW1 Z (to forgive) | IH0 K S K Y UW1 S (a reason)
excuses    IH0 K S K Y UW1 S IH0 Z (reasons) | IH0 K S K Y UW1 Z IH0 Z (forgives)
extract    IH0 K S T R AE1 K T (to take out) | EH1 K S T R AE2 K T (what is taken out)
graduate   G R AE1 JH AH0 W EY2 T (to finish school) | G R AE1 JH AH0 W AH0 T (one who has finished)
import     IH1 M P AO2 R T (goods brought in) | IH2 M P AO1 R T (to bring in)
impact     IH1 M P AE0 K T (a hit) | IH2 M P AE1 K T (to have an effect)
increase   IH2 N K R IY1 S (to grow) | IH1 N K R IY2 S (a gain)
insert     IH2 N S ER1 T (to put in) | IH1 N S ER2 T (what is put in)
insult     IH1 N S AH2 L T (a rude remark) | IH2 N S AH1 L T (to be rude to)
intimate   IH1 N T AH0 M AH0 T (close) | IH1 N T AH0 M EY2 T (to hint)
invalid    IH1 N V AH0 L AH0 D (a sick person) | IH2 N V AE1 L AH0 D (not valid)
lead       L IY1 D (to go in front) | L EH1 D (a metal)
learned    L ER1 N D (did learn) | L ER1 N IH0 D (who has learned much)
live       L IH1 V (to be alive) | L AY1 V (living; as it happens)
lives      L AY1 V Z (more than one life) | L IH1 V Z (is alive)
minute     M IH1 N AH0 T (sixty seconds) | M AY0 N UW1 T (very small)
moderate   M AA1 D ER0 AH0 T (not too much) | M AA1 D ER0 EY2 T (to make milder)
moped      M OW1 P T (did mope) | M OW1 P EH0 D (a small motorcycle)
object     AA1 B JH EH0 K T (a thing) | AH0 B JH EH1 K T (to speak against)
perfect    P ER1 F IH2 K T (without fault) | P ER0 F EH1 K T (to make so)
permit     P ER0 M IH1 T (to allow) | P ER1 M IH2 T (a written leave)
polish     P AA1 L IH0 SH (to make shine) | P OW1 L IH0 SH (from Poland)
present    P R EH1 Z AH0 N T (a gift; here; now) | P R IY0 Z EH1 N T (to give or show)
presents   P R EH1 Z AH0 N T S (gifts) | P R IY0 Z EH1 N T S (gives or shows)
produce    P R AH0 D UW1 S (to make) | P R OW1 D UW0 S (fruit and vegetables)
progress   P R AA1 G R EH2 S (getting on) | P R AH0 G R EH1 S (to get on)
project    P R AA1 JH EH0 K T (a plan) | P R AH0 JH EH1 K T (to throw forward)
protest    P R OW1 T EH2 S T (a show against) | P R AH0 T EH1 S T (to speak against)
read       R IY1 D (now) | R EH1 D (in the past)
rebel      R EH1 B AH0 L (one who fights rule) | R IH0 B EH1 L (to fight rule)
recall     R IH0 K AO1 L (to remember) | R IY1 K AO2 L (a calling back)
record     R EH1 K ER0 D (a disc; a best) | R IH0 K AO1 R D (to set down)
records    R EH1 K ER0 D Z (discs; bests) | R IH0 K AO1 R D Z (sets down)
refund     R IY1 F AH2 N D (money back) | R IH0 F AH1 N D (to pay back)
refuse     R AH0 F Y UW1 Z (to say no) | R EH1 F Y UW2 Z (rubbish)
reject     R IH0 JH EH1 K T (to turn down) | R IY1 JH EH0 K T (what is turned down)
resume     R IH0 Z UW1 M (to go on) | R EH1 Z AH0 M EY2 (a list of one's work)
row        R OW1 (a line; to pull oars) | R AW1 (a noisy quarrel)
separate   S EH1 P ER0 IH0 T (apart) | S EH1 P ER0 EY2 T (to set apart)
sow        S OW1 (to plant) | S AW1 (a mother pig)
subject    S AH1 B JH IH0 K T (what it is about) | S AH0 B JH EH1 K T (to make undergo)
suspect    S AH0 S P EH1 K T (to think likely) | S AH1 S P EH2 K T (one who is suspected)
tear       T IH1 R (from the eye) | T EH1 R (to rip)
tears      T IH1 R Z (from the eyes) | T EH1 R Z (rips)
transfer   T R AE1 N S F ER0 (a move) | T R AE0 N S F ER1 (to move)
transport  T R AE1 N S P AO0 R T (carrying) | T R AE0 N S P AO1 R T (to carry)
upset      AH0 P S EH1 T (to disturb; sad) | AH1 P S EH2 T (a surprise)
use        Y UW1 Z (to put to work) | Y UW1 S (what it is good for)
uses       Y UW1 Z IH0 Z (puts to work) | Y UW1 S IH0 Z (what it is good for)
wind       W IH1 N D (moving air) | W AY1 N D (to turn)
winds      W IH1 N D Z (moving air) | W AY1 N D Z (turns)
wound      W UW1 N D (a hurt) | W AW1 N D (did wind)
`

/** Words of one meaning whose order in the dictionary would mislead. */
const exceptionTable = `
africa     AE1 F R IH0 K AH0
casual     K AE1 ZH AH0 W AH0 L
casualties K AE1 ZH AH0 W AH0 L T IY0 Z
corps      K AO1 R
costume    K AA1 S T UW0 M
direct     D AH0 R EH1 K T
direction  D AH0 R EH1 K SH AH0 N
directive  D AH0 R EH1 K T IH0 V
director   D AH0 R EH1 K T ER0
directory  D AH0 R EH1 K T ER0 IY0
enough     IH0 N AH1 F
fine       F AY1 N
florist    F L AO1 R IH0 S T
hers       HH ER1 Z
our        AW1 R
ow         AW1
psalm      S AA1 M
putting    P UH1 T IH0 NG
re         R IY1
really     R IY1 L IY0
seawater   S IY1 W AO2 T ER0
sometimes  S AH1 M T AY2 M Z
stronger   S T R AO1 NG G ER0
theories   TH IY1 ER0 IY0 Z
theory     TH IY1 ER0 IY0
turret     T ER1 AH0 T
umbrella   AH0 M B R EH1 L AH0
unfair     AH0 N F EH1 R
ye         Y IY1
`

export const heteronyms: ReadonlyMap<string, readonly Use[]> = readTable(heteronymTable)
export const firstPronunciations: ReadonlyMap<string, readonly Use[]> = readTable(exceptionTable)

function readTable(table: string): ReadonlyMap<string, readonly Use[]> {
  const words = new Map<string, readonly Use[]>()
  for (const line of table.trim().split('\n')) {
    const word = line.slice(0, line.indexOf(' '))
    words.set(word, line.slice(word.length).split('|').map(readUse))
  }
  return words
}

function readUse(written: string): Use {
  const [, pronunciation, meaning] = /^([A-Z0-2 ]+?)(?: \((.+)\))?$/.exec(written.trim())!
  return { pronunciation: pronunciation!, meaning: meaning ?? '' }
}
