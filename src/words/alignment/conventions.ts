/**
 * What is settled by convention where more than one cut of a word could be defended. The inventory carries them out;
 * here they are written down with a word that shows each, its graphemes as `letters:SOUND+SOUND`, `-` for none.
 * Reasons without a source are common practice in primary teaching.
 */
export interface Convention {
  readonly rule: string
  readonly word: string
  readonly graphemes: string
  readonly reason: string
}

export const conventions: readonly Convention[] = [
  {
    rule: 'A team of letters that stands for one sound is one grapheme, silent letters included',
    word: 'knight',
    graphemes: 'kn:N igh:AY t:T',
    reason: 'The teacher marks the k with the n and the gh with the i',
  },
  {
    rule: 'A silent consonant goes with the consonant after it, or before it at the end: lk lm lf ld bt pt st ft sw tw, mb mn gn',
    word: 'walk',
    graphemes: 'w:W a:AO lk:K',
    reason: 'Charts of silent letters list the pair, not the lone letter',
  },
  {
    rule: 'A letter that is silent in a few words only stands alone and is called an exception',
    word: 'island',
    graphemes: 'i:AY s:- l:L a:AH n:N d:D',
    reason: 'No team can be taught from one word',
  },
  {
    rule: 'A silent e is a grapheme of its own without a sound, at the end, before -s and inside compounds',
    word: 'something',
    graphemes: 's:S o:AH m:M e:- th:TH i:IH ng:NG',
    reason: 'It is marked as one part of the split pattern (o_e), or as silent',
  },
  {
    rule: 'It is one too after a soft c or g and after a silent-e vowel team',
    word: 'dance',
    graphemes: 'd:D a:AE n:N c:S e:-',
    reason: 'What the e does is a finding (soft c), not a second letter of the sound; dge alone keeps its e',
  },
  {
    rule: 'Final ie, oe, ue, ee, ye and eye are vowel teams, the e included',
    word: 'tried',
    graphemes: 't:T r:R ie:AY d:D',
    reason: 'The e belongs to the vowel and no consonant stands between',
  },
  {
    rule: 'que, gue and ngue at the end of a word are one grapheme',
    word: 'league',
    graphemes: 'l:L ea:IY gue:G',
    reason: 'Two silent letters go with the consonant that they follow',
  },
  {
    rule: 'gu before e, i or a spells G, the u silent; in guy the u goes with the y, as in buy',
    word: 'guess',
    graphemes: 'gu:G e:EH ss:S',
    reason: 'The u only keeps the g hard',
  },
  {
    rule: 'A doubled consonant is one grapheme, unless both letters sound',
    word: 'accident',
    graphemes: 'a:AE c:K c:S i:IH d:D e:AH n:N t:T',
    reason: 'cc in soccer is one sound, in accident two',
  },
  {
    rule: 'A vowel and the r that colours it are one grapheme with both sounds, or with ER',
    word: 'marsh',
    graphemes: 'm:M ar:AA+R sh:SH',
    reason: 'r-controlled vowels are taught as one',
  },
  {
    rule: 'A short e or i, and a short a before rr, stays apart from the r that begins the next syllable',
    word: 'very',
    graphemes: 'v:V e:EH r:R y:IY',
    reason: 'The vowel keeps its short sound; in parent, hero and story it does not',
  },
  {
    rule: 'Long i and the diphthongs stay apart from the r',
    word: 'fire',
    graphemes: 'f:F i:AY r:R e:-',
    reason: 'The vowel keeps its sound, so i_e can be marked',
  },
  {
    rule: 'rr stands alone before a vowel sound, unless vowel and rr are the one sound ER',
    word: 'carry',
    graphemes: 'c:K a:AE rr:R y:IY',
    reason: 'It is a doubled consonant; in hurry urr spells one sound',
  },
  {
    rule: 'A weak vowel and the r that opens the stressed syllable after it are two graphemes',
    word: 'around',
    graphemes: 'a:AH r:R ou:AW n:N d:D',
    reason:
      'a·round: the r belongs to the second syllable and colors nothing; the dictionary wavers (arrest, erase)',
  },
  {
    rule: 'A weak vowel and r that are one sound, ER, are one grapheme, also before a weak vowel',
    word: 'memory',
    graphemes: 'm:M e:EH m:M or:ER y:IY',
    reason: 'One sound is one box, as the dictionary has it',
  },
  {
    rule: '-ed is one grapheme when it spells T or D, and two when it is a syllable',
    word: 'jumped',
    graphemes: 'j:JH u:AH m:M p:P ed:T',
    reason: 'One grapheme a sound: jumped T, played D, wanted IH D',
  },
  {
    rule: 'ti, ci, si, ssi, sci, shi, ce, ge, gi before a vowel spell one consonant sound',
    word: 'nation',
    graphemes: 'n:N a:EY ti:SH o:AH n:N',
    reason: 'The i is not heard',
  },
  {
    rule: 't spells CH, d JH and s SH or ZH before u',
    word: 'picture',
    graphemes: 'p:P i:IH c:K t:CH ur:ER e:-',
    reason: 'ur keeps its place as the r-controlled vowel',
  },
  {
    rule: '-le after a consonant is one grapheme with the two sounds AH L, also before -s and -d',
    word: 'tables',
    graphemes: 't:T a:EY b:B le:AH+L s:Z',
    reason: 'The consonant-le syllable stays in sight',
  },
  {
    rule: 'u spells Y and UW together, or Y and AH',
    word: 'music',
    graphemes: 'm:M u:Y+UW s:Z i:IH c:K',
    reason: 'The letter says its name, which has two sounds',
  },
  {
    rule: 'x is K S, G Z or Z; xc, xh and xi are one grapheme when their second letter is not heard by itself',
    word: 'excellent',
    graphemes: 'e:EH xc:K+S e:AH ll:L e:AH n:N t:T',
    reason: 'The c adds nothing to the x',
  },
  {
    rule: 'qu is K W, or K',
    word: 'quick',
    graphemes: 'qu:K+W i:IH ck:K',
    reason: 'q does not stand without u',
  },
  {
    rule: 'n before g or k that is sounded spells NG alone',
    word: 'finger',
    graphemes: 'f:F i:IH n:NG g:G er:ER',
    reason: 'The g keeps its own sound',
  },
  {
    rule: 'u with the glide of its name before r is one grapheme with the r, Y UH R, also before a vowel',
    word: 'curious',
    graphemes: 'c:K ur:Y+UH+R i:IY ou:AH s:S',
    reason: 'It is a vowel with its r, as in jury: one piece, one sound as taught',
  },
  {
    rule: 'm in -sm and -thm spells AH M',
    word: 'rhythm',
    graphemes: 'rh:R y:IH th:DH m:AH+M',
    reason: 'The weak vowel has no letter',
  },
  {
    rule: 'An apostrophe belongs to the letter after it, at the end of a word to the letter before it; no grapheme crosses it',
    word: "don't",
    graphemes: "d:D o:OW n:N 't:T",
    reason: 'It opens the shortened part',
  },
  {
    rule: 'A hyphen belongs to the letter before it; no grapheme crosses it',
    word: 'ping-pong',
    graphemes: 'p:P i:IH ng-:NG p:P o:AO ng:NG',
    reason: 'It is printed where the first part ends',
  },
]
