/** The words of a plan, each beside the entry that it stands in: of the class, of a group, of a list beside the plan. */
import { dirname, join } from 'node:path'
import {
  dataAt,
  type ListFileEntry,
  type LookedAtGroup,
  type LookedAtPlan,
  listFileEntries,
  type Place,
  pathFinder,
} from '../../oaktag.js'
import type { Data, DeskFile, DeskGroup, DeskPlan, DeskWord, ToldEntry } from '../messages.js'
import { folded, listFilesIn, listOf, ownWordsKey } from '../plan-values.js'
import { isStrange } from './desk-texts.js'
import type { Pictures } from './picture-store.js'
import type { PlanFile } from './plan-file.js'
import { tellTyped, tellWord } from './word-view.js'

/** More are in the file; a page that shows ten thousand would be of use to nobody. */
const mostWordsShown = 300

type Lists = Pick<DeskPlan, 'words' | 'groups' | 'files' | 'oldWords'>

interface Listing {
  readonly path: string
  readonly file: PlanFile
  readonly pictures: Pictures
}

export function tellLists(
  { path, file, pictures }: Listing,
  data: Data | null,
  looked: LookedAtPlan | undefined,
): Lists {
  const files = listFilesIn(data).map(name => {
    const text = file.lists().get(name)
    const entries = text === undefined ? undefined : listFileEntries({ name, text })
    return { name, text, entries, path: join(dirname(path), name) }
  })
  const find = pathFinder(file.text())
  /** By the place of their entry, the first telling of each. */
  const told = new Map<string, DeskWord>()
  const oldWords: DeskWord[] = []
  for (const { word, place, picture } of (looked?.words ?? []).slice(0, 2 * mostWordsShown)) {
    const list = files.find(each => each.path === place.file)
    const index = list?.entries?.findIndex(({ line }) => line === place.line)
    const key =
      place.file === path
        ? keyOf(find(place.line ?? 0, place.column) ?? [])
        : list && index !== undefined && index >= 0 && keyOf([list.name, index])
    if (word.backAfterWeeks !== undefined) oldWords.push(tellWord(word, picture(), pictures))
    else if (key && !told.has(key)) told.set(key, tellWord(word, picture(), pictures))
  }
  const beside = (entries: readonly Data[], at: readonly (string | number)[]) =>
    entries
      .slice(0, mostWordsShown)
      .map((entry, index) => told.get(keyOf([...at, index])) ?? alone(entry, looked, pictures))
  return {
    words: beside(listOf(data, 'words'), ['words']),
    groups: listOf(data, 'groups').map((group, index): DeskGroup => {
      const key = ownWordsKey(group)
      const words = beside(listOf(group, key), ['groups', index, key])
      const own = groupAt(index)
      const looks = drawn(own?.picturesOfMarks() ?? [], pictures)
      return { words, looks, ofClass: own && words.length === 0 ? classWords(own) : [] }
    }),
    files: files.map(({ name, text, entries }) => tellFile({ name, text, entries }, beside)),
    oldWords,
  }

  function groupAt(index: number): LookedAtGroup | undefined {
    return looked?.groups.find(({ place }) => {
      const [key, at] = find(place.line ?? 0, place.column) ?? []
      return place.file === path && fold(key) === 'groups' && at === index
    })
  }

  function classWords({ pictureOf }: LookedAtGroup): readonly DeskWord[] {
    const lists = listFilesIn({ words: listOf(data, 'words') })
    const isOfClass = ({ file: own, line = 0, column }: Place) =>
      own === path
        ? fold(find(line, column)?.[0]) === 'words'
        : lists.some(name => join(dirname(path), name) === own)
    const words = looked?.words.filter(({ place }) => isOfClass(place)) ?? []
    return words.slice(0, 60).map(({ word }) => tellWord(word, pictureOf(word), pictures))
  }
}

interface NamedList {
  readonly name: string
  readonly text: string | undefined
  readonly entries: readonly ListFileEntry[] | undefined
}

function tellFile(
  { name, text, entries }: NamedList,
  beside: (entries: readonly Data[], at: readonly (string | number)[]) => readonly ToldEntry[],
): DeskFile {
  const list = (entries ?? []).map(({ data }) => data)
  const why =
    text === undefined
      ? `${name} does not lie beside the plan, or is too long, so it is not opened here. Put it into the plan’s folder.`
      : entries === undefined
        ? `${name} cannot be read as a list of words. Mend it in a spreadsheet or an editor.`
        : isStrange(text)
          ? `${name} is not in UTF-8, so nothing is changed in it. Open it in an editor and save it as plain text in UTF-8.`
          : undefined
  return {
    name,
    entries: list,
    words: beside(list, [name]),
    isTable: /\.csv$/i.test(name),
    ...(why === undefined ? {} : { why }),
  }
}

function keyOf(path: readonly (string | number)[]): string {
  // A word with keys is found at its own key.
  const upTo = path.findLastIndex(step => typeof step === 'number') + 1
  return path.slice(0, upTo).map(fold).join('/')
}

function fold(step: string | number | undefined): string {
  return folded(String(step))
}

/** A word that the plan's reading left out, studied by itself, or what keeps it from being one. */
function alone(entry: Data, looked: LookedAtPlan | undefined, pictures: Pictures): ToldEntry {
  const text = typeof entry === 'string' ? entry : dataAt(entry, ['word'])
  if (typeof text !== 'string' || text === '' || /\.(?:txt|csv)$/i.test(text)) return null
  return tellTyped([text], looked, pictures)[0] ?? null
}

export function drawn(svgs: readonly (string | undefined)[], pictures: Pictures): readonly (string | null)[] {
  return svgs.map(svg => (svg === undefined ? null : pictures.keep(svg)))
}
