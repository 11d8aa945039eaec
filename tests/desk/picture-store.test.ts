import { expect, it } from 'vitest'
import { pictureStore } from '../../src/desk/server/picture-store.js'

it('gives a picture under an address that is the same for the same picture', () => {
  const pictures = pictureStore()
  const address = pictures.keep('<svg>reed</svg>')
  expect(pictures.keep('<svg>reed</svg>')).toBe(address)
  expect(pictures.get(address.slice('/pictures/'.length, -'.svg'.length))).toBe('<svg>reed</svg>')
})

it('says when the new ones have been asked for, and waits for none that the page has', async () => {
  const pictures = pictureStore()
  const order: string[] = []
  const after = async (told: string) => {
    await pictures.asked()
    order.push(told)
  }
  pictures.keep('<svg>reed</svg>')
  const asked = after('the new one is asked for')
  // As a page does, in a turn of its own.
  setTimeout(() => {
    order.push('a page asks')
    pictures.get('reed')
  }, 5)
  await asked
  pictures.keep('<svg>reed</svg>')
  const again = after('nothing is new')
  setImmediate(() => order.push('the next turn'))
  await again
  await new Promise(setImmediate)
  expect(order).toEqual(['a page asks', 'the new one is asked for', 'nothing is new', 'the next turn'])
})
