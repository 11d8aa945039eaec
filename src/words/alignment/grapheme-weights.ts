/**
 * Learned by `npm run learn` (expectation maximisation over the 30000 most familiar dictionary words).
 * Each line: letters, sounds, cost (negative natural logarithm of the share of all graphemes), uses in the lessons.
 */
export const graphemeWeights = `
a AE          3.68 4584
a EY          4.25 2583
a AA          5.91 492
a AO          6.51 271
a AH          3.74 4303
a EH          7.96 64
a IH          7.65 86
aa AA        11.39 2
aar AA R     11.00 3
aar EH R     12.06 1
ae EY        10.03 8
ae EH        11.00 3
ae IY         9.62 12
ae AY        12.06 1
aer EH R     10.49 5
ah AA         9.49 14
ah AH         8.99 23
ai EY         5.98 461
ai EH        10.71 4
ai AH         8.61 33
ai AY         8.85 26
ai AE        11.39 2
ai IH        11.39 2
aigh EY      10.03 8
air EH R      7.46 105
air ER       15.11 0
aoh OW       11.39 2
aor AO R     12.06 1
ar AA R       5.31 898
ar AO R       7.76 78
ar EH R       6.14 394
ar ER         6.27 344
arr AA R      9.80 10
arr AO R     15.11 0
arr ER        8.74 29
au AO         6.89 185
au AE         9.71 11
au AH        10.16 7
au AA         8.71 30
au EY        11.39 2
au OW        10.14 7
au AW         9.54 13
augh AO       9.27 17
augh AA      12.06 1
aur AO R      9.72 11
aur ER       11.00 3
aw AO         7.21 135
aw AA         9.71 11
ay EY         6.44 290
ay EH        12.06 1
ay AY         9.91 9
ay IY         9.91 9
aye AY       12.06 1
ayer EH R    11.39 2
b B           3.85 3860
bb B          7.21 135
bt T          9.40 15
c K           3.55 5227
c S           4.83 1453
c CH         10.49 5
cc K          7.54 97
cc CH        11.00 3
cch K        11.42 2
ce SH        11.00 3
ce S         14.91 0
ch CH         5.59 677
ch K          6.64 237
ch SH         8.00 61
ch HH        12.06 1
ci SH         7.49 102
ck K          5.44 786
cqu K W       9.54 13
cqu K        11.00 3
ct T         10.49 5
cz Z         12.06 1
cz CH        11.00 3
d D           3.29 6774
d JH          8.53 36
d T          11.00 3
dd D          7.01 164
dg JH         8.26 47
dge JH        8.20 50
di JH        10.49 5
dj JH         9.40 15
e EH          3.72 4397
e IY          5.12 1089
e AH          4.20 2739
e IH          4.40 2237
e EY          7.91 67
e AA          9.71 11
e -           3.70 4492
ea IY         5.70 607
ea EH         6.71 223
ea EY        11.34 2
ear IH R      7.69 83
ear IY R      9.57 13
ear EH R      9.32 16
ear AA R     10.61 4
ear ER        8.14 53
eau Y UW     11.00 3
eau OW        9.93 9
ed D          5.13 1071
ed T          5.84 528
ee IY         5.84 527
ee IH        15.09 0
ee EY        10.25 6
eer IH R      8.26 47
eer IY R     10.27 6
eh EH        12.47 1
ei IY         9.13 20
ei EY         8.78 28
ei AY        10.38 6
ei EH        11.39 2
ei AH        14.94 0
ei IH        15.06 0
eigh EY       8.55 35
eigh AY      13.28 0
eir EH R     10.03 8
eir IH R     10.18 7
eo IY        10.87 3
eo EH        10.16 7
er ER         3.91 3661
er EH R       8.92 24
er IH R       7.20 136
er IY R       9.35 16
er AA R      11.40 2
err ER        8.81 27
err EH R     11.03 3
et EY         9.40 15
eu UW         9.94 9
eu Y UW       9.33 16
eu OY        12.06 1
eur Y UH R   10.34 6
eur UH R      9.85 10
eur ER       10.45 5
ew UW         7.45 106
ew Y UW       9.16 19
ew OW        10.71 4
ey IY         7.56 94
ey EY         8.64 32
ey EH        12.06 1
ey AY        14.95 0
eye AY        9.02 22
f F           4.27 2548
f V          11.39 2
ff F          6.50 272
ft F         10.31 6
g G           4.53 1955
g JH          5.37 850
g ZH          8.78 28
ge JH        10.26 6
ge ZH        15.11 0
gg G          6.98 169
gg JH         9.54 13
gh G          9.40 15
gh F          8.74 29
gh P         15.11 0
gi JH         8.81 27
gn N          7.97 63
gn N Y       10.31 6
gu G          7.83 73
gue G         8.89 25
h HH          4.83 1446
h -           7.53 98
i IH          3.00 9066
i AY          4.52 1974
i IY          5.13 1080
i AH          4.57 1887
i Y           7.37 114
ia IH        10.06 8
ia AH        10.64 4
ie IY         5.83 533
ie AY         7.42 109
ie EH         9.47 14
ie IH        12.06 1
ier IH R      9.12 20
ier IY R     11.57 2
ieu UW       10.71 4
iew Y UW      9.07 21
igh AY        6.88 187
ir ER         6.77 208
irr ER       10.84 4
j JH          6.01 444
j Y          10.49 5
j ZH         11.00 3
j HH         10.71 4
k K           4.80 1502
kh K         10.13 7
kk K         12.06 1
kn N          8.08 56
l L           3.15 7798
l AH L        7.43 108
ld D         10.71 4
le AH L       5.47 765
lf F         10.28 6
lk K          8.33 44
ll L          5.11 1093
lm M          9.15 19
ln N         12.06 1
lv V         11.00 3
m M           3.53 5317
m AH M        7.89 68
mb M          8.23 48
mm M          6.52 267
mn M          9.40 15
n N           2.76 11512
n NG          5.91 494
n AH N       14.82 0
ng NG         4.20 2738
ngue NG      11.00 3
nn N          6.49 275
o AA          4.42 2186
o OW          4.40 2227
o AO          6.30 333
o AH          4.02 3266
o UW          7.77 77
o UH          9.34 16
o IH         10.03 8
o W AH       10.03 8
oa OW         6.81 200
oa AO         9.71 11
oar AO R      8.16 52
oar ER       11.00 3
oe OW         8.23 48
oe UW         9.47 14
oe AH        12.06 1
oe IY        10.49 5
oh OW        10.76 4
oh AA        10.75 4
oi OY         7.09 152
oi W AY      11.39 2
oi AH        10.71 4
oir W AA R   10.49 5
olo ER       11.39 2
oo UW         6.02 444
oo UH         6.86 191
oo AH         8.93 24
oo OW        12.06 1
ooh UW       11.51 2
oor AO R      9.11 20
oor UH R     10.52 5
oor UW R     10.20 7
or AO R       5.19 1011
or ER         5.54 716
orr ER        8.61 33
orr AO R     15.11 0
ou AW         5.90 496
ou UW         7.83 72
ou AH         6.43 294
ou OW         9.40 15
ou UH        10.71 4
ou AO        11.00 3
ou AA        11.39 2
ough OW       9.27 17
ough UW      10.71 4
ough AO       9.80 10
ough AA      11.39 2
ough AW      10.71 4
our AO R      8.35 43
our UH R      9.27 17
our ER        7.97 63
our UW R     11.01 3
ow OW         6.56 257
ow AW         6.73 217
ow AA        10.03 8
oy OY         7.38 113
p P           3.53 5323
pb B         10.49 5
ph F          6.47 283
ph P         12.01 1
ph V         12.06 1
pn N         11.39 2
pp P          6.14 391
pph F        11.39 2
ps S          8.71 30
pt T         10.71 4
q K          10.49 5
qu K W        6.45 288
qu K          8.78 28
que K         8.74 29
r R           3.37 6246
r ER          7.56 95
re ER         9.02 22
rh R          9.36 16
ro ER        10.49 5
rr R          6.63 240
rrh R        15.11 0
s S           3.04 8658
s Z           3.59 5012
s SH          9.11 20
s ZH          8.40 41
sc S          7.72 81
sch SH        9.34 16
sci SH        9.62 12
sh SH         5.35 863
shi SH       10.00 8
si ZH         7.60 91
si SH         9.06 21
ss S          5.42 808
ss Z          9.22 18
ss SH         9.06 21
ssi SH        7.77 77
st S          8.20 50
sw S          9.80 10
t T           2.77 11348
t CH          6.72 220
t SH          9.06 21
tch CH        6.99 167
th TH         5.71 601
th DH         6.95 175
th T         11.72 1
ti SH         5.26 941
ti CH         8.85 26
ti ZH        11.39 2
tt T          5.94 480
tth TH       12.06 1
tw T         10.99 3
u AH          4.19 2753
u UW          5.55 705
u Y UW        6.12 401
u UH          7.38 113
u Y AH        6.86 190
u Y UH       15.11 0
u IH         10.16 7
u EH         10.03 8
u W           7.94 65
u AH W        8.93 24
ue UW         8.09 56
ue Y UW       8.60 33
ueue Y UW    12.06 1
ui UW         8.30 45
ui IH         9.67 11
ur ER         5.87 515
ur UH R       8.01 60
ur Y UH R     8.05 58
ur Y ER       8.64 32
urr ER        8.05 58
uu Y UW      10.99 3
uy AY        10.31 6
v V           4.36 2322
vv V         11.00 3
w W           5.04 1174
wh W          7.22 132
wh HH         9.46 14
wh HH W      15.11 0
wr R          7.69 83
x K S         6.00 450
x G Z         8.16 52
x Z          10.31 6
x K SH        9.91 9
x G ZH       11.00 3
xc K S        8.71 30
xh G Z        9.62 12
xi K SH      10.49 5
y Y           7.11 148
y IY          4.42 2185
y AY          6.36 315
y IH          6.77 209
y AH          8.61 33
ye AY         9.80 10
yr ER         9.71 11
z Z           6.03 438
z S           8.93 24
z T S        11.00 3
z ZH         11.00 3
zz Z          8.18 51
zz T S       10.71 4
`
