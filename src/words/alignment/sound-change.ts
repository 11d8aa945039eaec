/** How two words differ whose sounds are the same but for one. */
export interface SoundChange {
  readonly kind: 'changed' | 'added' | 'taken away'
  /** Index of the sound: in the second word, or in the first where it is taken away. */
  readonly at: number
}

/** Sounds in ARPABET without stress; undefined where more than one sound differs, or none. */
export function soundChange(from: readonly string[], to: readonly string[]): SoundChange | undefined {
  const most = Math.min(from.length, to.length)
  let same = 0
  while (same < most && from[same] === to[same]) same++
  const restIsSame = (fromAt: number, toAt: number): boolean =>
    from.length - fromAt === to.length - toAt &&
    from.slice(fromAt).every((sound, index) => sound === to[toAt + index])
  if (from.length === to.length)
    return same < most && restIsSame(same + 1, same + 1) ? { kind: 'changed', at: same } : undefined
  if (from.length + 1 === to.length && restIsSame(same, same + 1)) return { kind: 'added', at: same }
  if (from.length === to.length + 1 && restIsSame(same + 1, same)) return { kind: 'taken away', at: same }
  return undefined
}
