/**
 * What `find` and the drafts of clues leave out. A teacher may still study and print any of these words: they are
 * only never offered. The choice is ours, on the careful side, for children of five to nine.
 */

/** Words that the published list flags and that are ordinary school words. */
export const fitAfterAll: ReadonlySet<string> = new Set(
  `balls banging crack cracker dike flasher gross guinea guineas nook oral peck pixie pixy radical radicals
  ribbed smack snatch spades stroking swallow swallower swallows tinkle tinkers trap whites septic septics
  fruitcake flange jig jigs kumquat cumquat nip scallywag sooty spit spitter welfare whiz squinty chunky
  beanbag beanbags rigger stringer screw`.split(/\s+/),
)

/** Bases by topic; their regular endings are left out with them. */
const blockedBases = `
violence: poison poisonous fatal lethal deceased
violence: kill murder shoot gun gunman rifle pistol revolver shotgun handgun machinegun bullet bomb bomber grenade
violence: missile warhead weapon ammo ammunition holster sniper dynamite explosive explode explosion
violence: stab strangle choke suffocate torture abuse assault victim massacre slaughter slay slayer assassin
violence: assassinate assassination execute execution executioner hostage hijack hijacker kidnap kidnapper kidnapping terror
violence: terrorist terrorism terrorize homicide manslaughter arson suicide suicidal bleed bloody bloodshed gore gory
violence: corpse coffin casket funeral cemetery graveyard morgue autopsy mortuary undertaker burial die dead death
violence: dying died deadly deathbed war warfare wartime warrior combat genocide holocaust lynch behead
violence: dagger machete cannon torpedo troops guerrilla militia ambush invade invasion riot mob mobster gangster
violence: bloodbath bloodstain murderous stalker stalking firearm cremate hearse coroner hanged
violence: gang mafia thug hitman noose gallows crucify mutilate maim brutal brutality savage vicious violent violence
violence: cruelty shootout shooting gunshot gunfire gunpoint gunned stabbed drown doom perish
crime: crime criminal convict felony felon prison prisoner inmate jail jailer parole rob robber robbery burglar
crime: burglary mugger mugging blackmail ransom bribe bribery smuggle smuggler fugitive handcuff handcuffs custody
crime: suspect warrant alibi fraud forgery theft extortion accomplice perjury traitor treason
drugs: coke drug addict addiction addictive cocaine heroin morphine opium marijuana cannabis meth amphetamine steroid
drugs: narcotic cigarette cigar tobacco nicotine vape overdose junkie dealer dope stoned stoner hash hashish pill
drugs: crackhead smoker smoking ecstasy hangover sedate sedative rehab
alcohol: beer wine whiskey whisky vodka rum gin liquor bourbon brandy tequila champagne cocktail booze boozer drunk
alcohol: drunken drunkard alcohol alcoholic alcoholism saloon martini keg brewery brewer ale pub tavern bartender
alcohol: barmaid sherry cognac scotch liqueur margarita sober intoxicate intoxicated tipsy
gambling: casino poker gamble gambler gambling bookie roulette blackjack jackpot
sex: condom moan flirt sex sexy sexual sexually sexuality naked nude nudity lover lust breast bra panty panties lingerie thong virgin
sex: virginity erotic seduce seduction orgasm intimate intimacy mistress prostitute prostitution brothel pimp porn
sex: hooker stripper striptease pregnant pregnancy puberty womb abortion adultery affair incest fetish bosom
sex: nipple testicle penis vagina genital rectum anus groin crotch hump horny kinky arouse aroused erect erection
sex: hooters boobs tits honeymoon bachelor contraceptive fertility bikini underpants undies
sex: slut tramp cleavage playboy screwing lesbian rape rapist molest foreplay fetus cocks kink spanking spank
body: butt bum buttocks pee poop poo fart puke vomit barf snot turd urine urinate urinary diarrhea
body: enema feces manure armpit constipated menstrual tampon
illness: cancer tumor leukemia aids hiv syphilis herpes plague leprosy insane insanity lunatic psycho psychotic
illness: psychopath coma amputate amputation paralyzed schizophrenia
unkind: freaky ghetto chubby lame stupid stupidity idiot idiotic dumb dummy moron loser jerk ugly fat fatso fatty retard retarded freak weirdo
unkind: imbecile dimwit nitwit cripple crippled geek dork sissy wimp brat scum filthy filth bastard bitch crap damn
unkind: damned damnation goddamn hell hellish ass arse asshole piss pissed suck sucker screwed shit whore
unkind: hag spinster hobo hillbilly redneck gypsy midget heathen pervert creep creepy
fear: devil demon demonic satan satanic occult evil vampire zombie exorcist
hatred: racist racism nazi slave slavery fascist supremacist segregation bigot apartheid
`

/**
 * Names for people by faith, origin or love. Nothing is unfit in them; they are left out of lists of examples because
 * children turn them against each other.
 */
const peopleNames =
  'gay homosexual bisexual transsexual queer jew jewish muslim heterosexual heathen negro oriental eskimo redskin squaw'

const endings = ['s', 'es', 'd', 'ed', 'ing', 'er', 'ers', "'s"]

/** Every blocked word with its regular endings; the caller keeps those that are words. */
export function blockedWords(): ReadonlySet<string> {
  const bases = blockedBases
    .trim()
    .split('\n')
    .flatMap(line => line.slice(line.indexOf(': ') + 2).split(/\s+/))
  const blocked = new Set<string>()
  for (const base of [...bases, ...peopleNames.split(' ')]) {
    blocked.add(base)
    for (const ending of endings) blocked.add(base + ending)
    if (base.endsWith('e'))
      for (const ending of ['ed', 'ing', 'er', 'ers']) blocked.add(base.slice(0, -1) + ending)
    if (/[^aeiou][aeiou][bdgmnpt]$/.test(base))
      for (const ending of ['ed', 'ing', 'er', 'ers', 'y']) blocked.add(base + base.slice(-1) + ending)
    if (/[^aeiou]y$/.test(base))
      for (const ending of ['ies', 'ied', 'ier']) blocked.add(base.slice(0, -1) + ending)
  }
  for (const word of fitThoughBuilt) blocked.delete(word)
  return blocked
}

/** Built from a blocked base by letters alone, and something else. */
const fitThoughBuilt = new Set(
  'butter buttered buttering buttery ginger summer brass robes robed wares warm warmer warming ward pubs gored'.split(
    ' ',
  ),
)
