/**
 * Our own drafts for everyday words whose dictionary gloss is too learned for a class (a frog is there a tailless
 * stout-bodied amphibian). Written for this project; they come before the lexicon's.
 */
const table = `
accident: something bad that nobody meant to happen
adventure: an exciting trip, full of surprises
air: what we breathe
airplane: it flies people from city to city
airport: where planes land and take off
anchor: a heavy hook that holds a boat in its place
angle: the corner where two lines meet
animal: a living thing that moves and eats
ant: a tiny insect that lives in a big group
apartment: a home on one floor of a big building
ape: a large animal like a monkey with no tail
apple: a round fruit that grows on a tree
apron: you wear it to keep clean when you cook
arm: it joins your hand to your shoulder
attic: the room right under the roof
audience: the people who watch a show
baby: a very young child
background: what you see behind the main thing in a picture
backup: help that is kept ready
bacon: thin strips of meat, fried for breakfast
badge: a small sign that you pin on your clothes
bag: you carry things in it
bait: food put on a hook to catch fish
baker: a person who makes bread and cakes
bakery: a shop that makes and sells bread
balance: what you need to walk along a beam
ball: a round toy that you throw or kick
balloon: fill it with air and it floats
banana: a long yellow fruit
band: a group that plays music
bank: a place that keeps money safe
barbecue: a meal cooked outside over hot coals
barge: a flat boat that carries loads
bark: the sound a dog makes
barn: a farm building for hay and animals
barrel: a big round box made of wood
baseball: a game with four bases and a bat
basement: the lowest floor, under the ground
basket: you carry things in it, often woven
bat: a small animal that flies at night
bath: you sit in it to get clean
bathroom: the room with the sink and tub
batter: a thin mix of flour, eggs and milk
beach: sandy land beside the sea
bead: a tiny ball with a hole, for a string
beak: a bird's mouth
bean: a seed that we eat as food
bear: a big, heavy animal with thick fur
beard: hair on a man's chin
beast: a large, wild animal
beaver: an animal that builds dams with its teeth
bed: you sleep in it
bee: an insect that makes honey
beef: meat from a cow
bell: it rings
belly: the front of your body, under the ribs
belt: you wear it around your waist
bench: a long seat for two or more people
bike: it has two wheels and you ride it
bingo: a game of calling and covering squares
bird: an animal with wings and feathers
blanket: a warm cover for a bed
blood: the red liquid inside your body
boat: it carries people on water
body: all of a person or an animal
bone: a hard part inside your body
book: pages to read, inside a cover
boot: a shoe that covers part of the leg
bottle: a tall glass holder for a drink
bowl: a deep round dish
box: it has flat sides and a lid
boy: a young man, still a child
brain: the part of you that thinks
branch: a part of a tree that grows from the trunk
bread: food baked from flour and water
breakfast: the first meal of the day
breath: the air that goes in and out of you
brick: a hard block for building walls
bridge: a road over water
broom: a brush with a long handle
brother: a boy with the same parents as you
brush: it has bristles and you clean or paint with it
bucket: you carry water in it
budget: a plan for spending money
buffalo: a big wild ox with a shaggy coat
bug: a small insect
bulb: it grows into a plant, or gives light
bun: a small round bread
bunny: a small, soft rabbit
buoy: it floats to show boats the safe way
burger: a round piece of meat in a bun
bus: a big car that carries many people
butter: a yellow spread made from cream
button: a small round thing that closes a shirt
cab: a car that you pay to ride in
cabin: a small house made of wood
cage: a box with bars for an animal
cake: a sweet food for birthdays
camel: a desert animal with a hump
candle: a stick of wax that burns and gives light
candy: something small and sweet to eat
cape: a coat without sleeves, or land that juts into the sea
captain: the leader of a ship or a team
car: it has four wheels and an engine
card: a stiff piece of paper, often with words on it
carpet: thick, soft cloth that covers a floor
carrot: a long orange root that we eat
castle: a huge stone house with towers
cat: a pet that purrs
cattle: cows and bulls
cave: a hollow place in a rock or a hill
cellar: a cool room under a house
certificate: a paper that says what you have done
chair: a seat for one person
chalk: you write with it on a board
cheek: the side of your face
cheese: food made from milk
cherry: a small red fruit with a stone
chest: the front of your body, or a big box
chick: a baby bird
chicken: a farm bird that lays eggs
child: a young person
childhood: the years when you are young
children: boys and girls
chin: the part of your face under your mouth
church: a building where people pray
city: a very big town
clam: a sea animal with two shells
clay: soft earth for making pots
clerk: a person who works at a store counter
cliff: a high, steep wall of rock
clock: it tells the time
cloth: shirts and sheets are made of it
cloud: a white or gray shape in the sky
clown: he makes people laugh at the circus
coach: a person who trains a team
coal: black rock that burns
coast: the land beside the sea
coat: you wear it outside when it is cold
cocoa: a hot drink that tastes of chocolate
coffee: a hot, brown drink that wakes grown-ups up
coin: a round piece of money
cold: not warm
college: a school to go to after high school
comb: you tidy your hair with it
concert: music played for many people
conversation: a talk between people
cookie: a small, flat, sweet cake
corn: yellow seeds that grow on a cob
cotton: soft white stuff that cloth is made from
couch: a long soft seat
country: a land with its own people and flag
cow: a farm animal that gives milk
cowboy: a person on a horse who looks after cattle
crab: a sea animal with a shell and two claws
crane: a tall bird, or a machine that lifts things
crate: a big wooden box
creek: a small river
cricket: an insect that chirps
crow: a big black bird
crown: a king wears it on his head
crumb: a tiny bit of bread or cake
crust: the hard outside of bread
crystal: a clear stone with flat sides
cup: you drink from it
curb: the edge of the road
dad: a father
daddy: what a small child calls a father
dairy: a place where milk is kept
dancer: a person who moves to music
deck: the floor of a boat
deer: a forest animal with thin legs
den: a wild animal's home
dentist: a person who takes care of your teeth
desk: a table where you write
detective: a person who finds out who did it
dew: drops of water on the grass in the morning
dial: the round face of a clock or a meter
diamond: a clear, hard stone that sparkles
dinner: the biggest meal of the day
disease: something that makes you sick
dish: a plate or a bowl
dive: jump in head first
dock: a place where boats tie up
doctor: a person who helps the sick
dog: a pet that barks
doll: a toy that looks like a person
dollar: one hundred cents
dolphin: a clever sea animal that leaps
donut: a ring of sweet fried bread
door: you open it to go in
dough: flour and water, mixed to be baked
dragon: a story animal that breathes fire
dragonfly: a long insect with four clear wings
drawer: a box that slides in and out of a desk
drum: you beat it to make music
duck: a bird that swims and quacks
duke: a man of very high rank
dune: a hill of sand
eagle: a big bird with sharp eyes and claws
ear: you hear with it
earth: the planet we live on
egg: a bird hatches from it
elbow: the place where your arm bends
elephant: a huge animal with a trunk
elevator: a small room that carries you up and down
end: the last part of anything
engineer: a person who plans bridges or machines
equipment: all the things you need to do a job
explanation: words that tell why or how
eye: you see with it
face: the front of your head
factory: a building where things are made
fairy: a tiny person with wings, in stories
farewell: what you say when you leave
farm: a place with fields and animals
farmer: a person who grows food
father: a man who has a child
feather: a bird has many of these
feet: you have two of them, with five toes on each
fence: it goes around a garden or a field
fern: a green plant with feathery leaves
ferry: a boat that takes people across the water
festival: a special day with music and food
field: a wide piece of open land
fighter: one who never gives up
fin: a fish swims with it
finger: one of five on your hand
fire: hot, bright flames
fish: an animal that swims and has fins
flag: a piece of cloth that stands for a country
floor: you walk on it inside a house
flour: white powder made from wheat
flower: the pretty part of a plant
fog: a thick cloud close to the ground
food: what we eat
foot: it has five toes
football: a game with a ball that is not round
forest: a place with many trees
fork: you eat with it
fort: a strong place, built to keep enemies out
fox: a wild animal with a red coat and bushy tail
fridge: it keeps your food cold
friend: someone you like to be with
frog: a small green animal that hops and swims
fruit: apples, pears and plums
fur: an animal's thick, soft hair
furniture: tables, chairs and beds
game: something you play
garage: a place to keep a car
garden: a place where plants and flowers grow
gate: a door in a fence
gentleman: a polite man
ghost: it says boo in stories
giraffe: a tall animal with a very long neck
girl: a young woman, still a child
glass: you can see through it
glove: it keeps a hand warm
glue: it sticks things together
goal: what you are trying to reach
goat: a farm animal with horns and a beard
goose: a bird with a long neck that honks
government: the people who run a country
grain: a seed of wheat or corn
grandchild: the son or daughter of your own child
grape: a small fruit that grows in bunches
grass: green plants that cover a lawn
group: some people or things together
guitar: you play music on its strings
gull: a white sea bird
gum: you chew it
guy: a man or a boy
gymnast: a person who tumbles and swings on bars
hair: it grows on your head
ham: meat from a pig
hammer: a tool that hits nails
hand: it has five fingers
harbor: a safe place for boats
hat: you wear it on your head
hawk: a bird that hunts
hay: dry grass that horses eat
head: it holds your brain, eyes and ears
health: being well and not sick
heart: it beats in your chest
hen: a mother chicken
hero: a brave person
heron: a tall gray bird that stands in the water
hill: land that is higher than the rest
hive: a home for bees
hockey: a game with curved sticks on ice
hole: an empty place in something
homework: what you do for school after school
honey: sweet food made by bees
hood: it keeps your head dry, on the back of a coat
hook: a bent piece of metal that catches things
horn: a hard, pointed part on an animal's head
horse: a big animal that people ride
hospital: a place for sick people
host: a person who has guests
hotel: a place where travelers sleep
house: a building to live in
hull: the body of a ship
hunter: one who looks for animals to catch
hut: a very small house
ice: frozen water
inch: one of twelve in a foot
insect: a small animal with six legs
island: land with water all around it
jacket: a short coat
jam: sweet fruit to spread on bread
jar: a glass holder with a lid
jazz: lively music with a swing
jeep: a car for rough roads
jelly: a sweet food that shakes
jet: a very fast plane
jewelry: rings, pins and chains to wear
juice: a drink made from fruit
jungle: a hot, wet, thick forest
key: it opens a lock
kidney: a part of your body that cleans the blood
king: a man who rules a land
kitchen: the room where you cook
kite: it flies on a string in the wind
kitten: a baby cat
kitty: a young cat
knee: the place where your leg bends
knife: a tool that cuts
knight: long ago he fought in armor
knot: what you tie in a rope
knowledge: all that you have learned
lace: you tie your shoe with it
ladder: you climb up its steps
lake: water with land all around it
lamb: a baby sheep
lamp: it gives light
lance: the long spear of a knight
laundry: clothes that need to be washed
lawn: the short grass around a house
leader: the one whom the others follow
leaf: a flat green part of a plant
leather: the skin of an animal, made into shoes and belts
leg: you stand on it
legend: a very old story
lemon: a sour yellow fruit
letter: you write it and mail it
lettuce: green leaves for a salad
lid: it covers a pot or a jar
lighter: a small tool that makes a flame
lighthouse: a tower that warns ships at night
lily: a tall flower shaped like a cup
lime: a sour green fruit
lion: a big wild cat with a mane
lip: the edge of your mouth
lizard: a small animal with four legs and a long tail
loaf: bread baked in one piece
lobster: a sea animal with large claws
lock: you open it with a key
log: a thick piece of a tree
lunch: the meal in the middle of the day
machine: a thing with parts that does a job for you
magazine: thin, with pictures, and a new one every month
magic: making things happen by a spell
magnet: it pulls iron to it
makeup: paint for the face
mama: a mother
map: a drawing that shows where places are
marsh: soft, wet land
mask: it hides your face
mason: a person who builds with stone
mast: the tall pole on a ship
match: a small stick that makes a flame
math: working with numbers
medal: a round piece of metal for a winner
melon: a big, round, juicy fruit
metal: iron, gold or silver
mice: small animals with long tails, more than one
midnight: twelve o'clock, in the dark
milk: a white drink from a cow
miller: a person who grinds grain
mirror: you can see yourself in it
mist: thin fog
mitten: a warm glove with no fingers
mole: a small animal that digs tunnels
mom: a mother
mommy: what a small child calls a mother
money: you pay with it
monkey: a clever animal that swings in trees
monster: a scary thing in a story
moon: it shines in the sky at night
moose: a huge deer
mop: you wash the floor with it
moss: soft green plants on wet stones
moth: an insect like a butterfly that flies at night
mother: a woman who has a child
mouse: a tiny animal with a long tail
mouth: you eat and talk with it
mud: soft, wet earth
muffin: a small round cake
mug: a big cup with a handle
mummy: a body wrapped in cloth, long ago
muscle: a part of the body that makes you move
museum: a building full of old and rare things
music: sounds that are sung or played
mystery: something that nobody can explain
nail: it holds wood together
nanny: a person paid to take care of a child
napkin: you wipe your mouth with it
nature: plants, animals, and all that people did not make
neck: it holds up your head
necklace: beads or a chain to wear
needle: a thin, sharp tool for sewing
nest: a bird's home
net: string tied so that it catches fish
nose: you smell with it
nurse: a person who cares for the sick
nut: a seed in a hard shell
oak: a big tree that grows from an acorn
oar: you row a boat with it
object: a thing that you can see and touch
ocean: the biggest kind of sea
octopus: a sea animal with eight arms
office: a room where people work
oil: a thick liquid that does not mix with water
onion: a round vegetable that makes you cry
orange: a round, juicy fruit
otter: a furry animal that swims and eats fish
oven: you bake in it
owl: a bird that hunts at night
ox: a strong farm animal that pulls a cart
oxygen: the part of the air that we need to live
oyster: a sea animal that may hold a pearl
paddle: you push a small boat along with it
page: one side of a sheet in a book
paint: color that you put on with a brush
palace: the home of a king or queen
pan: you fry food in it
panda: a black and white bear
papa: a father
paper: you write or draw on it
parrot: a bright bird that can talk
partner: someone who works or plays with you
party: a time to have fun with friends
pasta: noodles of many shapes
path: a way to walk along
patience: waiting without a fuss
paw: an animal's foot
pea: a small, round, green seed that we eat
peach: a soft, round fruit with a stone
pear: a sweet fruit, narrow at the top
pearl: a round white gem from the sea
pebble: a small round stone
pen: you write with its ink
pencil: you write with it and can rub it out
penguin: a black and white bird that cannot fly
penny: one cent
phoenix: a bird of stories that rises out of the fire
photo: a picture taken with a camera
photograph: a picture taken with a camera
piano: a big instrument with black and white keys
pie: fruit or meat baked in a crust
pig: a pink farm animal that oinks
pigeon: a gray bird that lives in cities
pillow: you rest your head on it in bed
pilot: a person who flies a plane
pin: a thin, sharp piece of metal
pine: a tree that stays green all winter
piper: he blew a tune and the rats followed
pirate: a robber on a ship, in stories
pit: a deep hole in the ground
pizza: a flat, round, baked food with cheese
plane: it flies people through the air
planet: the earth is one
plant: it grows in the ground
plastic: bottles and toys are made of it
plate: a flat dish
plow: it turns over the earth in a field
plum: a soft purple fruit
pocket: a small bag sewn into your clothes
pod: it holds peas
poem: words in lines, often with rhymes
poetry: writing with rhythm, and often with rhyme
pond: a small lake
pony: a small horse
pool: a place to swim
popcorn: a snack of corn that bursts when it is hot
porch: a floor with a roof in front of a house
pot: you cook soup in it
potato: it grows in the ground and makes fries
priest: a person who leads people in prayer
prince: the son of a king
professor: a teacher at a college
profit: the money left after the costs are paid
pulse: the beat of your heart, felt at the wrist
pumpkin: a big, round, orange fruit
pup: a baby dog
puppet: a doll that you move with your hand
puppy: a baby dog
puzzle: you fit its pieces together
queen: a woman who rules a land
quilt: a warm cover made of many pieces
rabbit: a small animal with long ears that hops
race: a test of who is fastest
radar: it finds planes and ships in the dark
railroad: steel tracks for trains
rain: water that falls from clouds
rainbow: a band of colors in the sky
rake: you gather leaves with it
ranch: a large farm for cattle or horses
rat: an animal like a big mouse
raven: a large black bird
reed: tall grass that grows in water
reporter: a person who finds out the news
rhythm: the beat of music
ribbon: a long, thin strip of cloth
rice: small white grains that we cook
ring: you wear it on your finger
river: water that flows to the sea
road: cars drive on it
robin: a bird with a red breast
robot: a machine that can move and work
rock: a large stone
rocket: it flies into space
rod: a long, thin stick
roof: the top of a house
room: a part of a house with its own door
root: the part of a plant under the ground
rope: thick, strong string
rose: a flower with thorns
rug: it covers part of a floor
sack: a big bag
saddle: a seat on a horse
sail: a big cloth that catches the wind
sailor: a person who works on a ship
salad: cold leaves and vegetables in a bowl
salary: the money you are paid for your work
salmon: a pink fish
salt: white grains that we put on food
sample: a little bit to try
sand: tiny grains of rock on a beach
sauce: you pour it over food
scarf: you wear it around your neck
scholarship: money that helps a student go to school
school: the place where children learn
scientist: a person who studies how things work
scissors: you cut paper with them
screw: it turns as it goes into wood
sea: a huge area of salt water
seal: a sea animal that barks and eats fish
secretary: a person who types letters in an office
seed: a plant grows from it
sentence: words that tell a whole thought
sergeant: a soldier who gives orders to others
shark: a big fish with sharp teeth
shed: a small building for tools
sheep: a farm animal with wool
sheet: a thin cloth on a bed
shelf: a flat board that holds books
shell: the hard outside of an egg or a snail
ship: a big boat
shirt: you wear it on the top half of your body
shoe: you wear it on your foot
shop: a place that sells things
shore: the land at the edge of the water
shovel: a tool that digs
shrimp: a small pink sea animal
signal: a sign that tells you what to do
silk: very soft, shiny cloth
singer: a person who makes music with the voice
sink: you wash dishes in it
sister: a girl with the same parents as you
skate: move smoothly over ice
ski: slide over snow on a long board
skin: it covers your whole body
skirt: it hangs from the waist
skull: the bones of the head
skunk: a black and white animal that smells bad
sky: it is above us, and blue on a fine day
sled: you ride on it over the snow
sleeve: the part of a shirt that covers your arm
sleigh: horses pull it over the snow
slide: you sit down on it and go down fast
snack: a little food between meals
snail: a small, slow animal with a shell
snake: a long animal with no legs
snow: soft white flakes that fall in winter
soap: you wash with it
soccer: a game in which you kick the ball
sock: you wear it inside your shoe
soda: a sweet drink with bubbles
sofa: a long soft seat
soil: the earth that plants grow in
soup: hot food that you eat with a spoon
spider: an animal with eight legs that spins a web
spoon: you eat soup with it
spring: the season after winter
squid: a sea animal with ten arms
squirrel: a small animal with a bushy tail
staff: all the people who work in one place
stair: one step up or down
star: a tiny light in the night sky
station: where the train stops
steak: a thick slice of meat
steam: what boiling water turns into
steel: a strong metal made from iron
stem: it holds up a flower
stomach: where your food goes when you eat it
stone: a small piece of rock
stool: a seat with no back
storage: a place to keep things for later
stork: a tall white bird with long legs
storm: strong wind and rain
story: it tells what happened
stove: you cook on it
stranger: a person you do not know
straw: you drink through it
stream: a small river
street: a road in a town
string: thin rope
sugar: it makes food sweet
suit: a jacket and pants that match
suitcase: you pack your clothes in it for a trip
summer: the warmest season
sun: it gives us light and warmth
sunset: when the day turns to night
surgeon: a doctor who operates
swamp: wet, soft land with trees
swan: a big white bird with a long neck
sweat: water on your skin when you are hot
sweater: a warm, knitted top
sword: a long, sharp blade with a handle
table: it has legs and a flat top
tail: the long part at an animal's back end
tape: a sticky strip
task: a job to be done
tax: money that people pay to their city or country
taxi: a car that you pay to ride in
tea: a hot drink made from leaves
teacher: a person who helps you learn
teddy: a soft toy bear
teeth: you bite with them
temperature: how hot or cold it is
tent: a cloth house for camping
tern: a small sea bird with a forked tail
thief: a person who steals
throne: a king's seat
thumb: the short, thick finger
thunder: the loud noise after lightning
tide: it makes the sea rise and fall
tiger: a big wild cat with stripes
toad: an animal like a frog with dry, bumpy skin
toast: bread made crisp and brown
toe: one of five on your foot
toilet: it flushes
tomato: a round, red, juicy fruit
tongue: you lick with it
tool: a hammer or a saw
tooth: you bite with it
tournament: games to find out which team is the best
towel: you dry yourself with it
tower: a tall, narrow building
town: a place with many streets and shops
toy: you play with it
tractor: a strong machine that works on a farm
train: it runs on rails
trap: it catches an animal that steps into it
tray: you carry food on it
tree: a tall plant with a trunk
truck: a big car that carries loads
tube: a long, hollow pipe
tug: a small, strong boat that pulls ships
tulip: a spring flower shaped like a cup
tuna: a big sea fish
turkey: a large farm bird
turtle: an animal with a shell on its back
twig: a very small branch
twin: one of two children born together
type: one kind of thing
umbrella: it keeps you dry in the rain
underwear: what you wear beneath your clothes
uniform: the same clothes for everyone on a team
unit: one of a thing, used to measure or count
university: a big school to go to after high school
valentine: a card with a heart on it
valley: low land between hills
van: a car that carries things
vase: you put flowers in it
vest: a jacket without sleeves
violin: you play it with a bow
voice: the sound you make when you speak
wagon: a cart with four wheels
walker: a person who goes on foot
wall: the side of a room
wand: a stick that does magic
warehouse: a big building where things are kept
wasp: a yellow and black insect that stings
water: clear, wet stuff that we drink
wave: water that rises and rolls to the shore
wax: candles are made of it
web: a spider spins it
weed: a plant that grows where you do not want it
week: seven days
weekend: Saturday and Sunday
whale: the biggest animal in the sea
wharf: a place where ships load and unload
wheat: flour is made from it
wheel: it is round and it turns
whistle: it makes a high sound when you blow
wind: air that moves
window: glass that you look out of
wing: a bird flies with it
winter: the coldest season
witch: she rides a broom in stories
wizard: a man in stories who can do magic
wolf: a wild animal like a big dog
woman: a grown girl
women: more than one grown-up lady
wood: what trees are made of
wool: a sheep's thick coat
worm: a long, thin, soft animal in the ground
wreck: what is left of a ship or car after a crash
wren: a tiny brown bird
wrist: it joins your hand to your arm
writer: a person who makes up stories and books
yard: the ground around a house
yarn: you knit with it
yeast: it makes bread rise
yolk: the yellow part of an egg
zebra: an animal with black and white stripes
zipper: it closes a coat
zone: a part of a place, with its own rules
zoo: a place where you can see wild animals
`

export const plainDrafts: ReadonlyMap<string, string> = new Map(
  table
    .trim()
    .split('\n')
    .map(line => {
      const colon = line.indexOf(': ')
      return [line.slice(0, colon), line.slice(colon + 2)] as const
    }),
)
