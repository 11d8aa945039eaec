import { defineLayout } from '../layout.js'
import { boardOptions } from './board-options.js'
import { kindPages, pluralPages } from './grammar-steps.js'
import { allMarkedPages, listPages, patternPages } from './list-steps.js'
import { wordPages } from './word-steps.js'

/** Pages to show on the board, a step each: the next page shows one thing more, and nothing else moves. */
export const boardPages = defineLayout({
  kind: 'pages',
  name: 'board-pages',
  summary: 'pages for a screen before the class, on which the marks come step by step',
  options: boardOptions,
  paper: 'screen 16:9',
  marks: 'all',
  pages: (request, room) => [
    ...listPages(request, room),
    ...(request.marked && request.options.patterns ? patternPages(request, room) : []),
    ...wordPages(request, room),
    ...(request.options['parts of speech'] ? kindPages(request, room) : []),
    ...(request.options.plurals ? pluralPages(request, room) : []),
    ...(request.marked ? allMarkedPages(request, room) : []),
  ],
})
