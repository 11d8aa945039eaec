/** How the page speaks with its server: the plan and its sheets come by themselves, steps are sent. */
import type {
  Data,
  DeskNames,
  DeskPlan,
  DeskSheets,
  DeskWord,
  LayoutPicture,
  NoWordHere,
  ProposedLists,
  SaveAnswer,
  SeenSheet,
  Step,
  StepAnswer,
} from '../messages.js'

export interface Listening {
  readonly plan: (plan: DeskPlan) => void
  readonly sheets: (sheets: DeskSheets) => void
  readonly lost: (isLost: boolean) => void
}

/** Until the page is left; where the server has gone, the browser asks again by itself. */
export function listen({ plan, sheets, lost }: Listening): () => void {
  const source = new EventSource('/changes')
  source.addEventListener('plan', event => plan(JSON.parse(event.data)))
  source.addEventListener('sheets', event => sheets(JSON.parse(event.data)))
  source.addEventListener('open', () => lost(false))
  source.addEventListener('error', () => lost(true))
  return () => source.close()
}

const tooMuch = { ok: false, why: 'That is more than the desk takes at once. Nothing was changed.' } as const

async function ask<T>(path: string, body: unknown, otherwise: T, refused: T = otherwise): Promise<T> {
  try {
    const response = await fetch(path, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    })
    if (response.status === 400 || response.status === 413) return refused
    return response.ok ? await response.json() : otherwise
  } catch {
    return otherwise
  }
}

const unheard = { ok: false, why: 'The desk does not answer. Look whether it still runs.' } as const

export function sendStep(step: Step): Promise<StepAnswer> {
  return ask<StepAnswer>('/step', step, unheard, tooMuch)
}

export function goTo(direction: 'undo' | 'redo'): Promise<StepAnswer> {
  return ask<StepAnswer>(`/${direction}`, {}, unheard)
}

export function study(words: readonly string[]): Promise<readonly (DeskWord | NoWordHere)[]> {
  return ask<readonly (DeskWord | NoWordHere)[]>('/study', { words }, [])
}

export function save(what: 'pdf' | 'all'): Promise<SaveAnswer> {
  return ask<SaveAnswer>('/save', { what }, unheard)
}

/** What the page shows of the sheets. */
export function tellSeen(seen: readonly SeenSheet[]): Promise<unknown> {
  return ask<unknown>('/seen', { seen }, undefined)
}

export function closeDesk(): Promise<unknown> {
  return ask<unknown>('/close', {}, undefined)
}

/** @param item as JSON, its layout among it */
export async function fetchLayoutPicture(item: string, of: string): Promise<LayoutPicture> {
  const { layout } = JSON.parse(item)
  const query = new URLSearchParams({ item, of })
  const response = await fetch(`/layouts/${encodeURIComponent(layout)}?${query}`)
  return response.ok ? response.json() : {}
}

/** Names of the sorts that the words support, the best first. */
export async function fetchSorts(): Promise<readonly string[]> {
  const response = await fetch('/sorts')
  return response.ok ? response.json() : []
}

/** Lists for groups that show a pattern. */
export async function fetchProposed(pattern: string, lists: string, words: string): Promise<ProposedLists> {
  const query = new URLSearchParams({ pattern, lists, words })
  const response = await fetch(`/proposed?${query}`)
  return response.ok ? response.json() : { lists: [] }
}

/** The words of a list's file, as they would stand in the plan; undefined where it cannot be read. */
export async function fetchList(file: string): Promise<readonly Data[] | undefined> {
  const response = await fetch(`/list?${new URLSearchParams({ file })}`)
  return response.ok ? response.json() : undefined
}

export async function fetchNames(): Promise<DeskNames> {
  return (await fetch('/names')).json()
}
