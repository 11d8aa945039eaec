/**
 * Spellings that American schools do not teach, with the endings they take. Studied like any word, never offered.
 * From general knowledge (Webster's spellings against British ones).
 */
const bases = `
arbour ardour armour behaviour candour clamour colour demeanour dishonour enamour endeavour favour fervour flavour
harbour honour humour labour misdemeanour neighbour odour parlour rancour rigour rumour saviour savour
splendour succour tumour valour vapour vigour favourite honourable neighbourhood
calibre centre fibre litre lustre meagre metre sabre sceptre sombre spectre theatre
defence licence offence pretence
agonise apologise authorise baptise capitalise civilise criticise emphasise familiarise finalise generalise harmonise
hypnotise idolise memorise minimise modernise organise paralyse patronise realise recognise specialise summarise
sympathise terrorise analyse
aeroplane aluminium cheque cosy gaol jewellery kerb manoeuvre mould mum plough pyjamas sceptical skilful tyre wilful
fulfil enrol programme draught ageing
cancelled cancelling counsellor dialled fuelled labelled levelled marvellous modelled quarrelled signalled travelled
traveller travelling woollen whilst amongst learnt spelt spoilt
`

const endings = ['s', 'd', 'ed', 'ing', 'r', 'rs', 'er', 'ers', 'ly', 'less', 'ful', 'able']

/** Forms of other times, and ok, which says the names of two letters: okay stands in its place. */
const otherForms = 'thee thou thy thine ye tis twas hath doth shalt ok'.split(' ')

/** Built from a base by letters alone, and American. */
const american: ReadonlySet<string> = new Set(['analyses', 'programmed', 'programmer', 'programmers'])

export const spelledElsewhere: ReadonlySet<string> = new Set([
  ...otherForms,
  ...bases
    .trim()
    .split(/\s+/)
    .flatMap(base => [base, ...endings.flatMap(ending => [base + ending, base.replace(/e$/, '') + ending])])
    .filter(word => !american.has(word)),
])
