import { drawnElements } from './svg-uses.js'

/** What an SVG picture may hold: shapes of its own, nothing that has to be fetched and no letters that need a font. */

/** @returns what is wrong with it and what to do, or nothing where it can be used */
export function problemInSvg(svg: string): { readonly problem: string; readonly advice: string } | undefined {
  if (!/<svg[\s>]/.test(svg)) {
    return { problem: 'is no SVG picture', advice: 'Save the picture as PNG, JPEG or SVG.' }
  }
  const outside = outsideReference(svg)
  if (outside !== undefined) {
    return {
      problem: `points outside itself: ${outside}`,
      advice: 'Save the picture with everything embedded, or as PNG.',
    }
  }
  if (/<(?:text|foreignObject)[\s>]/.test(svg)) {
    return {
      problem: 'has letters that need a typeface of their own',
      advice: 'Turn its text into outlines ("object to path" in most drawing programs), or save it as PNG.',
    }
  }
  if (svg.includes('<use') && drawnElements(svg, mostElements) > mostElements) {
    return {
      problem: 'draws its shapes over and over, more than a drawing for a card does',
      advice: 'Save the picture as PNG.',
    }
  }
  return undefined
}

/** Drawn in a second; copies of copies of a small file may come to millions. */
const mostElements = 20_000

/** Pictures of pixels inside the file are all that a reference may hold. */
const embedded = /^(?:#|data:image\/(?:png|jpeg|gif|webp)[;,])/i

function outsideReference(svg: string): string | undefined {
  const links = [...svg.matchAll(/\bhref\s*=\s*(?:"([^"]*)"|'([^']*)')/gi)]
  const functions = [...svg.matchAll(/\burl\(\s*(?:"([^"]*)"|'([^']*)'|([^)"']*))\s*\)/gi)]
  const named = [...links, ...functions].map(([, ...ways]) =>
    (ways.find(way => way !== undefined) ?? '').trim(),
  )
  const fetched = named.find(target => target !== '' && !embedded.test(target))
  const instruction = /<!ENTITY|<\?xml-stylesheet|@import/i.exec(svg)?.[0]
  return fetched === undefined ? instruction : shortened(fetched)
}

function shortened(text: string): string {
  return text.length > 60 ? `${text.slice(0, 57)}…` : text
}
