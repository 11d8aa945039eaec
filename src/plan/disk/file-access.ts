/** How the plan stage gets at files: passed in, so that reading a plan is a function of its arguments alone. */

export interface FileAccess {
  /** The file's contents; where it is larger than `limitBytes`, only its size is told. */
  readonly read: (path: string, limitBytes: number) => FileContents
  /** Up to `count` bytes from the file's beginning. */
  readonly beginning: (path: string, count: number) => FileContents
}

export type FileContents =
  | { readonly kind: 'bytes'; readonly bytes: Uint8Array }
  | { readonly kind: 'missing' }
  | { readonly kind: 'folder' }
  | { readonly kind: 'unreadable' }
  | { readonly kind: 'too large'; readonly sizeBytes: number }
