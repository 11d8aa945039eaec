/**
 * Words that look as if they were made from another word and are not, or no longer are to a child; and the other way
 * round. Read by eye in the findings over the 22,000 most familiar words. Common practice, no source. A star stands
 * for any letters that follow.
 */
export interface WordList {
  readonly has: (word: string) => boolean
}

function wordList(words: string): WordList {
  const all = words.trim().split(/\s+/)
  const whole = new Set(all.filter(word => !word.endsWith('*')))
  const beginnings = new Set(all.filter(word => word.endsWith('*')).map(word => word.slice(0, -1)))
  const lengths = [...beginnings].map(beginning => beginning.length)
  const [shortest, longest] = [Math.min(...lengths), Math.max(...lengths)]
  const beginsAsListed = (word: string): boolean => {
    for (let length = shortest; length <= Math.min(longest, word.length); length += 1) {
      if (beginnings.has(word.slice(0, length))) return true
    }
    return false
  }
  return { has: word => whole.has(word) || beginsAsListed(word) }
}

/** No ending -ed, -ing, -er, -est, -s or -es, beyond those that the recogniser of endings knows. */
export const notInflected = wordList(`
  after power powers peter walter potter miller parker harper oliver former trigger triggers cooper poker easter
  spencer tucker lester heller homer warner alter barber barbers barter crater craters fender jester caper badger
  wander ponder wither pucker terrier clover ledger luger foyer hyper wager saucer saucers bunker bunkers hunker
  rover fowler mercer berger hamburger burger customer customers archer elmer simmer sewer tanner banter tinker
  stutter shutter gutter lumber plumber butcher springer duffer conner diaper layer layers rooster roster pewter
  molest everest tempest harvest reed deed heed politics ewing anew corner latter ladder otter meter flier
  its supper copper spatter manger perrier collier evening morning wedding shilling herring filling inning outing
`)

export const notPrefixed = wordList(`
  understand* understood unless uncanny unis* unit* unif* uniq* univ* until under uncle
  relax* report* record* release* remain* request* refuse* refusing reward* remote* reverse* reversing reversal
  retreat* reveal* repair* recommend* recover* regard* reply* relate* relating relation* rehears* remark* reduc*
  remorse* recit* relay* repent* retir* retail* refin* redeem* resource* restrain* reflex* relie* relying relent*
  restor* remiss* recourse* relapse* refund* revive* reviving revert* remember* rejoice* repeat* reprise* repress*
  represent* remedy* respond* restrict* resolve* revolt* revolv* resist* research* recollect* recreation* redress*
  remit* republic* releas* require* result* retort* rebel* receipt* recess* recoil* reserve* review* revile* revise* retract* rebuff*
  instead intend* intens* intent* inspect* inform informed informs inform informing informer information increas*
  intact intel invent* invest* install* inmate* insect* input insight* inhal* income* incoming inland indoor* insist*
  india* injunct* intake inbound invoic* inquest infiltr* insur* inbred infer* inhabit* infract* infidel* inlet inside*
  induc* inspir* indict* incline* inquir* instant* insult* inch* indeed into intrud* infect* indent* ingest* inscri*
  discuss* disgust* diseas* dismiss* display* disguis* dispatch* distract* dispos* distribut* discord* discard*
  dismantl* disturb* distress* discern* disappoint* district* distant distinct* dispens* dispel* distort* disciple* disaster*
  impress* impact* improv* impuls* imply* impli* impose* imposi* imposing impart imparts impound* impair* import
  imports imported impend* imparted impeach*
  enter* entire* engag* encount* engrav* entail* entry envoy* endur* encore* entr* enchant* engulf* ensign*
  employ* embark* empress* embrac* embod* emboss*
  mister mistress* mission* missing misses missed missile* misty
  pretend* prevent* prevail* prescri* pretens* premis* prepar* present* predict* preced* preface* precinct* presum*
  prefer* pretext prelud* pressed presse* pressing president* press
  submit* submiss* sublim* subscri* subdu* subject* substan* subsist* subtle subside* subsid*
  translat* transpar* transmi* transpond* transfus* transfer* transcri* transit*
  interest* intern interns interpret* interfer* intersect* interval* interrupt*
  supervis* superb superior*
  triton trifl* tribut* trial* triad* tripe seminar* antidot* overtur* nonplus* forego forearm* foreclos*
  midst bishop*
`)

