import { type PromptOf, promptsWith } from '../src/sets/games/prompt.js'
import { offeredTexts } from '../src/words/find/offered-file.js'

/** What stands for a word on another card, forms that may be offered to children among them. */
export const offeredPrompts: PromptOf = promptsWith(text => offeredTexts().has(text))
