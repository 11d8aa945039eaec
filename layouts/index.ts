import { bingo } from './bingo.js'
import { blankList } from './blank-list.js'
import { callCards } from './call-cards.js'
import { key } from './key.js'
import type { Layout } from './layout.js'
import { markedList } from './marked-list.js'
import { openSort } from './open-sort.js'
import { wordCards } from './word-cards.js'

/** Every printable, in the order in which `oaktag list layouts` shows them. */
export const layouts: readonly Layout[] = [wordCards, openSort, bingo, callCards, key, markedList, blankList]
