/** The lists that a plan or a class file names as earlier weeks, read one after the other. */
import { resolve } from 'node:path'
import { fail, failWith, together } from '../../outcomes.js'
import { errorAt, type Outcome } from '../../problems.js'
import type { FileAccess } from '../disk/file-access.js'
import { tooMany } from '../most-entries.js'
import { repetitions } from '../values/repetitions.js'
import { type Entry, misfit, type TextEntry } from '../yaml/entry.js'
import {
  type EarlierContext,
  type EarlierWeek,
  earlierFile,
  listedWords,
  listForm,
  pathFrom,
  planForm,
} from './earlier-plan.js'

export const listForms =
  'Name earlier plans (.yaml) or word lists (.txt, .csv), or write the words of a week in brackets.'

/** In the order in which they were taught, last week's the last. */
export function readEarlierWeeks(
  lists: readonly Entry[],
  context: EarlierContext,
): Outcome<readonly EarlierWeek[]> {
  const place = lists[0]?.place ?? { file: context.file }
  const known = [...tooMany('earlier weeks', lists, place), ...namedTwice(lists, context)]
  if (known.length > 0) return failWith(known)
  const { files, bytesRead } = counted(context.files)
  const weeks = together(
    lists.map(list => {
      if (bytesRead() <= mostBytes) return readEarlierWeek(list, { ...context, files })
      const advice = 'Up to 3 million are read: check that these are the files you mean.'
      return fail<EarlierWeek>(
        errorAt(list.place, 'the earlier weeks before this one have millions of bytes', advice),
      )
    }),
  )
  if (!weeks.ok) return weeks
  const words = weeks.value.flatMap(week => [week.words, ...week.groups.values()]).flat()
  const long = tooMany('words of earlier weeks', words, place)
  return long.length > 0 ? failWith(long) : weeks
}

/** All of them together; some hundred weeks have less than a tenth of it. */
const mostBytes = 3_000_000

function readEarlierWeek(list: Entry, context: EarlierContext): Outcome<EarlierWeek> {
  if (list.kind === 'list') return listedWords(list, context)
  if (list.kind !== 'text') return misfit(list, 'an earlier week', listForms)
  if (!planForm.test(list.text) && !listForm.test(list.text))
    return fail(errorAt(list.place, `"${list.text}" is no plan and no word list`, listForms))
  if (resolve(pathFrom(list.text, context.file)) !== resolve(context.file)) return earlierFile(list, context)
  const advice = 'Name the plans of earlier weeks alone.'
  return fail(errorAt(list.place, `"${list.text}" is this plan itself`, advice))
}

function namedTwice(lists: readonly Entry[], { file }: EarlierContext) {
  const named = lists.filter((list): list is TextEntry => list.kind === 'text')
  return repetitions(named, ({ text }) => resolve(pathFrom(text, file))).map(({ item, lines }) =>
    errorAt(item.place, `the week "${item.text}" stands twice${lines}`, 'Take one of the two out.'),
  )
}

/** The same files, and how many bytes have been read of them. */
function counted(files: FileAccess): { readonly files: FileAccess; readonly bytesRead: () => number } {
  let bytes = 0
  const read: FileAccess['read'] = (path, limit) => {
    // A plan may name a thousand lists.
    if (bytes > mostBytes) return { kind: 'too large', sizeBytes: bytes }
    const found = files.read(path, limit)
    if (found.kind === 'bytes') bytes += found.bytes.length
    return found
  }
  return { files: { read, beginning: files.beginning }, bytesRead: () => bytes }
}
