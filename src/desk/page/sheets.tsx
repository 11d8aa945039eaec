/** All sheets as they print, small and in life size, with what to know before they are printed. */
import { useEffect, useRef, useState } from 'preact/hooks'
import type { DeskItem, SaveAnswer, SeenSheet } from '../messages.js'
import { save } from './connection.js'
import { idOf, useDesk } from './desk-state.js'
import { Problems } from './problems.js'
import { SheetPicture } from './sheet-picture.js'
import { Waiting } from './waiting.js'

export function Sheets() {
  const { sheets, say } = useDesk()
  const [large, setLarge] = useState<SeenSheet>()
  const [saved, setSaved] = useState<SaveAnswer>()
  const [isSaving, setSaving] = useState(false)
  const write = async (what: 'pdf' | 'all') => {
    setSaving(true)
    say('The files are being made.')
    const answer = await save(what)
    setSaved(answer)
    setSaving(false)
    say(answer.ok ? 'The files are made.' : answer.why)
  }
  const count = sheets.items.reduce((sum, item) => sum + item.sheets.length, 0)
  const isWaiting = sheets.waits !== undefined
  // By its place, so that a change of the plan shows in it too.
  const inLifeSize = sheets.items.find(
    ({ name, sheets: own }) => name === large?.item && large.sheet < own.length,
  )
  return (
    <section aria-labelledby="sheets-head" aria-busy={sheets.busy}>
      <h2 id="sheets-head">Sheets</h2>
      {count > 0 && (
        <p class="lead">
          {count === 1 ? '1 sheet' : `${count} sheets`}. Press a sheet to see it in life size.
        </p>
      )}
      <Waiting />
      {sheets.older && (
        <p class="notice">The plan has something to mend, so these are the sheets from before.</p>
      )}
      <Problems />
      <div class="print">
        <button type="button" class="main" disabled={isSaving || isWaiting} onClick={() => void write('pdf')}>
          Make PDFs to print
        </button>
        <button type="button" disabled={isSaving || isWaiting} onClick={() => void write('all')}>
          Save all files
        </button>
        {saved !== undefined &&
          (saved.ok ? <Saved folder={saved.folder} pdfs={saved.pdfs} /> : <p class="wrong">{saved.why}</p>)}
      </div>
      {sheets.items.length > 3 && <Contents items={sheets.items} />}
      {sheets.items.map(item => (
        <ItemSheets key={item.name} item={item} open={setLarge} />
      ))}
      {inLifeSize !== undefined && (
        <LifeSize item={inLifeSize} at={large?.sheet ?? 0} close={() => setLarge(undefined)} />
      )}
    </section>
  )
}

function Saved({
  folder,
  pdfs,
}: {
  readonly folder: string
  readonly pdfs: readonly { readonly name: string; readonly address: string }[]
}) {
  return (
    <div class="saved">
      <p>
        The files lie in <code>{folder}</code>. Print at 100 %, each of these in one go on the stock that its
        name says; the one with the plan’s name alone holds everything.
      </p>
      <ul>
        {pdfs.map(({ name, address }) => (
          <li key={name}>
            <a href={address} target="_blank" rel="noopener">
              {name}
            </a>
          </li>
        ))}
      </ul>
    </div>
  )
}

/** A week has a hundred sheets: what there is, each leading to its own. */
function Contents({ items }: { readonly items: readonly DeskItem[] }) {
  const goTo = (item: DeskItem) => {
    const head = document.getElementById(headOf(item))
    head?.focus({ preventScroll: true })
    head?.scrollIntoView({ block: 'start' })
  }
  return (
    <nav aria-label="What is printed">
      <ul class="contents">
        {items.map(item => (
          <li key={item.name}>
            <button type="button" onClick={() => goTo(item)}>
              {item.title}
              {item.group !== null && ` for ${item.group}`} <span class="what">{item.sheets.length}</span>
            </button>
          </li>
        ))}
      </ul>
    </nav>
  )
}

function headOf({ name }: DeskItem): string {
  return idOf(['sheets', name])
}

function ItemSheets({ item, open }: { readonly item: DeskItem; readonly open: (sheet: SeenSheet) => void }) {
  return (
    <section
      class="item-sheets"
      aria-label={item.group === null ? item.title : `${item.title}, ${item.group}`}
    >
      <h3 id={headOf(item)} tabIndex={-1}>
        {item.title}
        {item.group !== null && <span class="group"> for {item.group}</span>}
      </h3>
      <ul class="sheet-list">
        {/* By their places: a new sheet takes over from the old one, which stays until it is there. */}
        {item.sheets.map((sheet, at) => (
          <li key={at}>
            <button
              type="button"
              class="sheet-button"
              aria-label={`${sheet.title}: see it in life size`}
              onClick={() => open({ item: item.name, sheet: at })}
            >
              <SheetPicture item={item} at={at} small />
            </button>
          </li>
        ))}
      </ul>
      {item.notes.length > 0 && (
        <ul class="notes">
          {item.notes.map(note => (
            <li key={note}>{note}</li>
          ))}
        </ul>
      )}
    </section>
  )
}

/** The browser's own dialogue keeps the focus in it and ends by Escape. */
function LifeSize({
  item,
  at,
  close,
}: {
  readonly item: DeskItem
  readonly at: number
  readonly close: () => void
}) {
  const dialog = useRef<HTMLDialogElement>(null)
  useEffect(() => dialog.current?.showModal(), [])
  const { title, widthMm, heightMm } = item.sheets[at]!
  return (
    <dialog ref={dialog} class="life-size" aria-label={title} onClose={close}>
      <p>
        <button type="button" class="main" onClick={() => dialog.current?.close()}>
          Back to all sheets
        </button>{' '}
        {title}, {Math.round(widthMm)} × {Math.round(heightMm)} mm
      </p>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by the keyboard. */}
      <section class="scroll" tabIndex={0} aria-label="The sheet in life size">
        <SheetPicture item={item} at={at} />
      </section>
    </dialog>
  )
}
