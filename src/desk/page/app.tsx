/** The whole page: what is shown, and how a step of hers goes to the plan. */
import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks'
import type { Change, DeskNames, DeskPlan, DeskSheets, Path } from '../messages.js'
import { folded } from '../plan-values.js'
import { CannotBeRead } from './cannot-be-read.js'
import { fetchNames, goTo, listen, sendStep } from './connection.js'
import { Desk, type DeskState, idOf, useDesk } from './desk-state.js'
import { Head } from './head.js'
import { keepFocus } from './kept-focus.js'
import { Marks } from './marks.js'
import { SheetStrip } from './sheet-strip.js'
import { Sheets } from './sheets.js'
import { Things } from './things.js'
import { type View, views } from './views.js'
import { Words } from './words.js'

function viewNow(): View {
  return views.find(view => location.hash === `#${view}`) ?? 'words'
}

/** Where something of the plan is changed. */
function viewFor([key = '', , own = '', entry]: Path): View {
  // Words and marks of a group stand with those of the class.
  const isEntry = folded(String(key)) === 'groups' && entry !== undefined
  switch (isEntry ? folded(String(own)) : String(key).toLowerCase()) {
    case 'more-words':
    case 'file':
    case 'words':
    case 'accent':
    case 'count sounds':
    case 'clues':
      return 'words'
    case 'marks':
      return 'marks'
    default:
      return 'things'
  }
}

export function App() {
  const [plan, setPlan] = useState<DeskPlan>()
  const [sheets, setSheets] = useState<DeskSheets>()
  const [names, setNames] = useState<DeskNames>()
  const [view, setView] = useState<View>(viewNow())
  const [said, setSaid] = useState('')
  const [led, setLed] = useState<Path>([])
  const [isLost, setLost] = useState(false)
  const [isClosed, setClosed] = useState(false)
  /** Of the plan that the page shows, and of the plan after the last of its steps. */
  const shown = useRef('')
  const version = useRef('')
  const lastPlace = useRef('')
  const queue = useRef<Promise<unknown>>(Promise.resolve())
  const wanted = useRef<Path>()

  useEffect(() => {
    if (isClosed) return
    void fetchNames().then(setNames)
    return listen({
      plan: told => {
        shown.current = told.version
        version.current = told.version
        setPlan(told)
      },
      sheets: setSheets,
      lost: setLost,
    })
  }, [isClosed])
  useEffect(keepFocus, [])
  useEffect(() => {
    const follow = () => {
      setView(viewNow())
      scrollTo(0, 0)
    }
    addEventListener('hashchange', follow)
    // It may have changed before anybody listened.
    setView(viewNow())
    return () => removeEventListener('hashchange', follow)
  }, [])
  useEffect(() => {
    if (wanted.current === undefined) return
    const path = wanted.current
    wanted.current = undefined
    focusOn(path)
    // Some controls come a moment after their view.
    setTimeout(() => focusOn(path), 60)
  })

  useEffect(() => {
    // It has been heard; what stands below it is to be seen.
    const timer = setTimeout(() => setSaid(''), 8000)
    return () => clearTimeout(timer)
  }, [said])

  const say = useCallback((text: string) => {
    setSaid('')
    // A region that is told the same thing twice says it once.
    requestAnimationFrame(() => setSaid(text))
  }, [])
  const change = useCallback(
    (says: string, changes: readonly Change[], gesture?: string) => {
      if (changes.length === 0) return Promise.resolve(true)
      const seen = shown.current
      const place = JSON.stringify(changes.map(each => (each.kind === 'set' ? each.path : each)))
      const sent = queue.current.then(async () => {
        // What is said of the same thing twice, before the page has heard of the first, is hers too: the later word counts.
        const from = place === lastPlace.current ? version.current : seen
        lastPlace.current = place
        const answer = await sendStep({ from, changes, says, ...(gesture === undefined ? {} : { gesture }) })
        if (answer.ok) version.current = answer.version
        say(answer.ok ? told(says) : answer.why)
        return answer.ok
      })
      queue.current = sent
      return sent
    },
    [say],
  )
  const lead = useCallback((path: Path) => {
    wanted.current = path
    setLed(path)
    const next = viewFor(path)
    if (viewNow() === next) setSaid(text => `${text}\u200b`)
    location.hash = next
  }, [])
  const travel = useCallback(
    async (direction: 'undo' | 'redo', says: string) => {
      const answer = await goTo(direction)
      say(answer.ok ? `${direction === 'undo' ? 'Undone' : 'Done again'}: ${says}.` : answer.why)
    },
    [say],
  )
  const state = useMemo<DeskState | undefined>(
    () => (plan && sheets && names ? { plan, sheets, names, change, say, lead, led } : undefined),
    [plan, sheets, names, change, say, lead, led],
  )
  useEffect(() => {
    if (plan !== undefined) document.title = `${plan.file}: desk`
  }, [plan?.file])

  if (isClosed)
    return (
      <main class="closed">
        <h1>The desk is closed</h1>
        <p>Your plan is saved. This page can be closed too.</p>
      </main>
    )
  if (state === undefined)
    return (
      <main class="closed">
        <h1>Desk</h1>
        <p>The desk is being opened.</p>
      </main>
    )
  return (
    <Desk.Provider value={state}>
      <Head view={view} travel={travel} closed={() => setClosed(true)} />
      {isLost && (
        <p class="notice" role="alert">
          The desk does not answer. Look whether it still runs where you started it; this page goes on by
          itself.
        </p>
      )}
      <div class={view === 'sheets' ? 'table wide' : 'table'}>
        <main id="main" tabIndex={-1}>
          <Work view={view} />
        </main>
        {view !== 'sheets' && <SheetStrip />}
      </div>
      <p class="said" role="status" aria-live="polite">
        {said}
      </p>
    </Desk.Provider>
  )
}

/** What was done, as a sentence. */
function told(says: string): string {
  const isWhole = / (?:taken out|brought into the plan)$/.test(says)
  return isWhole ? `${says.charAt(0).toUpperCase()}${says.slice(1)}.` : `Changed: ${says}.`
}

function Work({ view }: { readonly view: View }) {
  const { plan } = useDesk()
  if (view === 'sheets') return <Sheets />
  if (plan.data === null) return <CannotBeRead />
  return view === 'words' ? <Words /> : view === 'marks' ? <Marks /> : <Things />
}

/** The nearest control that stands for what a path names; folds that hold it are opened. */
function focusOn(path: Path): void {
  for (let length = path.length; length > 0; length -= 1) {
    const found = document.getElementById(idOf(path.slice(0, length)))
    if (found === null) continue
    for (
      let fold = found.closest('details');
      fold !== null;
      fold = fold.parentElement?.closest('details') ?? null
    )
      fold.open = true
    found.focus()
    found.scrollIntoView({ block: 'center' })
    return
  }
}
