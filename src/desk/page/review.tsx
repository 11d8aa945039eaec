/** Which words of earlier weeks come back: which weeks, in which order, and how many of their words. */
import type { Data, Path } from '../messages.js'
import { entriesOf, isKeys, keyIn, listFilesIn, replaced, textOf, valueAt } from '../plan-values.js'
import { useDesk } from './desk-state.js'
import { ChoiceField } from './fields.js'

export interface ReviewFieldProps {
  /** What the key stands in. */
  readonly holder: Data | undefined
  readonly path: Path
  /** A group’s name, or none. */
  readonly whose?: string
  readonly none: string
  readonly textAs?: string
  readonly id: string
}

const shares = ['1/10', '1/5', '1/4', '1/3', '1/2']

export function ReviewField({ holder, path, whose = '', none, textAs, id }: ReviewFieldProps) {
  const { plan, change } = useDesk()
  const review = valueAt(holder, 'review')
  const says = whose === '' ? 'the words that come back' : `the words that come back for ${whose}`
  const written =
    typeof review === 'string' && /^(?:yes|no|true|false|on|off)$/i.test(review) ? review : undefined
  const isYes = written !== undefined && /^(?:yes|true|on)$/i.test(written)
  const from = isKeys(review) ? valueAt(review, 'from') : written === undefined ? review : undefined
  const weeks = entriesOf(from)
  const share = textOf(review, 'share')
  const kind =
    review === undefined || review === ''
      ? ''
      : weeks.length > 0
        ? 'weeks'
        : written !== undefined && !isYes
          ? 'no'
          : 'yes'
  const write = (next: Data) => change(says, replaced(holder, path, next, textAs))
  const writeWeeks = (next: readonly Data[], part = share) =>
    next.length === 0 ? pick('') : write(part === '' ? next : { from: next, share: part })
  const pick = (next: string) => {
    if (next === '') return change(says, review === undefined ? [] : [{ kind: 'remove', path }])
    if (next === 'weeks') return write(candidates.slice(-1))
    return write(next === 'yes' && share !== '' ? { share } : next)
  }
  const moveWeek = (at: number, to: number) => writeWeeks(weeks.toSpliced(at, 1).toSpliced(to, 0, weeks[at]!))
  // This week's own lists and the class file are no earlier weeks.
  const own = [...listFilesIn(plan.data), textOf(plan.data, 'class file')]
  const candidates = plan.weeks.filter(each => !own.includes(each))
  const others = candidates.filter(each => !weeks.includes(each))
  return (
    <fieldset class="review">
      <legend class="only-heard">Words of earlier weeks{whose === '' ? '' : ` for ${whose}`}</legend>
      <div class="fields">
        <ChoiceField
          label="Words of earlier weeks"
          value={kind}
          none={none}
          choices={[
            ...(candidates.length > 0 || weeks.length > 0
              ? [{ value: 'weeks', label: 'come back from the weeks named here' }]
              : []),
            { value: 'yes', label: 'come back from the weeks of the class file' },
            { value: 'no', label: 'do not come back' },
          ]}
          id={id}
          commit={pick}
        />
        {kind !== '' && kind !== 'no' && (
          <ChoiceField
            label="How many of the list are old words"
            value={share}
            none="as usual: 1/4"
            choices={shares}
            id={`${id}-share`}
            commit={next =>
              kind === 'weeks' ? writeWeeks(weeks, next) : write(next === '' ? 'yes' : { share: next })
            }
          />
        )}
      </div>
      {kind === 'weeks' && (
        <>
          <p>The weeks as they were taught, last week the last:</p>
          <ol class="weeks">
            {weeks.map((week, at) => {
              const name = typeof week === 'string' ? week : `the words ${entriesOf(week).join(', ')}`
              return (
                <li key={at}>
                  <span>{name}</span>
                  <span class="row-tools">
                    <button
                      type="button"
                      disabled={at === 0}
                      aria-label={`Move ${name} up`}
                      onClick={() => void moveWeek(at, at - 1)}
                    >
                      ↑
                    </button>
                    <button
                      type="button"
                      disabled={at === weeks.length - 1}
                      aria-label={`Move ${name} down`}
                      onClick={() => void moveWeek(at, at + 1)}
                    >
                      ↓
                    </button>
                    <button
                      type="button"
                      onClick={() => {
                        document.getElementById(id)?.focus()
                        void writeWeeks(weeks.toSpliced(at, 1))
                      }}
                    >
                      Take out<span class="only-heard"> {name}</span>
                    </button>
                  </span>
                </li>
              )
            })}
          </ol>
          {others.length > 0 && (
            <ChoiceField
              label="Another week"
              value=""
              none="choose its plan or its list"
              choices={others}
              id={`${id}-more`}
              commit={next => next !== '' && writeWeeks([...weeks, next])}
            />
          )}
        </>
      )}
    </fieldset>
  )
}

/** For the class. */
export function Review() {
  const { plan } = useDesk()
  return (
    <section aria-labelledby="review-head">
      <h3 id="review-head">Words that come back</h3>
      <p class="lead">
        Words of earlier weeks stand among those of this week, each after a while that grows: 1 week, then 2,
        then 4. A week is a plan or a list that lies beside this plan.
      </p>
      <ReviewField
        holder={plan.data ?? undefined}
        path={[keyIn(plan.data, 'review')]}
        none="as the class file says, and else not"
        id="at-review"
      />
    </section>
  )
}
