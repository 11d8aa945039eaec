/** A thing to print as a picture of her own words. */
import { useEffect, useRef, useState } from 'preact/hooks'
import type { Data, LayoutPicture } from '../messages.js'
import { fetchLayoutPicture } from './connection.js'
import { useDesk } from './desk-state.js'

export interface PictureProps {
  /** With its layout and whatever else is said of it. */
  readonly item: { readonly [key: string]: Data }
  /** Its first sheet, or one piece from before or behind. */
  readonly of: 'sheet' | 'front' | 'back'
}

/** Asked for when it comes into view; the last one stays until the next has come. */
export function Picture({ item, of }: PictureProps) {
  const { plan } = useDesk()
  const [found, setFound] = useState<LayoutPicture>({})
  const [isSeen, setSeen] = useState(false)
  const place = useRef<HTMLSpanElement>(null)
  const asked = JSON.stringify(item)
  useEffect(() => {
    const observer = new IntersectionObserver(entries => {
      if (entries.some(({ isIntersecting }) => isIntersecting)) setSeen(true)
    })
    if (place.current !== null) observer.observe(place.current)
    return () => observer.disconnect()
  }, [])
  useEffect(() => {
    let isWanted = isSeen
    if (!isSeen) return
    void fetchLayoutPicture(asked, of).then(told => isWanted && setFound(told))
    return () => {
      isWanted = false
    }
  }, [asked, of, plan.version, isSeen])
  if (found.picture !== undefined) return <img class="thing" src={found.picture} alt="" />
  return (
    <span ref={place} class="thing none">
      {found.why}
    </span>
  )
}
