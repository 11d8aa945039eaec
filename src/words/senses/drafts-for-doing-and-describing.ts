/** Drafts of clues for everyday verbs and adjectives, each in words of a primary class. Written for this project. */
export const draftsForDoingAndDescribing = `
add: put numbers together
afraid: scared
agree: think the same as somebody else
alert: awake and watching
alike: almost the same
alive: not dead
alone: with nobody else
ancient: very, very old
angry: mad at someone
appear: come where you can be seen
argue: fight with words
arrive: get to a place
ask: say a question
asleep: not awake
avoid: stay away from
awake: not sleeping
awesome: so great that you can hardly believe it
bad: not good
beat: win against somebody
become: turn into
beg: ask and ask
begin: start
believe: think that it is true
belong: be owned by somebody
best: better than all the rest
better: not so bad, or more than good
big: large
bite: use your teeth on something
black: the darkest color
blame: say who did wrong
blind: not able to see
blow: push air out of your mouth
borrow: take for a while and give back
bother: not leave somebody in peace
brave: not afraid
break: make pieces of something
breathe: take in air
bright: full of light
brown: the color of wood and mud
burn: be on fire
bury: put under the ground
busy: having a lot to do
buy: get for money
call: shout a name
calm: quiet and still
careful: watching out, so that nothing goes wrong
carry: hold and take somewhere
catch: get hold of a ball in the air
chase: run after
cheap: not costing much
check: look again to be sure
cheer: shout for your team
choose: pick
claim: say that something is yours
clean: not dirty
clear: easy to see through
clever: quick to learn
climb: go up with hands and feet
close: shut
collect: bring things together, like stamps
come: move to where I am
cook: make food ready over heat
cool: a little cold
correct: right, with no mistake
count: say one, two, three
crash: hit something hard and break
create: make something new
cross: go from one side to the other
cruel: very mean
crush: press until it breaks
cry: have tears in your eyes
curious: wanting to know
cut: use scissors or a knife
dance: move to music
dare: be brave enough
dark: with little or no light
dear: loved very much
decide: make up your mind
deep: far down
defend: keep safe from attack
deliver: bring to the door
deny: say that it is not true
describe: tell what it looks like
different: not the same
difficult: hard to do
dig: make a hole in the ground
disappear: go out of sight
divide: cut into parts
double: two times as much
drag: pull along the ground
draw: make a picture with a pencil
drink: swallow water or milk
drive: make a car go
drop: let fall
dry: not wet
eager: wanting to very much
early: before the usual time
easy: not hard
eat: chew food and swallow it
empty: with nothing inside
enjoy: have fun with
enough: as much as you need
enter: go in
equal: just as much
escape: get away
explain: tell how and why
fail: not be able to do it
fair: the same for everyone
fake: not real
fall: go down by mistake
famous: known by many people
fancy: not plain
far: a long way off
fast: quick
favorite: the one you like best
feel: touch, or be happy or sad
few: not many
fierce: wild and dangerous
fight: hit and kick
fill: make full
find: see what was lost
fine: well and happy
finish: come to the end of
first: before all others
fit: be the right size
fix: make work again
flat: smooth and even, with no bumps
follow: come after
forget: not remember
forgive: stop being angry at
free: costing nothing
freeze: turn to ice
fresh: just made or picked
full: holding as much as it can
funny: making you laugh
gentle: soft and kind
get: come to have
give: hand over to somebody
glad: happy
golden: shiny and yellow
good: not bad
grab: take hold of suddenly
grand: large and fine
grateful: wanting to say thank you
gray: the color of rain clouds
great: very good, or very big
green: the color of grass
grow: get bigger
guess: say what you think without being sure
handsome: nice to look at
happen: take place
happy: glad
hard: not soft, or not easy
hate: not like at all
healthy: well and strong
hear: use your ears
heavy: hard to lift
help: do something for somebody
hide: go where nobody can see you
high: far up
hire: pay a person to work for you
hit: strike
hold: have in your hand
hollow: with nothing inside
honest: telling the truth
hop: jump on one foot
hope: wish for and think it may happen
hot: very warm
huge: very, very big
hungry: wanting food
hunt: look for animals to catch
hurry: go fast because you are late
hurt: give pain
ignore: act as if it were not there
important: mattering a lot
innocent: not having done anything wrong
invite: ask somebody to come
join: come together with
jump: push off the ground with both feet
junior: younger
keep: have and not give away
kick: hit with your foot
kind: nice to others
knock: hit a door with your hand
know: have in your mind and be sure of
large: big
last: after all others
late: after the right time
laugh: what you do at a joke
lay: put down gently
lead: go in front
learn: get to know something new
leave: go away
lend: let somebody use for a while
lie: say what is not true
lift: pick up
like: think that it is nice
listen: try to hear
live: have your home somewhere
lonely: sad because nobody is there
long: not short
look: use your eyes
loose: not tight
lose: not be able to find
loud: easy to hear from far away
love: like very, very much
low: not high
lucky: having good things come by chance
mad: angry
make: put together something new
meet: come together with somebody
mighty: very strong
miserable: very sad
miss: be sad that somebody is not there
mix: stir together
modern: of our own time
move: go from one place to another
narrow: not wide
near: not far
neat: with everything in its place
new: just made or bought
nice: kind and pleasant
notice: see all at once
obey: do as you are told
odd: strange
old: having lived for many years
open: not shut
own: have for yourself
pack: put clothes in a suitcase
pale: with little color
past: gone by
pay: give money for
perfect: with nothing wrong
pick: take the one you want
pink: the color between red and white
plain: with nothing added
play: have fun with toys or a game
pleasant: nice
poor: with little money
pop: burst with a small bang
possible: able to be done
pour: let run out of a jug
practice: do again and again to get better
pretend: make believe
pretty: nice to look at
proud: pleased with what you have done
prove: show that it is true
public: for everyone
pull: make come toward you
punish: make sorry for doing wrong
purple: a mix of red and blue
push: press to make move away
quick: fast
quiet: making little noise
quit: stop doing
raise: lift up
rare: not often seen
reach: stretch out your hand to get
read: look at words and know what they say
ready: all set to begin
real: not make-believe
red: the color of a stop sign
remember: keep in your mind
remove: take away
repeat: say or do again
rest: sit or lie still for a while
return: come back
rich: with a lot of money
ride: sit on a horse or a bike
rip: tear
rise: go up
roll: turn over and over
rotten: gone bad, like an old egg
rough: not smooth
round: like a ball
rude: not polite
run: go faster than a walk
sad: not happy
safe: out of danger
same: not different
save: keep money for later
say: use your voice
scare: make afraid
scratch: rub with a nail or claw
scream: give a loud, high cry
see: use your eyes
seek: look for
sell: give for money
send: make go somewhere by mail
separate: apart from one another
serve: bring food to the table
sew: work with needle and thread
shake: move quickly up and down
share: let others have some of it
sharp: able to cut
shine: give off light
short: not long
shout: call in a loud voice
show: let somebody see
shut: close
shy: afraid to talk to people
sick: not well
silent: without any sound
silly: not making sense, in a funny way
simple: easy
sing: make music with your voice
sit: rest on a chair
skip: hop along, first on one foot, then the other
sleep: what you do in bed at night
slip: slide and fall
slow: not fast
small: little
smart: quick to learn
smile: turn up the corners of your mouth
smooth: with no bumps
snap: break with a sharp sound
soft: not hard
solid: hard all the way through
solve: find the answer to
sorry: feeling bad about what you did
speak: say words
special: not like all the others
spend: pay out money
split: break into two along a line
spread: put all over, like butter on bread
stand: be on your feet
stare: look for a long time
start: begin
stay: not go away
steady: not shaking
steal: take what is not yours
steep: going up sharply, like a hill
stick: hold on, as glue does
stop: not go on
straight: not bent
strange: not like what you know
strike: hit hard
strong: able to lift heavy things
study: read and work to learn
sudden: coming when you do not expect it
sure: knowing that you are right
surprised: not having known what was coming
sweet: tasting like sugar
swim: move through water with arms and legs
take: get hold of and carry away
talk: say words to somebody
tall: high, from head to foot
tame: not wild
teach: help others to learn
tear: pull apart, like paper
tell: let somebody know with words
terrible: very bad
thank: say that you are pleased with what somebody did
thick: not thin
thin: not thick
think: use your mind
third: after the second
thirsty: wanting a drink
throw: make fly through the air with your hand
tie: make a knot
tight: not loose
tiny: very small
tired: needing sleep
touch: feel with your hand
tough: strong and hard to break
travel: go on a trip
true: not false
trust: believe in somebody
try: see if you can do it
turn: go around
ugly: not pretty
unusual: not often seen
useful: good for something
visit: go to see somebody
wait: stay until something happens
wake: stop sleeping
walk: go on foot
want: wish to have
warm: a little hot
warn: tell somebody of a danger
wash: make clean with soap and water
watch: look at for a while
weak: not strong
wear: have on, like a coat
weird: very strange
well: not sick
wet: covered with water
white: the color of snow
whole: with no part missing
wide: far from side to side
wild: not tame
win: come in first
wipe: rub with a cloth
wise: knowing a lot about life
wish: want very much
wonder: want to know
work: do a job
worry: think that something bad may happen
worse: more bad
wrap: cover with paper
write: put words on paper
wrong: not right
yell: shout
yellow: the color of a lemon
young: not old
`
