import { describe, expect, it } from 'vitest'
import { problemsOf } from '../reading.js'

describe('broken YAML', () => {
  it.each([
    ['a tab', 'words:\n\t- reed\nprint: [key]', '2:1: error: a tab at the beginning of the line'],
    [
      'a list never closed',
      'words: [reed, marsh\nprint: [key]',
      '1:8: error: a bracket opened here is never closed',
    ],
    [
      'braces never closed',
      'words: [reed]\nprint: [{layout: key]\n',
      '2:9: error: a bracket opened here is never closed',
    ],
    ['a quote never closed', 'words:\n  - "reed\n  - marsh\n', '2:5: error: this quote mark has no partner'],
    [
      'an apostrophe at the beginning',
      "words:\n  - reed\n  - 'tis\n",
      '3:5: error: this quote mark has no partner',
    ],
    [
      'two colons',
      'title: marsh: a week\n',
      '1:8: error: a second colon on this line, or a line indented without need',
    ],
    [
      'a key without colon',
      'words:\n  - reed\ntitel\nprint: [key]\n',
      '3:1: error: a key without its colon, or a text that runs on into a key',
    ],
    ['a stray sign', 'title: @marsh\n', '1:8: error: a sign that does not belong here'],
    ['a bracket too many', 'words: [reed]]\n', '1:14: error: a sign that does not belong here'],
    ['a backslash', 'title: "a\\qb"\n', '1:10: error: a backslash inside double quotes with no meaning'],
    [
      'two plans in one',
      'words: [reed]\n---\nprint: [key]\n',
      '2:1: error: a line of three dashes in the middle of the file',
    ],
    ['a list as a key', '? [a, b]\n: c\n', '1:3: error: a key must be plain text'],
    ['an alias of nothing', 'words: [*reed]\n', '1:9: error: the alias *reed stands for nothing'],
    [
      'an alias inside itself',
      'words: &w [reed, *w]\n',
      '1:18: error: the alias *w stands inside what it stands for',
    ],
  ])('%s', (_what, text, problem) => {
    expect(problemsOf(text)).toEqual([`week.yaml:${problem}`])
  })

  it('is told on each line where it is found', () => {
    expect(problemsOf('title: "a\\qb"\nclass: "a\\qb"\nprint: [key]\n')).toEqual([
      'week.yaml:1:10: error: a backslash inside double quotes with no meaning',
      'week.yaml:2:10: error: a backslash inside double quotes with no meaning',
    ])
  })

  it('refuses aliases that unfold without end, before they fill the memory', () => {
    const levels = 'bcdefghij'
    const lines = [...levels].map((name, index) => {
      const below = `*${'abcdefghi'[index]}`
      return `${name}: &${name} [${Array.from({ length: 10 }, () => below).join(', ')}]`
    })
    const text = `a: &a [x, x, x, x, x, x, x, x, x, x]\n${lines.join('\n')}\n`
    expect(problemsOf(text).map(problem => problem.replace(/:\d+:\d+:/, ':'))).toEqual([
      'week.yaml: error: the aliases unfold into more than a plan can hold',
    ])
  })

  it.each([
    ['brackets', '['.repeat(100_000)],
    ['dashes', '- '.repeat(100_000)],
    ['questions', '? '.repeat(100_000)],
  ])('refuses %s by the hundred thousand', (_what, text) => {
    expect(problemsOf(text)).toEqual(['week.yaml: error: the text is nested too deeply to be read'])
  })

  it('refuses more levels than a plan has', () => {
    const text = Array.from({ length: 30 }, (_, level) => `${'  '.repeat(level)}a:`).join('\n')
    expect(problemsOf(`${text} x`)).toEqual(['week.yaml:21:41: error: too many levels inside one another'])
  })
})
