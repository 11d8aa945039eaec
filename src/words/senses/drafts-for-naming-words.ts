/** Drafts of clues for everyday nouns, each in words of a primary class. Written for this project. */
export const draftsForNamingWords = `
accident: something bad that nobody meant to happen
action: something that you do
address: the street and number where somebody lives
adventure: an exciting trip, full of surprises
afternoon: the part of the day after lunch
age: how many years old you are
agent: a person who does business for another
aid: help
air: what we breathe
airplane: it flies people from city to city
airport: where planes land and take off
alarm: a loud sound that warns you
ambulance: it takes hurt people to the hospital
anchor: a heavy hook that holds a boat in its place
anger: what you feel when something is not fair
angle: the corner where two lines meet
animal: a living thing that moves and eats
answer: what you give back to a question
ant: a tiny insect that lives in a big group
apartment: a home on one floor of a big building
ape: a large animal like a monkey with no tail
apple: a round fruit that grows on a tree
apron: you wear it to keep clean when you cook
area: a part of a place
arm: it joins your hand to your shoulder
army: all the soldiers of a country
art: paintings, drawings and other things people make
artist: a person who paints or draws
attic: the room right under the roof
audience: the people who watch a show
aunt: the sister of your mother or father
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
base: the bottom part, on which a thing stands
baseball: a game with four bases and a bat
basement: the lowest floor, under the ground
basket: you carry things in it, often woven
bat: a small animal that flies at night
bath: you sit in it to get clean
bathroom: the room with the sink and tub
batter: a thin mix of flour, eggs and milk
battle: a fight between two armies
bay: a part of the sea with land on three sides
beach: sandy land beside the sea
bead: a tiny ball with a hole, for a string
beak: a bird's mouth
bean: a seed that we eat as food
bear: a big, heavy animal with thick fur
beard: hair on a man's chin
beast: a large, wild animal
beauty: what makes a thing lovely to look at
beaver: an animal that builds dams with its teeth
bed: you sleep in it
bedroom: the room you sleep in
bee: an insect that makes honey
beef: meat from a cow
bell: it rings
belly: the front of your body, under the ribs
belt: you wear it around your waist
bench: a long seat for two or more people
bike: it has two wheels and you ride it
bill: a paper that says how much you must pay
bingo: a game of calling and covering squares
bird: an animal with wings and feathers
birth: the moment a life begins
birthday: the day you turn one year older
bit: a tiny piece
blanket: a warm cover for a bed
block: a solid piece of wood or stone
blood: the red liquid inside your body
board: a long, flat piece of wood
boat: it carries people on water
body: all of a person or an animal
bone: a hard part inside your body
book: pages to read, inside a cover
boot: a shoe that covers part of the leg
border: the line where one country ends
boss: the person who tells workers what to do
bottle: a tall glass holder for a drink
bottom: the lowest part
bow: a knot with two loops
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
bull: a male cow
bun: a small round bread
bunch: things tied or growing together, like grapes
bunny: a small, soft rabbit
buoy: it floats to show boats the safe way
burger: a round piece of meat in a bun
bus: a big car that carries many people
business: a shop, or the work of buying and selling
butter: a yellow spread made from cream
button: a small round thing that closes a shirt
cab: a car that you pay to ride in
cabin: a small house made of wood
cage: a box with bars for an animal
cake: a sweet food for birthdays
camel: a desert animal with a hump
camera: you take pictures with it
camp: a place with tents
candle: a stick of wax that burns and gives light
candy: something small and sweet to eat
cape: a coat without sleeves, or land that juts into the sea
captain: the leader of a ship or a team
car: it has four wheels and an engine
card: a stiff piece of paper, often with words on it
career: the work that you do for many years
carpet: thick, soft cloth that covers a floor
carrot: a long orange root that we eat
cash: coins and paper money
castle: a huge stone house with towers
cat: a pet that purrs
cattle: cows and bulls
cause: the thing that makes something happen
cave: a hollow place in a rock or a hill
cell: a small room in a jail
cellar: a cool room under a house
center: the middle of something
century: one hundred years
certificate: a paper that says what you have done
chain: rings of metal joined in a row
chair: a seat for one person
chalk: you write with it on a board
champion: the winner over everyone else
chance: a time when you may do something
change: coins that you get back at a shop
character: a person in a story
cheek: the side of your face
cheese: food made from milk
cherry: a small red fruit with a stone
chest: the front of your body, or a big box
chick: a baby bird
chicken: a farm bird that lays eggs
chief: the leader of a group
child: a young person
childhood: the years when you are young
children: boys and girls
chin: the part of your face under your mouth
chip: a thin, crisp slice of potato
chocolate: a sweet, brown candy made from cacao beans
choice: what you pick
church: a building where people pray
circle: a perfectly round shape
city: a very big town
clam: a sea animal with two shells
class: children who learn together
clay: soft earth for making pots
clerk: a person who works at a store counter
cliff: a high, steep wall of rock
clock: it tells the time
cloth: shirts and sheets are made of it
cloud: a white or gray shape in the sky
clown: he makes people laugh at the circus
club: people who meet because they like the same thing
clue: something that helps you find the answer
coach: a person who trains a team
coal: black rock that burns
coast: the land beside the sea
coat: you wear it outside when it is cold
cocoa: a hot drink that tastes of chocolate
code: secret writing
coffee: a hot, brown drink that wakes grown-ups up
coin: a round piece of money
cold: not warm
college: a school to go to after high school
color: red, blue or green, for example
comb: you tidy your hair with it
comfort: a warm and easy feeling
community: the people who live near one another
company: people who come to visit
computer: a machine that you type on, with a screen
concert: music played for many people
contest: a game to see who is best
conversation: a talk between people
cookie: a small, flat, sweet cake
copy: something made to look just like another
corn: yellow seeds that grow on a cob
corner: the place where two sides meet
cotton: soft white stuff that cloth is made from
couch: a long soft seat
country: a land with its own people and flag
couple: two of a kind
courage: being brave
course: the way that a ship or a race goes
court: a place where a judge listens
cousin: the child of your aunt or uncle
cow: a farm animal that gives milk
cowboy: a person on a horse who looks after cattle
crab: a sea animal with a shell and two claws
crane: a tall bird, or a machine that lifts things
crate: a big wooden box
cream: the thick part of milk
creek: a small river
crew: the people who work on a ship
cricket: an insect that chirps
crow: a big black bird
crowd: a lot of people close together
crown: a king wears it on his head
crumb: a tiny bit of bread or cake
crust: the hard outside of bread
crystal: a clear stone with flat sides
cup: you drink from it
curb: the edge of the road
current: water that moves along in a river
dad: a father
daddy: what a small child calls a father
dairy: a place where milk is kept
damage: harm done to a thing
dancer: a person who moves to music
danger: something that could hurt you
darkness: what there is when there is no light
daughter: a girl, to her mother and father
dawn: when the sun comes up
day: from morning to night
deal: something two people agree on
deck: the floor of a boat
deer: a forest animal with thin legs
den: a wild animal's home
dentist: a person who takes care of your teeth
desert: dry, sandy land with little rain
desire: a strong wish
desk: a table where you write
detective: a person who finds out who did it
dew: drops of water on the grass in the morning
dial: the round face of a clock or a meter
diamond: a clear, hard stone that sparkles
dinner: the biggest meal of the day
dirt: loose earth
disease: something that makes you sick
dish: a plate or a bowl
distance: how far it is
district: one part of a city or country
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
dozen: twelve of something
dragon: a story animal that breathes fire
dragonfly: a long insect with four clear wings
drawer: a box that slides in and out of a desk
dream: pictures in your mind while you sleep
dress: a top and skirt in one piece
driver: the person who steers the car
drum: you beat it to make music
duck: a bird that swims and quacks
duke: a man of very high rank
dune: a hill of sand
dust: tiny, dry bits that lie on a shelf
duty: something you have to do
eagle: a big bird with sharp eyes and claws
ear: you hear with it
earth: the planet we live on
east: where the sun comes up
edge: the line where a thing stops
education: what you get in school
effort: how hard you try
egg: a bird hatches from it
elbow: the place where your arm bends
elephant: a huge animal with a trunk
elevator: a small room that carries you up and down
end: the last part of anything
enemy: somebody who is against you
energy: what you need to run and play
engine: the part that makes a car go
engineer: a person who plans bridges or machines
equipment: all the things you need to do a job
event: something that happens
example: one thing that shows what others are like
explanation: words that tell why or how
eye: you see with it
face: the front of your head
fact: something that is true
factory: a building where things are made
fairy: a tiny person with wings, in stories
faith: strong trust
farewell: what you say when you leave
farm: a place with fields and animals
farmer: a person who grows food
fashion: the way people like to dress now
father: a man who has a child
fault: you have it when something goes wrong because of you
fear: what you feel when you are scared
feather: a bird has many of these
feet: you have two of them, with five toes on each
fellow: a man or boy
female: a girl, a woman or an animal that can be a mother
fence: it goes around a garden or a field
fern: a green plant with feathery leaves
ferry: a boat that takes people across the water
festival: a special day with music and food
fever: being too hot because you are sick
field: a wide piece of open land
fighter: one who never gives up
figure: a number, such as 7
film: a story shown in moving pictures
fin: a fish swims with it
finger: one of five on your hand
fire: hot, bright flames
fish: an animal that swims and has fins
flag: a piece of cloth that stands for a country
flesh: the soft part under the skin
flight: a trip in a plane
floor: you walk on it inside a house
flour: white powder made from wheat
flower: the pretty part of a plant
fog: a thick cloud close to the ground
food: what we eat
foot: it has five toes
football: a game with a ball that is not round
force: a push or a pull
forest: a place with many trees
fork: you eat with it
fort: a strong place, built to keep enemies out
fortune: a lot of money
fox: a wild animal with a red coat and bushy tail
fridge: it keeps your food cold
friend: someone you like to be with
frog: a small green animal that hops and swims
fruit: apples, pears and plums
fuel: gas, oil or wood that is burned for heat
fun: what you have when you play
fur: an animal's thick, soft hair
furniture: tables, chairs and beds
future: the time that has not come yet
game: something you play
garage: a place to keep a car
garbage: things that you throw away
garden: a place where plants and flowers grow
gate: a door in a fence
gentleman: a polite man
ghost: it says boo in stories
giant: a huge person in stories
gift: something you give to a person
giraffe: a tall animal with a very long neck
girl: a young woman, still a child
glass: you can see through it
glory: great honor
glove: it keeps a hand warm
glue: it sticks things together
goal: what you are trying to reach
goat: a farm animal with horns and a beard
gold: a yellow metal worth a lot of money
golf: a game with a small white ball and a hole
goose: a bird with a long neck that honks
government: the people who run a country
grade: a mark for your work in school
grain: a seed of wheat or corn
grandchild: the son or daughter of your own child
grandma: the mother of your mother or father
grandpa: the father of your mother or father
grape: a small fruit that grows in bunches
grass: green plants that cover a lawn
ground: what you stand on outdoors
group: some people or things together
guard: a person who watches over something
guest: a person who comes to your house
guide: a person who shows you the way
guitar: you play music on its strings
gull: a white sea bird
gum: you chew it
guy: a man or a boy
gym: a big room for games and sports
gymnast: a person who tumbles and swings on bars
hair: it grows on your head
hall: a long, narrow part of a house with doors
ham: meat from a pig
hammer: a tool that hits nails
hand: it has five fingers
happiness: the feeling that makes you smile
harbor: a safe place for boats
hat: you wear it on your head
hawk: a bird that hunts
hay: dry grass that horses eat
head: it holds your brain, eyes and ears
health: being well and not sick
heart: it beats in your chest
heat: what a fire gives
hen: a mother chicken
hero: a brave person
heron: a tall gray bird that stands in the water
highway: a wide road for fast cars
hill: land that is higher than the rest
hive: a home for bees
hockey: a game with curved sticks on ice
hole: an empty place in something
holiday: a special day with no school
homework: what you do for school after school
honey: sweet food made by bees
honor: great respect
hood: it keeps your head dry, on the back of a coat
hook: a bent piece of metal that catches things
horn: a hard, pointed part on an animal's head
horse: a big animal that people ride
hospital: a place for sick people
host: a person who has guests
hotel: a place where travelers sleep
hour: sixty minutes
house: a building to live in
hull: the body of a ship
human: a person
humor: what makes you laugh
hunter: one who looks for animals to catch
husband: a man who is married
hut: a very small house
ice: frozen water
idea: something that you think of
image: a picture
inch: one of twelve in a foot
insect: a small animal with six legs
interest: wanting to know more
iron: a strong, gray metal
island: land with water all around it
jacket: a short coat
jail: a place where robbers are locked up
jam: sweet fruit to spread on bread
jar: a glass holder with a lid
jazz: lively music with a swing
jeep: a car for rough roads
jelly: a sweet food that shakes
jet: a very fast plane
jewelry: rings, pins and chains to wear
job: work that a person does
joke: a funny story
journey: a long trip
joy: great happiness
judge: the person who decides in court
juice: a drink made from fruit
jungle: a hot, wet, thick forest
justice: fairness
key: it opens a lock
kid: a young goat, or a child
kidney: a part of your body that cleans the blood
king: a man who rules a land
kit: a set of things for making something
kitchen: the room where you cook
kite: it flies on a string in the wind
kitten: a baby cat
kitty: a young cat
knee: the place where your leg bends
knife: a tool that cuts
knight: long ago he fought in armor
knot: what you tie in a rope
knowledge: all that you have learned
lab: a room where scientists work
lace: you tie your shoe with it
ladder: you climb up its steps
lady: a polite word for a woman
lake: water with land all around it
lamb: a baby sheep
lamp: it gives light
lance: the long spear of a knight
land: the part of the earth that is not water
lane: a narrow road
language: the words that people speak
laundry: clothes that need to be washed
law: a rule of a whole country
lawn: the short grass around a house
lawyer: a person who speaks for others in court
leader: the one whom the others follow
leaf: a flat green part of a plant
league: teams that play one another
leather: the skin of an animal, made into shoes and belts
leg: you stand on it
legend: a very old story
lemon: a sour yellow fruit
lesson: something you learn, or the time when you do
letter: you write it and mail it
lettuce: green leaves for a salad
level: how high something is
liar: a person who does not tell the truth
library: a place where you borrow books
lid: it covers a pot or a jar
life: the time from birth to death
light: what comes from the sun or a lamp
lighter: a small tool that makes a flame
lighthouse: a tower that warns ships at night
lily: a tall flower shaped like a cup
lime: a sour green fruit
line: a long, thin mark
lion: a big wild cat with a mane
lip: the edge of your mouth
list: words written one below another
lizard: a small animal with four legs and a long tail
load: what a truck carries
loaf: bread baked in one piece
lobster: a sea animal with large claws
lock: you open it with a key
log: a thick piece of a tree
loss: something that is gone
lot: very many
luck: good things that come by chance
lunch: the meal in the middle of the day
machine: a thing with parts that does a job for you
magazine: thin, with pictures, and a new one every month
magic: making things happen by a spell
magnet: it pulls iron to it
maid: a woman who cleans a house
mail: letters and packages
makeup: paint for the face
mall: a big building full of stores
mama: a mother
man: a grown boy
manager: the person in charge of a store or a team
map: a drawing that shows where places are
mark: a spot, or a line made with a pencil
market: a place where people buy and sell food
marriage: being husband and wife
marsh: soft, wet land
mask: it hides your face
mason: a person who builds with stone
mast: the tall pole on a ship
master: the owner of a dog
match: a small stick that makes a flame
math: working with numbers
matter: what everything is made of
mayor: the leader of a town
meal: breakfast, lunch or dinner
meat: food that comes from animals
medal: a round piece of metal for a winner
medicine: you take it to get well
melon: a big, round, juicy fruit
member: one of the people in a club
memory: what you can remember
men: more than one grown boy
message: words that you send to someone
metal: iron, gold or silver
mice: small animals with long tails, more than one
middle: the part halfway between the ends
midnight: twelve o'clock, in the dark
mile: more than five thousand feet
milk: a white drink from a cow
miller: a person who grinds grain
mind: the part of you that thinks
minute: sixty seconds
miracle: a wonderful thing that nobody can explain
mirror: you can see yourself in it
mission: an important job that you are sent to do
mist: thin fog
mistake: something you did wrong
mitten: a warm glove with no fingers
mole: a small animal that digs tunnels
mom: a mother
moment: a very short time
mommy: what a small child calls a mother
money: you pay with it
monkey: a clever animal that swings in trees
monster: a scary thing in a story
month: about thirty days
mood: the way you feel today
moon: it shines in the sky at night
moose: a huge deer
mop: you wash the floor with it
moss: soft green plants on wet stones
moth: an insect like a butterfly that flies at night
mother: a woman who has a child
mountain: very high land
mouse: a tiny animal with a long tail
mouth: you eat and talk with it
movie: a story shown on a screen
mud: soft, wet earth
muffin: a small round cake
mug: a big cup with a handle
mummy: a body wrapped in cloth, long ago
muscle: a part of the body that makes you move
museum: a building full of old and rare things
music: sounds that are sung or played
mystery: something that nobody can explain
nail: it holds wood together
name: what people call you
nanny: a person paid to take care of a child
napkin: you wipe your mouth with it
nation: a country and its people
nature: plants, animals, and all that people did not make
navy: the ships and sailors of a country
neck: it holds up your head
necklace: beads or a chain to wear
needle: a thin, sharp tool for sewing
neighbor: a person who lives near you
nephew: the son of your sister or brother
nest: a bird's home
net: string tied so that it catches fish
news: what has just happened in the world
newspaper: it tells what happened yesterday
night: when it is dark outside
nightmare: a bad dream
noise: a sound, often a loud one
nonsense: words that do not mean anything
noon: twelve o'clock, in the daytime
north: where a compass needle points
nose: you smell with it
note: a short letter
number: one, two or three, for example
nurse: a person who cares for the sick
nut: a seed in a hard shell
oak: a big tree that grows from an acorn
oar: you row a boat with it
object: a thing that you can see and touch
ocean: the biggest kind of sea
octopus: a sea animal with eight arms
office: a room where people work
officer: a person who gives orders in the army
oil: a thick liquid that does not mix with water
onion: a round vegetable that makes you cry
opera: a play in which everyone sings
opinion: what you think about something
orange: a round, juicy fruit
order: how things follow one another
otter: a furry animal that swims and eats fish
outfit: clothes that go together
oven: you bake in it
owl: a bird that hunts at night
ox: a strong farm animal that pulls a cart
oxygen: the part of the air that we need to live
oyster: a sea animal that may hold a pearl
package: a box wrapped up to be sent
paddle: you push a small boat along with it
page: one side of a sheet in a book
pain: what you feel when you are hurt
paint: color that you put on with a brush
pair: two things that go together
palace: the home of a king or queen
pan: you fry food in it
panda: a black and white bear
panic: sudden, wild fear
papa: a father
paper: you write or draw on it
park: a green place in the city to walk and play
parrot: a bright bird that can talk
part: one piece of the whole
partner: someone who works or plays with you
party: a time to have fun with friends
pasta: noodles of many shapes
patch: a piece of cloth sewn over a hole
path: a way to walk along
patience: waiting without a fuss
patient: a person who is sick and sees a doctor
paw: an animal's foot
pea: a small, round, green seed that we eat
peace: a time without war
peach: a soft, round fruit with a stone
pear: a sweet fruit, narrow at the top
pearl: a round white gem from the sea
pebble: a small round stone
pen: you write with its ink
pencil: you write with it and can rub it out
penguin: a black and white bird that cannot fly
penny: one cent
people: men, women and children
person: a man, a woman or a child
phoenix: a bird of stories that rises out of the fire
phone: you use it to talk to someone far away
photo: a picture taken with a camera
photograph: a picture taken with a camera
piano: a big instrument with black and white keys
picture: something that you draw or paint
pie: fruit or meat baked in a crust
piece: a part that is broken or cut off
pig: a pink farm animal that oinks
pigeon: a gray bird that lives in cities
pillow: you rest your head on it in bed
pilot: a person who flies a plane
pin: a thin, sharp piece of metal
pine: a tree that stays green all winter
pipe: a tube that water runs through
piper: he blew a tune and the rats followed
pirate: a robber on a ship, in stories
pit: a deep hole in the ground
pizza: a flat, round, baked food with cheese
plan: what you are going to do, thought out before
plane: it flies people through the air
planet: the earth is one
plant: it grows in the ground
plastic: bottles and toys are made of it
plate: a flat dish
player: a person in a game
pleasure: a happy feeling
plow: it turns over the earth in a field
plum: a soft purple fruit
pocket: a small bag sewn into your clothes
pod: it holds peas
poem: words in lines, often with rhymes
poetry: writing with rhythm, and often with rhyme
point: the sharp end of a pencil
police: the men and women who keep a town safe
pond: a small lake
pony: a small horse
pool: a place to swim
popcorn: a snack of corn that bursts when it is hot
porch: a floor with a roof in front of a house
post: a piece of wood that stands in the ground
pot: you cook soup in it
potato: it grows in the ground and makes fries
power: being strong enough to do things
present: something you give on a birthday
president: the leader of a country
price: how much you pay for a thing
pride: the feeling that you did well
priest: a person who leads people in prayer
prince: the son of a king
princess: the daughter of a king and queen
prize: what the winner gets
problem: something hard that you must work out
professor: a teacher at a college
profit: the money left after the costs are paid
promise: words that say you will surely do it
pulse: the beat of your heart, felt at the wrist
pumpkin: a big, round, orange fruit
pup: a baby dog
puppet: a doll that you move with your hand
puppy: a baby dog
purse: a small bag for money
puzzle: you fit its pieces together
quarter: a coin worth twenty-five cents
queen: a woman who rules a land
question: something that you ask
quilt: a warm cover made of many pieces
rabbit: a small animal with long ears that hops
race: a test of who is fastest
radar: it finds planes and ships in the dark
radio: you listen to music and news on it
railroad: steel tracks for trains
rain: water that falls from clouds
rainbow: a band of colors in the sky
rake: you gather leaves with it
ranch: a large farm for cattle or horses
rat: an animal like a big mouse
raven: a large black bird
ray: a line of light from the sun
reason: why you do something
reed: tall grass that grows in water
reporter: a person who finds out the news
result: what happens in the end
reward: what you get for doing well
rhythm: the beat of music
ribbon: a long, thin strip of cloth
rice: small white grains that we cook
ring: you wear it on your finger
risk: a danger that you take
river: water that flows to the sea
road: cars drive on it
robin: a bird with a red breast
robot: a machine that can move and work
rock: a large stone
rocket: it flies into space
rod: a long, thin stick
role: a part in a play
roof: the top of a house
room: a part of a house with its own door
root: the part of a plant under the ground
rope: thick, strong string
rose: a flower with thorns
route: the way from one place to another
row: things or people side by side in a line
rug: it covers part of a floor
rule: it tells what you may and may not do
sack: a big bag
saddle: a seat on a horse
safety: being out of danger
sail: a big cloth that catches the wind
sailor: a person who works on a ship
salad: cold leaves and vegetables in a bowl
salary: the money you are paid for your work
sale: when things in a store cost less
salmon: a pink fish
salt: white grains that we put on food
sample: a little bit to try
sand: tiny grains of rock on a beach
sandwich: two slices of bread with something between
sauce: you pour it over food
scarf: you wear it around your neck
scene: a part of a play
scholarship: money that helps a student go to school
school: the place where children learn
science: the study of how the world works
scientist: a person who studies how things work
scissors: you cut paper with them
score: how many points you have
screen: the flat part on which you see a movie
screw: it turns as it goes into wood
sea: a huge area of salt water
seal: a sea animal that barks and eats fish
season: spring, summer, fall or winter
second: a very short time; sixty make a minute
secret: something that you do not tell
secretary: a person who types letters in an office
section: a part of something bigger
seed: a plant grows from it
sense: sight, hearing or touch, for example
sentence: words that tell a whole thought
sergeant: a soldier who gives orders to others
service: help that is given to people
shadow: the dark shape behind you in the sun
shame: the bad feeling when you did wrong
shape: a circle or a square, for example
shark: a big fish with sharp teeth
shed: a small building for tools
sheep: a farm animal with wool
sheet: a thin cloth on a bed
shelf: a flat board that holds books
shell: the hard outside of an egg or a snail
sheriff: he wears a star and keeps the law
ship: a big boat
shirt: you wear it on the top half of your body
shoe: you wear it on your foot
shop: a place that sells things
shore: the land at the edge of the water
shot: a needle that a doctor gives you
shoulder: the place where your arm begins
shovel: a tool that digs
shower: a short rain
shrimp: a small pink sea animal
side: the left or the right part
sight: what your eyes give you
sign: a board that tells you something
signal: a sign that tells you what to do
silence: no sound at all
silk: very soft, shiny cloth
silver: a shiny, gray metal
singer: a person who makes music with the voice
sink: you wash dishes in it
sister: a girl with the same parents as you
site: the place where a house is built
size: how big something is
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
smell: what your nose tells you
smoke: the gray cloud over a fire
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
soldier: a person in the army
son: a boy, to his mother and father
song: words and a tune
sort: a kind of thing
sound: something that you hear
soup: hot food that you eat with a spoon
south: the opposite of north
space: where the stars are
speech: a talk given to many people
speed: how fast something goes
spell: magic words
spider: an animal with eight legs that spins a web
spirit: a ghost
spoon: you eat soup with it
sport: baseball or soccer, for example
spot: a small, round mark
spring: the season after winter
squad: a small team
square: a shape with four equal sides
squid: a sea animal with ten arms
squirrel: a small animal with a bushy tail
staff: all the people who work in one place
stage: the place where actors stand
stair: one step up or down
star: a tiny light in the night sky
state: one of fifty in America
station: where the train stops
steak: a thick slice of meat
steam: what boiling water turns into
steel: a strong metal made from iron
stem: it holds up a flower
step: one move of your foot
stock: all the things that a store has
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
strength: how strong you are
string: thin rope
student: a person who learns in school
stuff: things of any kind
style: the way a thing is done
success: getting what you worked for
sugar: it makes food sweet
suit: a jacket and pants that match
suitcase: you pack your clothes in it for a trip
summer: the warmest season
sun: it gives us light and warmth
sunset: when the day turns to night
supper: the meal in the evening
surface: the outside or top of a thing
surgeon: a doctor who operates
surprise: something you did not know was coming
swamp: wet, soft land with trees
swan: a big white bird with a long neck
sweat: water on your skin when you are hot
sweater: a warm, knitted top
sword: a long, sharp blade with a handle
table: it has legs and a flat top
tail: the long part at an animal's back end
talent: what you can do very well
tank: a big box for water or gas
tape: a sticky strip
target: what you aim at
task: a job to be done
taste: what your tongue tells you
tax: money that people pay to their city or country
taxi: a car that you pay to ride in
tea: a hot drink made from leaves
teacher: a person who helps you learn
team: people who play on one side
teddy: a soft toy bear
teeth: you bite with them
telephone: you use it to talk to someone far away
temperature: how hot or cold it is
temple: a building where people pray
tent: a cloth house for camping
tern: a small sea bird with a forked tail
test: questions that show what you have learned
theater: a place where plays are shown
thief: a person who steals
thing: anything that you can see or think of
thought: what goes on in your mind
thousand: ten hundreds
throat: food goes down it
throne: a king's seat
thumb: the short, thick finger
thunder: the loud noise after lightning
ticket: a piece of paper that lets you in
tide: it makes the sea rise and fall
tiger: a big wild cat with stripes
time: what a clock shows
title: the name of a book
toad: an animal like a frog with dry, bumpy skin
toast: bread made crisp and brown
today: this very day
toe: one of five on your foot
toilet: it flushes
tomato: a round, red, juicy fruit
tomorrow: the day after this one
tone: the way a voice sounds
tongue: you lick with it
tool: a hammer or a saw
tooth: you bite with it
top: the highest part
tour: a trip to see many places
tournament: games to find out which team is the best
towel: you dry yourself with it
tower: a tall, narrow building
town: a place with many streets and shops
toy: you play with it
track: marks left by feet or wheels
tractor: a strong machine that works on a farm
trade: giving one thing to get another
traffic: all the cars on the road
trail: a path through the woods
train: it runs on rails
trap: it catches an animal that steps into it
trash: things that you throw away
tray: you carry food on it
treasure: gold and jewels that are hidden
treat: something special and good to eat
tree: a tall plant with a trunk
trial: when a judge hears what happened
trick: a clever thing done to fool somebody
trip: going somewhere and coming back
trouble: what you are in when you did something wrong
truck: a big car that carries loads
truth: what really happened
tube: a long, hollow pipe
tug: a small, strong boat that pulls ships
tulip: a spring flower shaped like a cup
tuna: a big sea fish
tunnel: a road under the ground
turkey: a large farm bird
turtle: an animal with a shell on its back
twig: a very small branch
twin: one of two children born together
type: one kind of thing
umbrella: it keeps you dry in the rain
uncle: the brother of your mother or father
underwear: what you wear beneath your clothes
uniform: the same clothes for everyone on a team
unit: one of a thing, used to measure or count
universe: all the stars and everything there is
university: a big school to go to after high school
vacation: a time with no school or work
valentine: a card with a heart on it
valley: low land between hills
value: how much a thing is worth
van: a car that carries things
vase: you put flowers in it
vest: a jacket without sleeves
victory: winning
video: moving pictures on a screen
view: what you can see from a place
village: a very small town
violin: you play it with a bow
voice: the sound you make when you speak
vote: a way of choosing, one for each person
wagon: a cart with four wheels
walker: a person who goes on foot
wall: the side of a room
wallet: a small, flat case for money
wand: a stick that does magic
war: fighting between countries
warehouse: a big building where things are kept
wasp: a yellow and black insect that stings
water: clear, wet stuff that we drink
wave: water that rises and rolls to the shore
wax: candles are made of it
way: the road to a place
weather: rain, sun or snow
web: a spider spins it
weed: a plant that grows where you do not want it
week: seven days
weekend: Saturday and Sunday
weight: how heavy something is
west: where the sun goes down
whale: the biggest animal in the sea
wharf: a place where ships load and unload
wheat: flour is made from it
wheel: it is round and it turns
whistle: it makes a high sound when you blow
wife: a woman who is married
wind: air that moves
window: glass that you look out of
wing: a bird flies with it
winner: the one who comes in first
winter: the coldest season
wire: a long, thin piece of metal
witch: she rides a broom in stories
witness: a person who saw it happen
wizard: a man in stories who can do magic
wolf: a wild animal like a big dog
woman: a grown girl
women: more than one grown-up lady
wood: what trees are made of
wool: a sheep's thick coat
word: letters that mean something together
world: the earth and everyone on it
worm: a long, thin, soft animal in the ground
wound: a place where you are badly hurt
wreck: what is left of a ship or car after a crash
wren: a tiny brown bird
wrist: it joins your hand to your arm
writer: a person who makes up stories and books
yard: the ground around a house
yarn: you knit with it
year: twelve months
yeast: it makes bread rise
yesterday: the day before this one
yolk: the yellow part of an egg
youth: the time when you are young
zebra: an animal with black and white stripes
zero: nothing, as a number
zipper: it closes a coat
zone: a part of a place, with its own rules
zoo: a place where you can see wild animals
`
