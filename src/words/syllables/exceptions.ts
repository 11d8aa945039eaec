/**
 * Words that the rules would divide otherwise than a dictionary does. A word may stand with two divisions, one for
 * each number of vowel sounds it is said with (ev·ery, ev·er·y). Common practice, no source.
 */
const table = `
ev·ery ev·er·y
an·oth·er
Wednes·day
Eng·lish
Eng·land
go·ril·la
eve·ning
for·ev·er
busi·ness
up·on
with·in
with·out
it·self
be·yond
wher·ev·er
knowl·edge
fail·ure
morn·ing
dur·ing
of·fi·cer
tak·en
shak·en
wak·en
dis·as·ter
mo·ron
sta·tus
po·et·ry
per·son·al·i·ty
noth·ing
ceil·ing
i·ron
re·al·ize
wait·ress
pub·lic·i·ty
in·sur·ance
guid·ance
sub·ma·rine
glob·al
home·stead
shep·herd
out·ra·geous
con·gress·man
anx·ious
ham·burg·er
dis·ease
loos·en
dic·tion·ar·y
thiev·ing
sail·or
nerv·ous
an·y·bod·y
ac·knowl·edge
cho·rus
mil·lion·aire
sup·pos·ed·ly
trans·la·tion
trans·late
cig·a·rette
re·al·i·ty
re·al·is·tic
mus·cle
teen·age
teen·aged
teen·ag·er
teen·ag·ers
brace·let
brace·lets
anx·i·e·ty
anx·i·e·ties
tem·po·rar·y
tem·po·rar·i·ly
con·tem·po·rar·y
mem·o·rize
in·ter·fer·ence
ex·cel·len·cy
res·i·den·cy
i·mag·ine
i·mag·ined
i·mag·in·ing
i·mag·i·na·tion
i·mag·i·nar·y
i·mag·i·na·tive
coun·sel·or
coun·sel·ors
`
export const exceptions: ReadonlyMap<string, readonly (readonly string[])[]> = new Map(
  table
    .trim()
    .split('\n')
    .map(line => {
      const divisions = line
        .toLowerCase()
        .split(' ')
        .map(division => division.split('·'))
      return [divisions[0]!.join(''), divisions] as const
    }),
)