export const notSuffixed = wordList(`
  every ready baby happy party story daddy buddy army copy study lucy merry county kitty navy penny pity steady bunny
  factory fairy daisy lobby battery ruby puppy brandy forty eighty nanny dummy mummy mommy petty phony phoney sissy
  fatty fanny fully felony grocery yummy doggy piggy poppy caddy paddy unity levy pansy putty rummy livery matey
  belly filly birdy gully tabby gory hubby warranty monarchy testy treaty nutty pottery tidy corny goody
  gallery misery fury tiny pony candy glory rally jelly holly curry hobby dizzy posy entry pantry lottery patty potty
  teddy panty hefty hanky dolly bitty shelly rocky smiley husky gravy levy property poetry
  mary johnny danny jimmy joey bobby billy tony tommy gary betty sandy terry nancy jenny judy pacey molly sonny peggy
  benny wally sammy germany manny rusty kenny randy nicky willy missy kathy donny toby gregory tammy cordy whisky
  quincy patsy corky davy ginny granddaddy residency bowery riley woody cady telly carey buffy duffy bucky muffy debby lacy lacey santy coley carney hardy
  holy silly sally only early family reply apply supply bully belly rally jelly lily molly polly fly ally
  happen aren chicken garden ellen steven warren warden kitten maiden raven linen mullen loren linden olden galen
  seamen craven holden siren listen token mitten barren omen women heaven haven dozen pollen sullen stamen semen often
  open even oven seven sudden linens
  mayor mirror motor minor traitor error terror prior armor factor sector pastor tailor tenor valor raptor rigor
  demeanor suitor odor gator nestor equator castor savor manor razor rumor favor tutor honor
  finish british spanish punish rubbish vanish danish irish banish radish perish parish polish relish furnish publish
  garnish cherish finnish skittish
  capable liable portable probable viable amiable table cable stable possible terrible sensible
  canteen forward moment comment department harness witness business bless unless
  spaceship starship battleship flagship warship airship steamship
`)

export const notCompound = wordList(`
  mushroom carpet season bargain format mandate humbug bamboo alphabet assassinate assassin rampage canteen damnation
  forget* forgot* forgiv* forgave forbid* program* permission percent* perform* profile* profound* protest* profess*
  proclaim* perverse* persist* submi* sublim* suburb* subcon* competition composition supervis* mentor contract*
  confound* confess* malpractice malfunction* extraordinary beaucoup thankyou mandrake peewee popeye fanfare beware
  whoopee farewell legend conquest pursuit represent* conduct* relationships* championships* friendships memberships
  subtitle* subway* submarine* cockroach* peacock* partridge* offspring*
`)

/** Both halves are words to a child, but one is short, or has lost some of its sound. */
export const alsoCompound: ReadonlyMap<string, string> = new Map(
  `some+thing no+thing no+body in+to on+to up+on in+side with+in can+not to+day to+night break+fast cup+board fore+head
  any+body post+man police+man fire+man milk+man sales+man chair+man fisher+man gentle+man work+man
  up+stairs up+set up+hill in+doors out+doors sun+day grand+pa grand+ma ice+box ice+berg tea+pot tea+spoon egg+shell
  my+self your+self it+self our+selves your+selves them+selves may+be an+other back+up make+up set+up pick+up clean+up
  check+up line+up grown+up break+up hold+up up+side up+date up+town up+right up+ward up+grade up+coming in+put
  in+come on+line on+stage out+put gentle+men police+men fire+men post+men snow+men sales+men chair+men work+men
  camera+man fresh+man council+man marks+man watch+man sea+man bath+tub tooth+brush tooth+paste hair+brush room+mate
  grand+son grand+daughter grand+dad grand+child new+born rose+bud ear+ring cheese+burger baby+sit baby+sitter
  take+over make+over star+board basket+ball water+melon straw+berry blue+berry black+berry
  bee+hive pea+nut eye+brow eye+lid jelly+fish mid+night neck+lace neck+tie quick+sand waste+basket`
    .split(/\s+/)
    .map(parts => [parts.replaceAll('+', ''), parts.replaceAll('+', ' and ')]),
)
