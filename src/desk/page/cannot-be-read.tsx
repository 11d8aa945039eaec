/** A plan's file that cannot be read, as another program left it: where the slip stands, and the ways on. */
import { useDesk } from './desk-state.js'
import { Problems } from './problems.js'

export function CannotBeRead() {
  const { plan } = useDesk()
  return (
    <section aria-labelledby="slip-head">
      <h2 id="slip-head">{plan.file} has a slip in it</h2>
      <p class="notice" role="alert">
        It cannot be read as it stands, so nothing is changed in it from here. Mend it in the program in which
        it was written, and save it: this page then goes on by itself.
        {plan.undo !== null && ' Or take the last change back with Undo above.'}
      </p>
      <Problems />
    </section>
  )
}
