/** The form in which two spellings of a name are the same: `Consonant_Digraph` → `consonant-digraph`. */
export function foldName(name: string): string {
  // Most names are plain already, and a long word list asks for tens of thousands of them.
  if (/^[a-z]+$/.test(name)) return name
  return name
    .normalize('NFC')
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, '-')
}
