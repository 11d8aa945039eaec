import { useEffect, useRef } from 'preact/hooks'
import type { DeskItem } from '../messages.js'
import { watchSheet } from './seen-sheets.js'

/** A sheet as it prints: small, or in the true size that its file tells. */
export function SheetPicture({
  item: { name, sheets },
  at,
  small = false,
}: {
  readonly item: DeskItem
  /** Its place among the item's sheets, from 0. */
  readonly at: number
  readonly small?: boolean
}) {
  const picture = useRef<HTMLImageElement>(null)
  const sheet = sheets[at]
  const isThere = sheet !== undefined
  useEffect(
    () => (picture.current === null ? undefined : watchSheet(picture.current, { item: name, sheet: at })),
    [name, at, isThere],
  )
  if (sheet === undefined) return null
  const { address, title, widthMm, heightMm } = sheet
  if (!small) return <img ref={picture} class="sheet" src={address} alt={title} />
  // Its shape, so that nothing moves when it comes.
  return (
    <img
      ref={picture}
      class="sheet small"
      src={address}
      alt={title}
      loading="lazy"
      width={Math.round(widthMm)}
      height={Math.round(heightMm)}
    />
  )
}
