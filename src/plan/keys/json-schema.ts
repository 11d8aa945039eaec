/** The tables of keys as JSON Schema (draft 2020-12), for editors that check and complete YAML. */
import { foldName } from '../values/fold-name.js'
import { anyCase, anySpelling } from './spelling-patterns.js'
import { takenInWords } from './taken-in-words.js'
import type { FormTaken, Key, KeysTaken, ListTaken, NamesTaken, Takes } from './takes.js'

export type Schema = { readonly [keyword: string]: unknown }
type Keys = Readonly<Record<string, Key<unknown>>>

export interface NamedSchema {
  readonly id: string
  readonly title: string
}

/** The schema of a file whose top is these keys. */
export function schemaOf(top: KeysTaken, { id, title }: NamedSchema): Schema {
  const groups = new GroupSchemas()
  const root = groups.reference(top)
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: id,
    title,
    ...root,
    $defs: groups.all(),
  }
}

/** Each group of keys once, however many places it can stand at. */
class GroupSchemas {
  private readonly made = new Map<string, Schema>()

  all(): Schema {
    return Object.fromEntries(this.made)
  }

  reference(taken: KeysTaken): Schema {
    const name = foldName(taken.what.replace(/^an? /, '').replaceAll(/[":]/g, ''))
    if (!this.made.has(name)) {
      this.made.set(name, {})
      this.made.set(name, taken.layouts === undefined ? this.group(taken, name) : this.item(taken, name))
    }
    return { $ref: `#/$defs/${name}` }
  }

  private group({ keys, needed, synonyms = {}, cutOff }: KeysTaken, name: string): Schema {
    const properties = this.properties(keys())
    const shape = closed(properties, `#/$defs/${name}/properties`, synonyms)
    const others = cutOff === undefined ? {} : { [anyCase(`^\\s*${cutOff}\\s*$`)]: { type: 'null' } }
    const patternProperties = { ...shape.patternProperties, ...others }
    return { ...shape, patternProperties, ...allNeeded(needed) }
  }

  /** The keys of an item depend on its layout. */
  private item({ keys, needed, layouts }: KeysTaken, name: string): Schema {
    const general = keys()
    const layout = general.layout!
    const ofAny = `${name}-of-any-layout`
    this.made.set(ofAny, { properties: this.properties(general) })
    const shared = Object.fromEntries(
      Object.keys(general).map(key => [key, { $ref: `#/$defs/${ofAny}/properties/${encodeURI(key)}` }]),
    )
    const variants = [...layouts!()].map(([of, options]) => {
      const variant = `${name}-${of}`
      // A general key wins over a layout's own of the same name.
      const properties = { ...this.properties(options), ...shared }
      this.made.set(variant, closed(properties, `#/$defs/${variant}/properties`, {}))
      const isLayout = { type: 'string', pattern: `^\\s*${anySpelling(of)}\\s*$` }
      // biome-ignore lint/suspicious/noThenProperty: a keyword of JSON Schema, no promise's method
      return { if: { ...hasKey('layout', isLayout) }, then: { $ref: `#/$defs/${variant}` } }
    })
    return {
      type: 'object',
      properties: { layout: this.property(layout) },
      allOf: [allNeeded(needed), ...variants],
    }
  }

  private properties(keys: Keys): Schema {
    return Object.fromEntries(Object.entries(keys).map(([name, key]) => [name, this.property(key)]))
  }

  private property({ takes, text }: Key<unknown>): Schema {
    const usual = text.usual === undefined ? '' : ` Left out: ${text.usual}.`
    const does = `${text.does.charAt(0).toUpperCase()}${text.does.slice(1)}.`
    return {
      description: `${does} It takes ${takenInWords(takes)}.${usual} Example: ${text.example}`,
      ...this.value(takes),
    }
  }

  private value(takes: Takes): Schema {
    switch (takes.kind) {
      case 'text':
        return { type: ['string', 'number', 'boolean'], maxLength: takes.longest * 2 }
      case 'number':
        return {
          anyOf: [
            { type: 'integer', minimum: takes.least, maximum: takes.most },
            { type: 'string', pattern: '^\\s*[+]?\\d+\\s*$' },
          ],
        }
      case 'yes or no':
        return {
          anyOf: [{ enum: ['yes', 'no'] }, { type: 'boolean' }, { type: 'string', pattern: yesOrNo }],
        }
      case 'names':
        return ofNames(takes)
      case 'form':
        return ofForm(takes)
      case 'list':
        return this.list(takes)
      case 'keys':
        return this.reference(takes)
      case 'any of':
        return { anyOf: takes.ways.map(way => this.value(way)) }
    }
  }

  private list({ of, alone, empty }: ListTaken): Schema {
    const list = { type: 'array', items: this.value(of), ...(empty ? {} : { minItems: 1 }) }
    const ways = [list, ...(alone ? [this.value(of)] : []), ...(empty ? [{ type: 'null' }] : [])]
    return ways.length === 1 ? list : { anyOf: ways }
  }
}

const yesOrNo = `^\\s*(?:${['yes', 'no', 'on', 'off', 'true', 'false'].map(anySpelling).join('|')})\\s*$`

/** The names first, for editors that complete them; then the same in any other spelling. */
function ofNames({ names, synonyms = [] }: NamesTaken): Schema {
  const spellings = [...names, ...synonyms].map(anySpelling).join('|')
  return { anyOf: [{ enum: names }, { type: 'string', pattern: `^\\s*(?:${spellings})\\s*$` }] }
}

function ofForm({ pattern, plain = [], samples }: FormTaken): Schema {
  return { type: ['string', ...plain], pattern: anyCase(pattern), examples: samples }
}

/** Keys in any spelling, and no others. */
function closed(
  properties: Schema,
  pointer: string,
  synonyms: Readonly<Record<string, string>>,
): Schema & { readonly patternProperties: Schema } {
  const names = Object.keys(properties)
  const spelled = [...names.map(name => [name, name]), ...Object.entries(synonyms)] as const
  const others = spelled.map(([written = '', name = '']) => {
    const isPlain = written === name ? `(?!${name}$)` : ''
    return [`^${isPlain}\\s*${anySpelling(written)}\\s*$`, { $ref: `${pointer}/${encodeURI(name)}` }]
  })
  return {
    type: 'object',
    properties,
    patternProperties: Object.fromEntries(others),
    additionalProperties: false,
  }
}

/** `required` knows one spelling alone. */
function allNeeded(needed: KeysTaken['needed']): Schema {
  if (needed.length === 0) return {}
  const each = needed.map(names => ({
    anyOf: [names]
      .flat()
      .flatMap(name => [
        { required: [name] },
        { not: { propertyNames: { not: { pattern: keyForm(name) } } } },
      ]),
  }))
  return { allOf: each }
}

/** That the key is there, in any spelling, with a value of this kind. */
function hasKey(name: string, value: Schema): Schema {
  return {
    patternProperties: { [keyForm(name)]: value },
    not: { propertyNames: { not: { pattern: keyForm(name) } } },
  }
}

function keyForm(name: string): string {
  return `^\\s*${anySpelling(name)}\\s*$`
}
