/** What all of the library's answers are made of: a value or the problems that kept it from being made. */
export { failWith, succeed } from '../outcomes.js'
export {
  aHundredOfAKind,
  errorAt,
  formatProblem,
  hasErrors,
  type Outcome,
  type Place,
  type Problem,
  type Success,
  warningAt,
} from '../problems.js'
