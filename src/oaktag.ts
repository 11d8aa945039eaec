/**
 * oaktag as a library: the one public door. The command line uses it too, and nothing behind it.
 *
 * study words → read a plan → settle (study, deal, find every size) → draw (pieces on sheets, plain data in mm) →
 * a sheet as SVG, PNG or PDF; or `make` and `check` for all of it from a plan file. Problems are values: an answer is
 * `{ ok: true, value, problems }` or `{ ok: false, problems }`. Nothing that an answer depends on is remembered between two
 * calls but what the caller passes in (`keepWork`).
 */
export * from './door/edits.js'
export * from './door/find.js'
export * from './door/held-plan.js'
export * from './door/item-controls.js'
export * from './door/make.js'
export * from './door/plans.js'
export * from './door/problems.js'
export * from './door/proposed-lists.js'
export * from './door/sheets.js'
export * from './door/sorts.js'
export * from './door/words.js'
