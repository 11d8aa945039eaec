import type { ArtSlot } from '../faces/face.js'

/** A teacher's picture as read from its file. */
export interface Picture {
  readonly bytes: Uint8Array
  readonly mediaType: 'image/png' | 'image/jpeg'
}

/** A slot filled with a picture, or left empty where there is none; `description` is for a reader who cannot see it. */
export function pictureSlot(picture: Picture | undefined, description: string): ArtSlot {
  return {
    kind: 'art',
    draw: ({ widthMm, heightMm }) => ({
      widthMm,
      heightMm,
      shapes:
        picture === undefined
          ? []
          : [{ kind: 'image', ...picture, description, box: { xMm: 0, yMm: 0, widthMm, heightMm } }],
      text: [],
    }),
  }
}
