import type { DeskSheet } from '../messages.js'

/** A sheet as it prints: small, or in the true size that its file tells. */
export function SheetPicture({
  sheet,
  small = false,
}: {
  readonly sheet: DeskSheet
  readonly small?: boolean
}) {
  const { address, title, widthMm, heightMm } = sheet
  if (!small) return <img class="sheet" src={address} alt={title} />
  // Its shape, so that nothing moves when it comes.
  return (
    <img
      class="sheet small"
      src={address}
      alt={title}
      loading="lazy"
      width={Math.round(widthMm)}
      height={Math.round(heightMm)}
    />
  )
}
