/** Which sheets the page shows at the moment: the server is told, so that these come first. */
import type { SeenSheet } from '../messages.js'
import { tellSeen } from './connection.js'

/** What scrolls past is not looked at. */
const AT_REST_MS = 60

const watched = new Map<Element, SeenSheet>()
const inView = new Set<Element>()
let timer: ReturnType<typeof setTimeout> | undefined
let told = ''

const observer = new IntersectionObserver(entries => {
  for (const { target, isIntersecting } of entries)
    if (isIntersecting) inView.add(target)
    else inView.delete(target)
  soon()
})

// Of several pages the one that comes to the front is looked at.
document.addEventListener('visibilitychange', () => {
  told = ''
  if (!document.hidden) soon()
})

/** The picture stands for the sheet until the function that is given back is called. */
export function watchSheet(picture: Element, sheet: SeenSheet): () => void {
  watched.set(picture, sheet)
  observer.observe(picture)
  soon()
  return () => {
    watched.delete(picture)
    inView.delete(picture)
    observer.unobserve(picture)
    soon()
  }
}

function soon(): void {
  clearTimeout(timer)
  timer = setTimeout(tell, AT_REST_MS)
}

function tell(): void {
  const seen = [...inView].toSorted(inTheirOrder).flatMap(picture => watched.get(picture) ?? [])
  const now = JSON.stringify(seen)
  if (document.hidden || now === told) return
  told = now
  void tellSeen(seen)
}

/** From above to below; what lies over the page comes before the page. */
function inTheirOrder(one: Element, other: Element): number {
  const [isAbove, isOtherAbove] = [one, other].map(each => each.closest('dialog') !== null)
  if (isAbove !== isOtherAbove) return isAbove ? -1 : 1
  return one.compareDocumentPosition(other) & Node.DOCUMENT_POSITION_FOLLOWING ? -1 : 1
}
