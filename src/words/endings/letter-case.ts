/**
 * Puts a form built in lower case into the capitals of the word it came from: `Marsh` gives `Marshes`, `MARSH`
 * gives `MARSHES`, `TV` gives `TVs`. Letters shared from the left keep exactly their own case.
 */
export function inTheCaseOf(original: string, form: string): string {
  const shared = lengthOfSharedStart(original.toLowerCase(), form)
  const kept = original.slice(0, shared)
  const added = form.slice(shared)
  return isWrittenInCapitals(original) ? kept + added.toUpperCase() : capitalStart(original, kept + added)
}

function capitalStart(original: string, form: string): string {
  const first = original.charAt(0)
  return first !== first.toLowerCase() ? form.charAt(0).toUpperCase() + form.slice(1) : form
}

/** A word in capitals throughout, as against initials such as TV, which take a small s. */
function isWrittenInCapitals(text: string): boolean {
  return text.length > 3 && text === text.toUpperCase() && text !== text.toLowerCase()
}

function lengthOfSharedStart(first: string, second: string): number {
  let length = 0
  while (length < first.length && first.charAt(length) === second.charAt(length)) length += 1
  return length
}
