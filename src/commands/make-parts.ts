/** What `make` needs once its command line is right. */
export { make } from '../door/make.js'
export { LARGEST_SEED, stemOf } from '../door/plans.js'
export { describeMade } from './describe-made.js'
export { planApart } from './plan-apart.js'
export { plansToMake } from './plan-files.js'
