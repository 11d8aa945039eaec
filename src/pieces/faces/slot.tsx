import type { CSSProperties } from 'satori/jsx'

/** A box in a face that oaktag fills itself; `name` is its key in the face's `slots`. */
export function Slot({ name, style }: { readonly name: string; readonly style: CSSProperties }) {
  return <div data-slot={name} style={{ display: 'flex', ...style }} />
}

/** A slot that lies over or under the whole face, for a border or a board's lines. */
export function OverlaySlot({ name }: { readonly name: string }) {
  return <Slot name={name} style={{ position: 'absolute', left: 0, top: 0, width: '100%', height: '100%' }} />
}
