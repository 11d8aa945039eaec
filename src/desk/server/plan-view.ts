/** The plan as the page is shown it: its data, and beside each word what the study tells of it. */
import { dirname, sep } from 'node:path'
import {
  inPlainSounds,
  isKeys,
  type KeptWork,
  type LookedAtPlan,
  lookAtPlan,
  type PathFinder,
  type PlanPath,
  type Problem,
  pathFinder,
  planData,
  respelling,
  soundsInASentence,
  studyTypedWords,
  type Word,
  waysMeant,
} from '../../oaktag.js'
import type { Data, DeskPattern, DeskPlan, DeskProblem, DeskWord, NoWordHere, Waits } from '../messages.js'
import { type FolderFiles, withPlanText } from './folder-files.js'
import type { Pictures } from './picture-store.js'
import { picturesBeside } from './pictures-beside.js'
import type { PlanFile } from './plan-file.js'

/** More are in the file; a page that shows ten thousand would be of use to nobody. */
const mostWordsShown = 300

/** A word of ours where she has none yet. */
export const standIn = 'reed'

export interface LookedAt {
  readonly plan: DeskPlan
  readonly looked: LookedAtPlan | undefined
  readonly problems: readonly Problem[]
  /** What has to come before there can be sheets. */
  readonly waits: Waits | undefined
}

export interface Viewing {
  readonly path: string
  readonly shownName: string
  readonly file: PlanFile
  readonly files: FolderFiles
  readonly kept: KeptWork
  readonly pictures: Pictures
  readonly definitions: readonly { readonly name: string; readonly summary: string }[]
}

export function viewPlan({ path, shownName, file, files, kept, pictures, definitions }: Viewing): LookedAt {
  const data = planData(file.text()) ?? null
  const { text, waits } = finished(file.text(), data ?? undefined)
  const { value, problems } = lookAtPlan({ plan: path, files: withPlanText(files, path, text), kept })
  const looked = value && (waits === 'words' ? { ...value, words: [] } : value)
  const find = pathFinder(file.text())
  const words = looked?.words ?? []
  const own = new Map<number, DeskWord>()
  const others: DeskWord[] = []
  for (const { word, place } of words.slice(0, mostWordsShown)) {
    const index = place.file === path ? indexOfWord(find(place.line ?? 0, place.column)) : undefined
    const told = tellWord(word, looked, pictures)
    if (index === undefined) others.push(told)
    else own.set(index, told)
  }
  const listed = listAt(data, 'words')
  return {
    looked,
    problems,
    waits,
    plan: {
      version: file.version(),
      file: shownName,
      data,
      undo: file.undoes(),
      redo: file.redoes(),
      words: listed.map((entry, index) => own.get(index) ?? alone(entry, looked, pictures)),
      otherWords: others,
      patterns: patternsOf(
        words.map(({ word }) => word),
        definitions,
      ),
      pictures: picturesBeside(path),
      looks: (looked?.picturesOfMarks() ?? []).map(svg => (svg === undefined ? null : pictures.keep(svg))),
    },
  }
}

