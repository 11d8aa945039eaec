/** The typeface of pages that a browser shows; fonts are opened by the pipeline alone. */
export { pageFonts } from '../../fonts/page-fonts.js'
