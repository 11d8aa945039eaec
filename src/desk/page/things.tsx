/** What is printed: from pictures of her own words, with its options as controls; and for whom. */
import { useState } from 'preact/hooks'
import type { Data } from '../messages.js'
import { listOf, textOf } from '../plan-values.js'
import { shownOfPlan } from '../shown-keys.js'
import { idOf, useDesk } from './desk-state.js'
import { Fold } from './fields.js'
import { Groups } from './groups.js'
import { Option } from './item-options.js'
import { Picture } from './layout-picture.js'
import { LeftInFile } from './left-in-file.js'
import { Printer } from './printer.js'
import { ProblemsOf } from './problems.js'
import { Proposed } from './proposed.js'
import { Review } from './review.js'
import { RowTools } from './row-tools.js'
import { Whole } from './whole.js'

export function Things() {
  const { plan } = useDesk()
  const items = listOf(plan.data, 'print')
  return (
    <section aria-labelledby="things-head">
      <h2 id="things-head">Things to make</h2>
      <Whole />
      <h3>What is printed</h3>
      {items.length === 0 && <p>Nothing of your own choice yet. Choose below.</p>}
      <ol class="items">
        {items.map((entry, index) => (
          <ItemRow
            key={index}
            entry={entry}
            index={index}
            count={items.length}
            before={items.slice(0, index).filter(each => layoutOf(each) === layoutOf(entry)).length}
          />
        ))}
      </ol>
      <Choose count={items.length} />
      <Groups />
      <Proposed />
      <Review />
      <Printer />
      <LeftInFile data={plan.data} shown={shownOfPlan} path={[]} />
    </section>
  )
}

function layoutOf(entry: Data): string {
  const layout = typeof entry === 'string' ? entry : textOf(entry, 'layout')
  return layout
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_]+/g, '-')
}

interface ItemRowProps {
  readonly entry: Data
  readonly index: number
  readonly count: number
  /** How many of its layout stand before it. */
  readonly before: number
}

function ItemRow({ entry, index, count, before }: ItemRowProps) {
  const { names, sheets } = useDesk()
  const folded = layoutOf(entry)
  const title = textOf(entry, 'name') || folded.replaceAll('-', ' ')
  const own = names.layoutKeys[folded] ?? []
  const made = sheets.items.filter(item => item.layout === folded && item.group === null)[before]
  const first = made?.sheets.find(({ kind }) => kind === 'pieces') ?? made?.sheets[0]
  const usual = ['copies', 'across', 'down', 'size', 'back', 'border', 'marks']
  const often = names.itemKeys.filter(({ name }) => usual.includes(name))
  const seldom = names.itemKeys.filter(({ name }) => !usual.includes(name) && name !== 'layout')
  return (
    <li class="item-row">
      {first === undefined ? (
        <span class="thing empty" />
      ) : (
        <img class="thing" src={first.address} alt="" loading="lazy" />
      )}
      <div class="item-body">
        <div class="mark-head">
          <h4 id={idOf(['print', index])} tabIndex={-1}>
            {title}
          </h4>
          <RowTools list={['print']} index={index} count={count} title={title} after="things-add" />
        </div>
        <ProblemsOf path={['print', index]} />
        {made !== undefined && <p>{made.sheets.length === 1 ? '1 sheet' : `${made.sheets.length} sheets`}</p>}
        <Fold
          keep={`thing ${index}`}
          summary={
            <>
              Change it<span class="only-heard"> {title}</span>
            </>
          }
        >
          <div class="fields">
            {own.map(key => (
              <Option key={key.name} option={key} entry={entry} index={index} title={title} layout={folded} />
            ))}
          </div>
          <div class="fields">
            {often.map(key => (
              <Option key={key.name} option={key} entry={entry} index={index} title={title} layout={folded} />
            ))}
          </div>
          <Fold
            keep={`all of thing ${index}`}
            summary={
              <>
                Everything else<span class="only-heard"> of {title}</span>
              </>
            }
          >
            <div class="fields">
              {seldom.map(key => (
                <Option
                  key={key.name}
                  option={key}
                  entry={entry}
                  index={index}
                  title={title}
                  layout={folded}
                />
              ))}
            </div>
          </Fold>
        </Fold>
      </div>
    </li>
  )
}

/** Every layout as a small picture of her own words. */
function Choose({ count }: { readonly count: number }) {
  const { names, sheets, change } = useDesk()
  const [isOpen, setOpen] = useState(false)
  return (
    <details class="fold choose" onToggle={event => setOpen(event.currentTarget.open)}>
      <summary id="things-add">Add something</summary>
      {isOpen && sheets.waits === 'words' && <p>Shown with example words until yours are there.</p>}
      {isOpen && (
        <ul class="layouts">
          {names.layouts.map(({ name, summary }) => (
            <li key={name}>
              <Picture item={{ layout: name }} of="sheet" />
              <b>{name.replaceAll('-', ' ')}</b>
              <small>{summary}</small>
              <button
                type="button"
                onClick={() =>
                  void change(name.replaceAll('-', ' '), [
                    { kind: 'insert', path: ['print'], at: count, values: [{ layout: name }] },
                  ])
                }
              >
                Add<span class="only-heard"> {name.replaceAll('-', ' ')}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
    </details>
  )
}
