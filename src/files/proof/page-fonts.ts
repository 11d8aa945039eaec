/** A typeface that goes into the page itself, so that no request is needed for it. */
export interface PageFonts {
  readonly family: string
  readonly faces: readonly { readonly weight: number; readonly woff2: Uint8Array }[]
}

/** `@font-face` rules that hold the files. */
export function fontFaceRules({ family, faces }: PageFonts): string {
  return faces
    .map(
      ({ weight, woff2 }) =>
        `@font-face { font-family: "${family}"; font-weight: ${weight}; ` +
        `src: url(data:font/woff2;base64,${Buffer.from(woff2).toString('base64')}) format("woff2") }\n`,
    )
    .join('')
}