/** A plan that says yet nothing of what is printed, or has no words, is looked at as if it did. */
function finished(
  text: string,
  held: Data | undefined,
): { readonly text: string; readonly waits?: Waits | undefined } {
  // One that stands in braces cannot be added to at its end.
  if (!isKeys(held) || /^(?:\s|#.*)*\{/.test(text)) return { text }
  const hasBrackets = /^[^:#]+:[ \t]*\[[ \t]*\]/m.test(text)
  const isEmpty = (key: string) => held[key] === '' || (hasBrackets && isEmptyList(held[key]))
  const keys = Object.keys(held).filter(key => !isEmpty(key))
  const has = (...names: readonly string[]) => keys.some(key => names.includes(key.toLowerCase()))
  const lacksWords = !has('words', 'groups')
  const more = [
    ...(lacksWords ? [`words: [${standIn}]`] : []),
    ...(has('print', 'week') ? [] : ['print: [word-cards]']),
  ]
  if (more.length === 0) return { text }
  const lines = text.split('\n').map(line => (isEmpty(/^([^:#]+):/.exec(line)?.[1] ?? '') ? '' : line))
  return { text: [...lines, ...more, ''].join('\n'), waits: lacksWords ? 'words' : 'things' }
}

function isEmptyList(data: Data | undefined): boolean {
  return data !== undefined && isList(data) && data.length === 0
}

function indexOfWord(path: PlanPath | undefined): number | undefined {
  const [key = '', index] = path ?? []
  return typeof key === 'string' && key.toLowerCase() === 'words' && typeof index === 'number'
    ? index
    : undefined
}

function listAt(data: Data | null, key: string): readonly Data[] {
  if (data === null || typeof data === 'string' || isList(data)) return []
  const found = Object.entries(data).find(([name]) => name.toLowerCase() === key)?.[1]
  return found !== undefined && isList(found) ? found.slice(0, mostWordsShown) : []
}

function isList(data: Data): data is readonly Data[] {
  return Array.isArray(data)
}

/** A word that the plan's reading left out, studied by itself, or what keeps it from being one. */
function alone(
  entry: Data,
  looked: LookedAtPlan | undefined,
  pictures: Pictures,
): DeskWord | NoWordHere | null {
  const text = typeof entry === 'string' ? entry : isList(entry) ? '' : (entry.word ?? '')
  if (typeof text !== 'string' || text === '' || /\.(?:txt|csv)$/i.test(text)) return null
  return tellTyped([text], looked, pictures)[0] ?? null
}

/** Words as they are being typed. */
export function tellTyped(
  typed: readonly string[],
  looked: LookedAtPlan | undefined,
  pictures: Pictures,
): readonly (DeskWord | NoWordHere)[] {
  return typed.map(text => {
    const studied = studyTypedWords([text])
    if (studied.ok) return tellWord(studied.value[0]!, looked, pictures)
    const { message, advice } = studied.problems[0]!
    return { trouble: inASentence(message), advice }
  })
}

function tellWord(word: Word, looked: LookedAtPlan | undefined, pictures: Pictures): DeskWord {
  const svg = looked?.pictureOf(word)
  const said = [...new Set(word.pronunciations.map(each => respelling(word, each)))]
  return {
    text: word.text,
    source: word.source,
    yours: word.overridden ?? [],
    sounds: soundsInASentence(word),
    said: said.slice(0, 4),
    meanings: waysMeant(word).map(({ pronunciation, meaning }) => ({
      meaning,
      said: respelling(word, pronunciation),
    })),
    soundCount: word.soundCount,
    pieces: word.pieces,
    syllables: word.syllables,
    partsOfSpeech: word.partsOfSpeech,
    partsAreGuessed: word.partsOfSpeechGuessed === true,
    plural: word.plural === null ? null : { form: word.plural.form, rule: word.plural.rule },
    patterns: word.patterns.map(({ pattern, letters, start, end, place, source, why }) => ({
      pattern,
      letters,
      start,
      end,
      place,
      yours: source === 'teacher',
      why: inPlainSounds(why),
    })),
    notes: (word.notes ?? []).map(inPlainSounds),
    ...(word.clue === undefined || word.clueIsDraft === true ? {} : { clue: word.clue }),
    ...(word.clueDraft === undefined ? {} : { clueDraft: word.clueDraft }),
    ...(svg === undefined ? {} : { picture: pictures.keep(svg) }),
  }
}

function patternsOf(
  words: readonly Word[],
  definitions: readonly { readonly name: string; readonly summary: string }[],
): readonly DeskPattern[] {
  const showing = new Map<string, string[]>()
  for (const word of new Set(words))
    for (const pattern of new Set(word.patterns.map(each => each.pattern))) {
      const texts = showing.get(pattern) ?? []
      showing.set(pattern, [...texts, word.text])
    }
  return definitions.flatMap(({ name, summary }) => {
    const own = showing.get(name)
    return own === undefined ? [] : [{ name, definition: summary, words: own }]
  })
}

/** A problem with what it is about in the plan. */
export function tellProblem(
  { severity, place, message, advice }: Problem,
  path: string,
  find: PathFinder,
): DeskProblem {
  const own = place.file === path && place.line !== undefined
  const at = own ? find(place.line, place.column) : undefined
  const where =
    place.file === path || place.file === ''
      ? ''
      : `In ${place.file.split(/[\\/]/).at(-1)}${place.line === undefined ? '' : `, line ${place.line}`}: `
  return {
    severity,
    message: besidePlan(where === '' ? inASentence(message) : `${where}${message}.`, path),
    advice: besidePlan(advice, path),
    ...(own ? { line: place.line } : {}),
    ...(at === undefined ? {} : { path: at }),
  }
}

/** Files beside the plan are known by their own names. */
export function besidePlan(text: string, path: string): string {
  return text.replaceAll(`${dirname(path)}${sep}`, '')
}

function inASentence(clause: string): string {
  return `${clause.charAt(0).toUpperCase()}${clause.slice(1)}.`
}
