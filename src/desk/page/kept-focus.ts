/** The keyboard is never lost: where what had it goes, or can be pressed no more, it goes on at what stands nearest. */

const pressable = 'a[href], button, input, select, textarea, summary, [tabindex="0"]'

/** An element with what stood beside it when the keyboard came to it. */
interface Standing {
  readonly element: Element
  readonly next: Element | null
  readonly previous: Element | null
}

/** Until it is stopped. */
export function keepFocus(): () => void {
  /** What had it last, and what holds that, from the inside out. */
  let around: readonly Standing[] = []
  let isAsked = false
  const note = ({ target }: FocusEvent) => {
    if (target instanceof HTMLElement) around = standingsFrom(target)
  }
  const look = () => {
    isAsked = false
    const { activeElement } = document
    const [last] = around
    // A button that can be pressed no more is let go of only after this frame.
    const isLost = activeElement === null || activeElement === document.body
    if (last === undefined || !(isLost || activeElement === last.element)) return
    if (!last.element.isConnected || isOff(last.element)) nearest(around)?.focus({ preventScroll: true })
  }
  const watching = new MutationObserver(() => {
    if (isAsked) return
    isAsked = true
    requestAnimationFrame(look)
  })
  addEventListener('focusin', note)
  watching.observe(document.body, { childList: true, subtree: true, attributeFilter: ['disabled'] })
  return () => {
    removeEventListener('focusin', note)
    watching.disconnect()
  }
}

function standingsFrom(element: Element): readonly Standing[] {
  const { nextElementSibling: next, previousElementSibling: previous, parentElement } = element
  return [{ element, next, previous }, ...(parentElement === null ? [] : standingsFrom(parentElement))]
}

function isOff(element: Element): boolean {
  return element.matches(':disabled') || element.getClientRects().length === 0
}

function nearest(around: readonly Standing[]): HTMLElement | undefined {
  for (const { element, next, previous } of around) {
    if (element instanceof HTMLElement && element.isConnected && element.hasAttribute('tabindex'))
      return element
    const found =
      inside(element.isConnected && !element.matches(pressable) ? element : null)[0] ??
      inside(next)[0] ??
      inside(previous).at(-1)
    if (found !== undefined) return found
  }
  return undefined
}

function inside(part: Element | null): readonly HTMLElement[] {
  if (part === null || !part.isConnected) return []
  const found = [part, ...part.querySelectorAll(pressable)]
  return found.flatMap(each =>
    each instanceof HTMLElement && each.matches(pressable) && !isOff(each) ? [each] : [],
  )
}
