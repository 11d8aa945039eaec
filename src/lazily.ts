/** Made when it is first asked for, and the same from then on: nobody waits for what is not needed. */
export function lazily<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined
  return () => {
    made ??= { value: make() }
    return made.value
  }
}
