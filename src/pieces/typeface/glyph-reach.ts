import type { GlyphOutline } from './glyph-outline.js'

/** From where to where all points of an outline lie, in em; those beside its curves count, so its ink may reach less far. */
export interface GlyphReach {
  readonly left: number
  readonly top: number
  readonly right: number
  readonly bottom: number
}

const known = new WeakMap<GlyphOutline, GlyphReach>()

/** Looked for once a letter, which stands in many words. Nothing that is drawn: from Infinity to -Infinity. */
export function glyphReach(outline: GlyphOutline): GlyphReach {
  const reach = known.get(outline) ?? reachOf(outline)
  known.set(outline, reach)
  return reach
}

function reachOf({ commands }: GlyphOutline): GlyphReach {
  let left = Infinity
  let top = Infinity
  let right = -Infinity
  let bottom = -Infinity
  for (const { values } of commands)
    for (let index = 0; index < values.length; index += 2) {
      const x = values[index]!
      const y = values[index + 1]!
      if (x < left) left = x
      if (x > right) right = x
      if (y < top) top = y
      if (y > bottom) bottom = y
    }
  return { left, top, right, bottom }
}
