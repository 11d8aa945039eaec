/** What she has just picked, shown from the moment she picks it. */
import { useEffect, useState } from 'preact/hooks'

/** The plan is told before the answer to the step, on another connection. */
const TOLD_BY_MS = 300

/**
 * Until the plan has it, a control that is drawn again for another reason would fall back to what the plan says; then, or where
 * the plan does not take it, the plan's own value is shown.
 */
export function usePicked<T>(
  value: T,
  commit: (value: T) => unknown,
): readonly [shown: T, pick: (value: T) => void] {
  const [picked, setPicked] = useState<{ readonly value: T }>()
  useEffect(() => setPicked(undefined), [value])
  const pick = (next: T) => {
    const mine = { value: next }
    const letGo = () => setPicked(now => (now === mine ? undefined : now))
    setPicked(mine)
    void Promise.resolve(commit(next)).then(done => setTimeout(letGo, done === false ? 0 : TOLD_BY_MS))
  }
  return [picked === undefined ? value : picked.value, pick]
}
