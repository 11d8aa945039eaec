/**
 * Our own drafts for everyday words whose dictionary gloss is too learned for a class (a frog is there a tailless
 * stout-bodied amphibian). Written for this project; they come before the lexicon's.
 */
const table = `
air: what we breathe
anchor: a heavy hook that holds a boat in its place
animal: a living thing that moves and eats
ant: a tiny insect that lives in a big group
ape: a large animal like a monkey with no tail
apple: a round fruit that grows on a tree
apron: you wear it to keep clean when you cook
arm: it joins your hand to your shoulder
attic: the room right under the roof
badge: a small sign that you pin on your clothes
bag: you carry things in it
bait: food put on a hook to catch fish
bakery: a shop that makes and sells bread
ball: a round toy that you throw or kick
balloon: fill it with air and it floats
banana: a long yellow fruit
band: a group that plays music
bank: a place that keeps money safe
barge: a flat boat that carries loads
bark: the sound a dog makes
barn: a farm building for hay and animals
barrel: a big round box made of wood
basket: you carry things in it, often woven
bat: a small animal that flies at night
batter: a thin mix of flour, eggs and milk
beach: sandy land beside the sea
bead: a tiny ball with a hole, for a string
beak: a bird's mouth
bean: a seed that we eat as food
bear: a big, heavy animal with thick fur
beard: hair on a man's chin
beaver: an animal that builds dams with its teeth
bed: you sleep in it
bee: an insect that makes honey
beef: meat from a cow
bell: it rings
belt: you wear it around your waist
bench: a long seat for two or more people
bike: it has two wheels and you ride it
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
brick: a hard block for building walls
bridge: a road over water
broom: a brush with a long handle
brother: a boy with the same parents as you
brush: it has bristles and you clean or paint with it
bucket: you carry water in it
bug: a small insect
bulb: it grows into a plant, or gives light
bun: a small round bread
buoy: it floats to show boats the safe way
bus: a big car that carries many people
butter: a yellow spread made from cream
button: a small round thing that closes a shirt
cabin: a small house made of wood
cage: a box with bars for an animal
cake: a sweet food for birthdays
camel: a desert animal with a hump
candle: a stick of wax that burns and gives light
cape: a coat without sleeves, or land that juts into the sea
captain: the leader of a ship or a team
car: it has four wheels and an engine
carrot: a long orange root that we eat
castle: a huge stone house with towers
cat: a pet that purrs
cattle: cows and bulls
cave: a hollow place in a rock or a hill
chair: a seat for one person
chalk: you write with it on a board
cheek: the side of your face
cheese: food made from milk
cherry: a small red fruit with a stone
chest: the front of your body, or a big box
chick: a baby bird
chicken: a farm bird that lays eggs
child: a young person
chin: the part of your face under your mouth
church: a building where people pray
city: a very big town
clam: a sea animal with two shells
cliff: a high, steep wall of rock
clock: it tells the time
cloth: shirts and sheets are made of it
cloud: a white or gray shape in the sky
clown: he makes people laugh at the circus
coal: black rock that burns
coast: the land beside the sea
coat: you wear it outside when it is cold
cocoa: a hot drink that tastes of chocolate
coin: a round piece of money
cold: not warm
comb: you tidy your hair with it
cookie: a small, flat, sweet cake
corn: yellow seeds that grow on a cob
cotton: soft white stuff that cloth is made from
couch: a long soft seat
country: a land with its own people and flag
cow: a farm animal that gives milk
crab: a sea animal with a shell and two claws
crane: a tall bird, or a machine that lifts things
crate: a big wooden box
creek: a small river
cricket: an insect that chirps
crow: a big black bird
crown: a king wears it on his head
crumb: a tiny bit of bread or cake
crust: the hard outside of bread
cup: you drink from it
curb: the edge of the road
dairy: a place where milk is kept
deck: the floor of a boat
deer: a forest animal with thin legs
den: a wild animal's home
desk: a table where you write
dew: drops of water on the grass in the morning
dish: a plate or a bowl
dive: jump in head first
dock: a place where boats tie up
doctor: a person who helps the sick
dog: a pet that barks
doll: a toy that looks like a person
dolphin: a clever sea animal that leaps
donut: a ring of sweet fried bread
door: you open it to go in
dough: flour and water, mixed to be baked
dragon: a story animal that breathes fire
dragonfly: a long insect with four clear wings
drum: you beat it to make music
duck: a bird that swims and quacks
dune: a hill of sand
eagle: a big bird with sharp eyes and claws
ear: you hear with it
earth: the planet we live on
egg: a bird hatches from it
elbow: the place where your arm bends
elephant: a huge animal with a trunk
eye: you see with it
face: the front of your head
farm: a place with fields and animals
farmer: a person who grows food
father: a man who has a child
feather: a bird has many of these
fence: it goes around a garden or a field
fern: a green plant with feathery leaves
ferry: a boat that takes people across the water
field: a wide piece of open land
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
forest: a place with many trees
fork: you eat with it
fox: a wild animal with a red coat and bushy tail
friend: someone you like to be with
frog: a small green animal that hops and swims
fruit: apples, pears and plums
fur: an animal's thick, soft hair
game: something you play
garden: a place where plants and flowers grow
gate: a door in a fence
ghost: it says boo in stories
giraffe: a tall animal with a very long neck
girl: a young woman, still a child
glass: you can see through it
glove: it keeps a hand warm
glue: it sticks things together
goat: a farm animal with horns and a beard
goose: a bird with a long neck that honks
grain: a seed of wheat or corn
grape: a small fruit that grows in bunches
grass: green plants that cover a lawn
guitar: you play music on its strings
gull: a white sea bird
gum: you chew it
hair: it grows on your head
ham: meat from a pig
hammer: a tool that hits nails
hand: it has five fingers
harbor: a safe place for boats
hat: you wear it on your head
hawk: a bird that hunts
hay: dry grass that horses eat
head: it holds your brain, eyes and ears
heart: it beats in your chest
hen: a mother chicken
heron: a tall gray bird that stands in the water
hill: land that is higher than the rest
hive: a home for bees
hole: an empty place in something
honey: sweet food made by bees
hook: a bent piece of metal that catches things
horn: a hard, pointed part on an animal's head
horse: a big animal that people ride
hospital: a place for sick people
house: a building to live in
hull: the body of a ship
hut: a very small house
ice: frozen water
inch: one of twelve in a foot
insect: a small animal with six legs
island: land with water all around it
jacket: a short coat
jam: sweet fruit to spread on bread
jar: a glass holder with a lid
jeep: a car for rough roads
jelly: a sweet food that shakes
jet: a very fast plane
juice: a drink made from fruit
jungle: a hot, wet, thick forest
key: it opens a lock
king: a man who rules a land
kitchen: the room where you cook
kite: it flies on a string in the wind
kitten: a baby cat
knee: the place where your leg bends
knife: a tool that cuts
knight: long ago he fought in armor
knot: what you tie in a rope
lace: you tie your shoe with it
ladder: you climb up its steps
lake: water with land all around it
lamb: a baby sheep
lamp: it gives light
leaf: a flat green part of a plant
leg: you stand on it
lemon: a sour yellow fruit
letter: you write it and mail it
lettuce: green leaves for a salad
lid: it covers a pot or a jar
lighthouse: a tower that warns ships at night
lime: a sour green fruit
lion: a big wild cat with a mane
lip: the edge of your mouth
lizard: a small animal with four legs and a long tail
loaf: bread baked in one piece
lobster: a sea animal with large claws
lock: you open it with a key
log: a thick piece of a tree
lunch: the meal in the middle of the day
magnet: it pulls iron to it
map: a drawing that shows where places are
marsh: soft, wet land
mask: it hides your face
mast: the tall pole on a ship
match: a small stick that makes a flame
melon: a big, round, juicy fruit
metal: iron, gold or silver
mice: small animals with long tails, more than one
milk: a white drink from a cow
mirror: you can see yourself in it
mist: thin fog
mitten: a warm glove with no fingers
mole: a small animal that digs tunnels
money: you pay with it
monkey: a clever animal that swings in trees
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
muscle: a part of the body that makes you move
music: sounds that are sung or played
nail: it holds wood together
napkin: you wipe your mouth with it
neck: it holds up your head
needle: a thin, sharp tool for sewing
nest: a bird's home
net: string tied so that it catches fish
nose: you smell with it
nurse: a person who cares for the sick
nut: a seed in a hard shell
oak: a big tree that grows from an acorn
oar: you row a boat with it
ocean: the biggest kind of sea
octopus: a sea animal with eight arms
office: a room where people work
onion: a round vegetable that makes you cry
orange: a round, juicy fruit
otter: a furry animal that swims and eats fish
oven: you bake in it
owl: a bird that hunts at night
ox: a strong farm animal that pulls a cart
oyster: a sea animal that may hold a pearl
paddle: you push a small boat along with it
page: one side of a sheet in a book
paint: color that you put on with a brush
pan: you fry food in it
panda: a black and white bear
paper: you write or draw on it
parrot: a bright bird that can talk
party: a time to have fun with friends
pasta: noodles of many shapes
path: a way to walk along
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
piano: a big instrument with black and white keys
pie: fruit or meat baked in a crust
pig: a pink farm animal that oinks
pigeon: a gray bird that lives in cities
pillow: you rest your head on it in bed
pilot: a person who flies a plane
pin: a thin, sharp piece of metal
pine: a tree that stays green all winter
pirate: a robber on a ship, in stories
pizza: a flat, round, baked food with cheese
plane: it flies people through the air
planet: the earth is one
plant: it grows in the ground
plate: a flat dish
plow: it turns over the earth in a field
plum: a soft purple fruit
pocket: a small bag sewn into your clothes
pod: it holds peas
poem: words in lines, often with rhymes
pond: a small lake
pony: a small horse
pool: a place to swim
porch: a floor with a roof in front of a house
pot: you cook soup in it
potato: it grows in the ground and makes fries
prince: the son of a king
pumpkin: a big, round, orange fruit
pup: a baby dog
puppet: a doll that you move with your hand
puppy: a baby dog
puzzle: you fit its pieces together
queen: a woman who rules a land
quilt: a warm cover made of many pieces
rabbit: a small animal with long ears that hops
rain: water that falls from clouds
rainbow: a band of colors in the sky
rake: you gather leaves with it
rat: an animal like a big mouse
raven: a large black bird
reed: tall grass that grows in water
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
salmon: a pink fish
salt: white grains that we put on food
sand: tiny grains of rock on a beach
sauce: you pour it over food
scarf: you wear it around your neck
school: the place where children learn
scissors: you cut paper with them
screw: it turns as it goes into wood
sea: a huge area of salt water
seal: a sea animal that barks and eats fish
seed: a plant grows from it
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
silk: very soft, shiny cloth
sink: you wash dishes in it
sister: a girl with the same parents as you
skate: move smoothly over ice
ski: slide over snow on a long board
skin: it covers your whole body
skirt: it hangs from the waist
skunk: a black and white animal that smells bad
sky: it is above us, and blue on a fine day
sled: you ride on it over the snow
sleeve: the part of a shirt that covers your arm
sleigh: horses pull it over the snow
slide: you sit down on it and go down fast
snail: a small, slow animal with a shell
snake: a long animal with no legs
snow: soft white flakes that fall in winter
soap: you wash with it
sock: you wear it inside your shoe
sofa: a long soft seat
soil: the earth that plants grow in
soup: hot food that you eat with a spoon
spider: an animal with eight legs that spins a web
spoon: you eat soup with it
spring: the season after winter
squid: a sea animal with ten arms
squirrel: a small animal with a bushy tail
stair: one step up or down
star: a tiny light in the night sky
stem: it holds up a flower
stone: a small piece of rock
stool: a seat with no back
stork: a tall white bird with long legs
storm: strong wind and rain
stove: you cook on it
straw: you drink through it
stream: a small river
street: a road in a town
string: thin rope
sugar: it makes food sweet
suit: a jacket and pants that match
summer: the warmest season
sun: it gives us light and warmth
swamp: wet, soft land with trees
swan: a big white bird with a long neck
table: it has legs and a flat top
tail: the long part at an animal's back end
taxi: a car that you pay to ride in
teacher: a person who helps you learn
teeth: you bite with them
tent: a cloth house for camping
tern: a small sea bird with a forked tail
throne: a king's seat
thumb: the short, thick finger
tide: it makes the sea rise and fall
tiger: a big wild cat with stripes
toad: an animal like a frog with dry, bumpy skin
toast: bread made crisp and brown
toe: one of five on your foot
tomato: a round, red, juicy fruit
tongue: you lick with it
tooth: you bite with it
towel: you dry yourself with it
tower: a tall, narrow building
town: a place with many streets and shops
toy: you play with it
tractor: a strong machine that works on a farm
train: it runs on rails
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
umbrella: it keeps you dry in the rain
van: a car that carries things
vase: you put flowers in it
vest: a jacket without sleeves
violin: you play it with a bow
wagon: a cart with four wheels
wall: the side of a room
wand: a stick that does magic
wasp: a yellow and black insect that stings
water: clear, wet stuff that we drink
wave: water that rises and rolls to the shore
wax: candles are made of it
web: a spider spins it
week: seven days
whale: the biggest animal in the sea
wharf: a place where ships load and unload
wheat: flour is made from it
wheel: it is round and it turns
wind: air that moves
window: glass that you look out of
wing: a bird flies with it
winter: the coldest season
witch: she rides a broom in stories
wolf: a wild animal like a big dog
woman: a grown girl
wood: what trees are made of
wool: a sheep's thick coat
worm: a long, thin, soft animal in the ground
wren: a tiny brown bird
wrist: it joins your hand to your arm
yard: the ground around a house
yarn: you knit with it
yeast: it makes bread rise
yolk: the yellow part of an egg
zebra: an animal with black and white stripes
zipper: it closes a coat
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
