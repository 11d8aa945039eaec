/** Base, then past, then past participle when it differs. Two forms in use stand as a/b, the commoner first. From general knowledge. */
const table = `
arise arose arisen;awake awoke awoken;be was/were been;bear bore born/borne;beat beat beaten;become became become
begin began begun;bend bent;bet bet;bind bound;bite bit bitten;bleed bled;blow blew blown;break broke broken
breed bred;bring brought;build built;burn burned/burnt;burst burst;buy bought;cast cast;catch caught
choose chose chosen;cling clung;come came come;cost cost;creep crept;cut cut;deal dealt;dig dug
dive dived/dove dived;do did done;draw drew drawn;dream dreamed/dreamt;drink drank drunk;drive drove driven
dwell dwelt;eat ate eaten;fall fell fallen;feed fed;feel felt;fight fought;find found;fit fit/fitted;flee fled
fling flung;fly flew flown;forbid forbade forbidden;forecast forecast;foresee foresaw foreseen
forget forgot forgotten;forgive forgave forgiven;freeze froze frozen;get got gotten/got;give gave given
go went gone;grind ground;grow grew grown;hang hung;have had;hear heard;hide hid hidden;hit hit;hold held
hurt hurt;keep kept;kneel knelt/kneeled;knit knitted/knit;know knew known;lay laid;lead led
lean leaned;leap leaped/leapt;learn learned/learnt;leave left;lend lent;let let;lie lay lain;light lit/lighted
lose lost;make made;mean meant;meet met;mislead misled;mistake mistook mistaken
misunderstand misunderstood;mow mowed mown/mowed;overcome overcame overcome;oversleep overslept
overtake overtook overtaken;pay paid;prove proved proven/proved;put put;quit quit;read read;rebuild rebuilt
repay repaid;rewrite rewrote rewritten;rid rid;ride rode ridden;ring rang rung;rise rose risen;run ran run
saw sawed sawn/sawed;say said;see saw seen;seek sought;sell sold;send sent;set set;sew sewed sewn/sewed
shake shook shaken;shave shaved;shear sheared shorn;shed shed;shine shone/shined;shoot shot
show showed shown/showed;shrink shrank shrunk;shut shut;sing sang sung;sink sank sunk;sit sat;slay slew slain
sleep slept;slide slid;sling slung;slink slunk;slit slit;smell smelled/smelt;sneak sneaked/snuck
sow sowed sown/sowed;speak spoke spoken;speed sped/speeded;spell spelled/spelt;spend spent
spill spilled/spilt;spin spun;spit spat/spit;split split;spoil spoiled/spoilt;spread spread
spring sprang sprung;stand stood;steal stole stolen;stick stuck;sting stung;stink stank stunk
stride strode stridden;strike struck;string strung;strive strove striven;swear swore sworn;sweep swept
swell swelled swollen;swim swam swum;swing swung;take took taken;teach taught;tear tore torn;tell told
think thought;throw threw thrown;thrust thrust;tread trod trodden;understand understood;undertake undertook undertaken
undo undid undone;unwind unwound;uphold upheld;upset upset;wake woke woken;wear wore worn;weave wove woven
weep wept;wet wet/wetted;win won;wind wound;withdraw withdrew withdrawn;withhold withheld;withstand withstood
wring wrung;write wrote written;outgrow outgrew outgrown;outdo outdid outdone;outrun outran outrun;redo redid redone
retell retold;remake remade;babysit babysat;broadcast broadcast;foretell foretold;overhear overheard
override overrode overridden;overthrow overthrew overthrown;partake partook partaken;spellbind spellbound
`

export interface IrregularVerb {
  readonly past: readonly string[]
  readonly participle: readonly string[]
}

export const irregularVerbs: ReadonlyMap<string, IrregularVerb> = new Map(
  table
    .trim()
    .split(/[;\n]/)
    .map(line => {
      const [base = '', past = '', participle = past] = line.trim().split(' ')
      return [base, { past: past.split('/'), participle: participle.split('/') }] as const
    }),
)
