/**
 * Learned by `npm run learn` (expectation maximisation over the 30000 most familiar dictionary words).
 * Each line: letters, sounds, cost (negative natural logarithm of the share of all graphemes), uses in the lessons.
 */
export const graphemeWeights = `
a AE          3.67 4646
a EY          4.27 2570
a AA          5.90 500
a AO          6.51 271
a AH          3.75 4291
a EH          8.07 57
a IH          7.18 139
a -           8.56 35
a AY         11.00 3
aa AA        11.40 2
aa AH        11.40 2
aar AA R     11.00 3
aar EH R     12.07 1
ae EY        10.03 8
ae EH        11.00 3
ae IY         9.63 12
ae AY        12.07 1
ae AH        10.72 4
aer EH R     10.50 5
aer ER       12.07 1
ah AA         9.48 14
ah AH         8.94 24
ai EY         5.98 463
ai EH        10.72 4
ai AH         8.62 33
ai AY         8.86 26
ai AE        11.40 2
ai IH        11.40 2
aigh EY      10.03 8
air EH R      7.46 105
ao AW         9.81 10
aoh OW       11.40 2
aor AO R     12.07 1
ar AA R       5.34 880
ar AO R       7.73 80
ar EH R       6.15 389
ar ER         6.29 341
arr AA R      9.81 10
arr ER        8.86 26
arrh ER      11.00 3
au AO         6.82 200
au AE         9.71 11
au AH        10.72 4
au AA         9.34 16
au EY        11.40 2
au OW        10.16 7
au AW         9.55 13
augh AO       9.22 18
augh AA      15.11 0
aur AO R      9.72 11
aur ER       11.00 3
aw AO         7.15 143
aw AA        10.50 5
ay EY         6.43 296
ay EH        12.07 1
ay AY         9.91 9
ay IY        11.40 2
aye AY       12.07 1
aye EY       10.98 3
ayer EH R    11.40 2
b B           3.85 3889
bb B          7.21 135
bp P         11.40 2
bt T          9.41 15
c K           3.54 5308
c S           4.84 1453
c CH         10.50 5
c SH          9.54 13
cc K          7.53 98
cc CH        11.00 3
cch K        11.46 2
ce SH        11.03 3
ce S         10.47 5
ch CH         5.59 685
ch K          6.62 243
ch SH         8.01 61
ch HH        12.07 1
ch -         10.69 4
ci SH         7.48 103
ci CH        11.00 3
ck K          5.45 787
cqu K W       9.55 13
cqu K        11.00 3
ct T         10.50 5
cz Z         12.07 1
cz CH        11.00 3
d D           3.29 6806
d JH          8.53 36
dd D          7.04 160
ddh D        10.72 4
dg JH         8.27 47
dge JH        8.20 50
dh D         11.40 2
di JH        10.50 5
dj JH         9.41 15
e EH          3.72 4422
e IY          5.11 1101
e AH          4.32 2422
e IH          4.25 2617
e EY          7.93 66
e AA          9.71 11
e -           3.77 4201
ea IY         5.71 606
ea EH         6.71 222
ea EY         8.56 35
ea IH        12.07 1
eah AE       12.07 1
ear IH R      7.66 86
ear IY R      9.63 12
ear EH R      8.94 24
ear AA R      8.86 26
ear ER        8.06 58
earr IH R    11.40 2
earr IY R    15.11 0
eau Y UW     10.72 4
eau OW        9.91 9
eau AH       11.00 3
ed D          5.14 1070
ed T          5.85 528
ee IY         5.80 555
ee IH        12.09 1
ee EY        10.03 8
eer IH R      8.20 50
eer IY R     10.17 7
eh EH        11.41 2
ei IY         8.31 45
ei EY         8.78 28
ei AY         8.78 28
ei EH        11.40 2
ei AH        10.17 7
ei IH        10.16 7
eigh EY       8.53 36
eigh AY      10.72 4
eir EH R     10.03 8
eir IH R     10.16 7
eo IY        10.88 3
eo EH        10.16 7
eo AH        11.32 2
eo OW        10.99 3
eor IH R     11.00 3
er ER         3.91 3685
er EH R       8.80 28
er IH R       7.38 114
er IY R      12.16 1
er AA R      11.40 2
err ER        8.82 27
err EH R     11.01 3
et EY         9.22 18
eu UW         8.86 26
eu Y UW       9.22 18
eu OY        12.07 1
eur Y UH R   10.32 6
eur UH R      9.71 11
eur ER        9.57 13
ew UW         7.45 106
ew Y UW       9.17 19
ew OW        10.72 4
ey IY         7.13 146
ey EY         8.65 32
ey EH        12.07 1
ey AY        12.06 1
eye AY        9.02 22
f F           4.27 2565
f V          11.40 2
ff F          6.51 272
ft F         10.32 6
g G           4.53 1967
g JH          5.38 842
g ZH          8.78 28
ge JH         8.83 27
ge ZH        12.07 1
gg G          6.99 169
gg JH         9.55 13
gh G          9.34 16
gh F          8.75 29
gh P         15.11 0
gh -         12.05 1
gi JH         8.78 28
gm M         11.00 3
gn N          7.97 63
gn N Y       10.32 6
gu G          7.84 72
gue G         8.75 29
h HH          4.83 1455
h -           8.35 43
i IH          2.96 9447
i AY          4.54 1958
i IY          5.13 1080
i AH          4.75 1581
i Y           7.37 115
i -           9.91 9
ia IH        10.08 8
ia AH        10.64 4
ia AY        10.72 4
ie IY         5.84 535
ie AY         7.43 109
ie EH         9.47 14
ie IH        12.07 1
ie AH        10.71 4
ier IH R      9.12 20
ier IY R     11.42 2
ieu UW       10.72 4
iew Y UW      9.07 21
igh AY        6.90 184
ir ER         6.77 211
ir IH R      10.14 7
irr ER       10.32 6
j JH          6.02 445
j Y          10.50 5
j ZH         11.00 3
j HH         10.50 5
k K           4.80 1504
kh K         10.16 7
kk K         12.07 1
kn N          8.07 57
l L           3.14 7940
l AH L       10.19 7
ld D         10.71 4
le AH L       5.47 772
lf F         10.29 6
lk K          8.33 44
ll L          5.08 1133
ll -         10.50 5
lm M          9.10 20
ln N         12.07 1
lv V         11.00 3
m M           3.53 5356
m AH M        7.90 68
mb M          8.24 48
mm M          6.53 268
mn M          9.41 15
mn N         12.07 1
n N           2.76 11597
n NG          5.91 495
n AH N       14.95 0
n N Y        11.37 2
ng NG         4.20 2747
ngh NG       11.40 2
ngue NG      11.00 3
nn N          6.50 275
o AA          4.43 2180
o OW          4.41 2227
o AO          6.27 345
o AH          4.02 3293
o UW          7.76 78
o UH          9.28 17
o IH         10.50 5
o W AH       10.03 8
o -           9.63 12
oa OW         6.82 200
oa AO         9.71 11
oar AO R      8.17 52
oar ER       11.00 3
oe OW         8.24 48
oe UW         9.47 14
oe AH        12.07 1
oe IY        10.16 7
oe EH        11.40 2
oh OW        10.61 4
oh AA        10.60 4
oi OY         7.09 153
oi W AY      11.40 2
oi AH        10.32 6
oi W AA      11.00 3
oir W AA R   10.32 6
olo ER       11.40 2
oo UW         6.02 443
oo UH         6.86 191
oo AH         8.94 24
oo OW        12.07 1
ooh UW       11.45 2
oor AO R      9.12 20
oor UH R      9.81 10
oor UW R     11.42 2
or AO R       5.19 1020
or ER         5.54 716
orr ER        8.82 27
orr AO R     15.11 0
orrh ER      10.32 6
ou AW         5.91 497
ou UW         7.80 75
ou AH         6.42 297
ou OW         9.41 15
ou UH        10.72 4
ou AO        10.50 5
ou AA        15.11 0
ou Y UW      12.07 1
ou IH        11.40 2
ough OW       9.28 17
ough UW      10.72 4
ough AO       9.63 12
ough AA      15.11 0
ough AW      10.72 4
our AO R      8.27 47
our UH R      9.34 16
our ER        7.97 63
our UW R     11.00 3
ow OW         6.55 261
ow AW         6.74 216
ow AA        10.03 8
oy OY         7.39 113
oy AY        11.40 2
p P           3.53 5352
pb B         10.50 5
ph F          6.44 292
ph P         10.72 4
ph V         12.07 1
pn N         11.40 2
pp P          6.13 398
pph F        11.40 2
ps S          8.68 31
pt T         10.72 4
q K          10.50 5
qu K W        6.45 288
qu K          8.78 28
que K         8.68 31
r R           3.36 6331
r ER          7.90 68
re ER         9.02 22
rh R          9.17 19
ro ER        10.50 5
rr R          6.63 241
rrh R        15.11 0
s S           3.05 8705
s Z           3.59 5053
s SH          9.17 19
s ZH          8.43 40
s IH Z       11.87 1
s AH Z       15.09 0
sc S          7.71 82
sc SH        10.50 5
sch SH        9.28 17
sci SH        9.55 13
se SH        12.07 1
sh SH         5.35 868
sh ZH        12.07 1
shi SH       10.01 8
si ZH         7.60 92
si SH         8.98 23
ss S          5.41 816
ss Z          9.22 18
ss SH         9.07 21
ssi SH        7.77 77
st S          8.20 50
sw S          9.80 10
t T           2.77 11445
t CH          6.74 217
t SH          9.07 21
tch CH        7.00 167
te CH        11.26 2
th TH         5.70 613
th DH         6.95 176
th T         10.03 8
th T TH      12.07 1
th -         11.40 2
ti SH         5.27 945
ti CH         8.86 26
ti ZH        11.40 2
ts Z         11.40 2
ts S         15.10 0
tsch CH      12.07 1
tt T          5.94 480
tth TH       12.07 1
tw T         11.00 3
u AH          4.19 2765
u UW          5.59 687
u Y UW        6.12 402
u UH          7.38 114
u Y AH        6.87 190
u IH          9.63 12
u EH         10.03 8
u W           7.88 69
u AH W        9.28 17
u -          12.07 1
u Y AH W     10.32 6
ua Y AH      11.00 3
ue UW         8.10 56
ue Y UW       8.62 33
ueue Y UW    12.07 1
ui UW         8.31 45
ui IH         9.67 11
ui AH        10.50 5
uo UW        12.04 1
uor UH R     12.07 1
uor AO R     15.11 0
uoy OY       12.07 1
ur ER         5.89 507
ur UH R       8.04 59
ur Y UH R     8.04 59
ur Y ER       8.65 32
urr ER        8.06 58
uu Y UW      11.00 3
uy AY        10.03 8
v V           4.36 2346
vv V         11.00 3
w W           5.05 1178
wh W          7.23 133
wh HH         9.46 14
wh HH W      15.11 0
wr R          7.70 83
x K S         6.01 450
x G Z         8.17 52
x Z          10.32 6
x G ZH       11.00 3
xc K S        8.71 30
xh G Z        9.63 12
xh K S       12.07 1
xi K SH      10.50 5
y Y           7.09 153
y IY          4.43 2186
y AY          6.37 314
y IH          6.71 223
y AH          8.98 23
ye AY         9.81 10
yr ER         9.71 11
z Z           6.03 440
z S           8.94 24
z T S        11.00 3
z ZH         11.00 3
zz Z          8.18 51
zz T S       10.72 4
`
