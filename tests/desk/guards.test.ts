import { expect, it } from 'vitest'
import { admit, cookieName } from '../../src/desk/server/guards.js'

const keeper = { port: 4711, key: 'k'.repeat(32), cookie: 'c'.repeat(43) }
const host = '127.0.0.1:4711'
const cookie = `other=1; ${cookieName(4711)}=${keeper.cookie}`
const step = {
  method: 'POST',
  url: '/step',
  headers: {
    host,
    cookie,
    origin: `http://${host}`,
    'content-type': 'application/json',
    'sec-fetch-site': 'same-origin',
  },
}

it('lets its own page in', () => {
  expect(admit(step, keeper)).toBe('welcome')
  expect(admit({ method: 'GET', url: '/names', headers: { host, cookie } }, keeper)).toBe('welcome')
})

it('exchanges the key in the address for a cookie', () => {
  const opened = { method: 'GET', url: `/?key=${keeper.key}`, headers: { host, 'sec-fetch-site': 'none' } }
  expect(admit(opened, keeper)).toBe('gives its key')
})

it.each([
  [
    'another name for this address',
    { ...step, headers: { ...step.headers, host: 'marsh.example:4711' } },
    421,
  ],
  [
    'the name localhost, which is not printed',
    { ...step, headers: { ...step.headers, host: 'localhost:4711' } },
    421,
  ],
  [
    'another port of this machine',
    { ...step, headers: { ...step.headers, origin: 'http://127.0.0.1:8080' } },
    403,
  ],
  ['another site', { ...step, headers: { ...step.headers, origin: 'https://marsh.example' } }, 403],
  ['a page without an origin', { ...step, headers: { ...step.headers, origin: 'null' } }, 403],
  ['a change that tells no origin', { ...step, headers: { ...step.headers, origin: undefined } }, 403],
  [
    'a picture on a page of another server here',
    { method: 'GET', url: '/sheets/1.svg', headers: { host, cookie, 'sec-fetch-site': 'same-site' } },
    403,
  ],
  ['a form', { ...step, headers: { ...step.headers, 'content-type': 'text/plain' } }, 415],
  ['no cookie', { ...step, headers: { ...step.headers, cookie: undefined } }, 403],
  [
    'a cookie that was guessed',
    { ...step, headers: { ...step.headers, cookie: `${cookieName(4711)}=${'x'.repeat(43)}` } },
    403,
  ],
  ['a key that was guessed', { method: 'GET', url: `/?key=${'x'.repeat(32)}`, headers: { host } }, 403],
  [
    'the key on a link of another site',
    { method: 'GET', url: `/?key=${keeper.key}`, headers: { host, 'sec-fetch-site': 'cross-site' } },
    403,
  ],
  ['another way of asking', { ...step, method: 'DELETE' }, 405],
])('refuses %s', (_, asked, status) => {
  expect(admit(asked, keeper)).toEqual({ refused: status })
})
