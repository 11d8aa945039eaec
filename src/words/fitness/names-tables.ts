/** First names, surnames and places that are also rare words; speech nearly always means the name. From general knowledge. */
export const mostlyNames: ReadonlySet<string> = new Set(
  `hank parker harris wally hayes slater sanders bannister hicks tucker toby chester trey ana les li sol rube
  bullock mack felicity jasmine pat ling min bonnie gale harper palmer coca buster jade drake mills hicks
  pierre lois stella lana lola leah joyce iris john jack harry mike tom ben bob christ jimmy henry max bobby
  billy nick martin phoebe carter anna brad sue mac sally rick marshall maria donna charlotte terry ruth
  jenny josh kirk jersey victor jean daphne ken benny meg beth murphy troy manhattan dexter homer randy
  franklin hector roman august collins benjamin dale chad perry bailey walt jock jerry tony joe peter paul
  steve jim larry veronica graham nelson cooper chandler griffin sherlock brazil berlin napoleon merlin
  gilbert sawyer turner skinner dolly dickie erica warner brent fay cassie fanny tammy marc maxwell lulu
  rosemary shanghai clarence burke christian jasper marge coco dixie wright patsy tanner timothy chevy
  newton lambert langley fowler khan ira davenport amelia wolfram batman superman hamlet garrison balboa
  playboy geneva democratic republican benedict viola amazon yahoo mina dirk ritz paddy oxford bartlett
  browning morocco jonah fabian goliath conn kat twain malik trinity columbo pacific atlantic andromeda milo
  deb pentagon cupid stifler bach morgan thatcher cartwright pollock cox emery watt ridley curie hogan mecca
  dickens lucifer mavis kris stoker gabby liza angelica cisco primo serge cicero crick savannah manila
  chapman swede derrick becket brogan medina mesa castor louvre welch siamese congo kali amir zeppelin silva
  chile pascal chou spam garibaldi medusa burgess napa xerox britt lats althea brit laguna keno velcro
  esquire google tesla waterloo flagstaff saratoga bolivia somerset whitehead hawking kraft fuller yank
  judas pete phil stan tim dan sam jay perrin smith wilson davis boston dallas vegas holmes watson berg
  muller hogg hale cole wesson jess abraham adam alan alfred alice amanda andrew angela ann anthony arthur
  barbara barry brian bruce carl catherine charles chris christine claire craig daniel dave david dennis
  diana donald doug edward elizabeth ellen emily emma eric eva fred gary george gloria greg harold helen
  howard ian jacob jake james jamie jane jason jeff jennifer jeremy jessica jill joan johnny jonathan jordan
  joseph julia julian justin karen kate kathy keith kelly kevin kim kyle laura lauren leo leon leonard linda
  lisa louis louise lucas lucy luke lynn margaret maria marie mary matt matthew megan melissa michael
  michelle molly nancy natalie nathan neil nicole noah oliver oscar pam patrick paula philip rachel ralph
  rebecca richard robert roger ronald ross roy russell ryan samantha samuel sandra sara sarah scott sean
  sharon shirley simon sophie stephanie stephen steven stuart susan ted teresa theodore thomas tina todd
  tracy tyler valerie vanessa victoria vincent virginia walter warren wendy william sid sal mel del jed mae
  meg nan nat ned nell pam roz ron vic zac joey danny tommy sammy eddie kenny freddy betty peggy cindy judy
  susie abby annie maggie doris frances apache monte collier germans japan mo las synchro butch`.split(/\s+/),
)

/** Adjectives and nouns written with a capital: peoples, faiths, days, months, feasts. */
export const properAdjectives: ReadonlySet<string> = new Set(
  `english french german spanish italian chinese japanese american british irish scottish scotch dutch danish
  swiss swedish russian greek roman latin indian mexican canadian african asian european australian arab
  arabic hebrew jewish christian catholic protestant muslim buddhist hindu korean turkish norwegian
  hungarian victorian egyptian cuban brazilian portuguese austrian belgian monday tuesday wednesday thursday
  friday saturday sunday mondays tuesdays wednesdays thursdays fridays saturdays sundays january february
  april june july august september october november december christmas easter thanksgiving halloween
  hanukkah ramadan passover xmas god jesus christ allah satan santa congress senate mars venus jupiter
  saturn neptune uranus internet`.split(/\s+/),
)
