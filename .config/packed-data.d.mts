export interface Places {
  /** The project's folder. */
  readonly root: string
  /** Where it is compiled to. */
  readonly build: string
  /** The modules that pack, from the build folder; the project's own where left out. */
  readonly modules?: readonly string[]
}

export const packedFiles: readonly string[]
export function fingerprintOf(places: Places): string
export function isPacked(noted: { readonly build: string; readonly fingerprint: string }): boolean
export function forgetPacked(build: string): void
export function notePacked(noted: { readonly build: string; readonly fingerprint: string }): void
