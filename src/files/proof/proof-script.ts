/**
 * The page's only script, the same for every plan. Printing one set: its sheets are marked as chosen, the browser's own
 * dialogue opens, the mark goes again. Pages for the screen fill it one by one: arrow keys, the space bar or a click turn them,
 * Escape ends it. Escape leaves the true size of a sheet for the row that it stands in.
 */
export const proofScript = `(() => {
const root = document.documentElement
const printOnly = id => {
  const chosen = document.getElementById(id)
  const done = () => { root.classList.remove('choosing'); chosen.classList.remove('chosen') }
  done()
  root.classList.add('choosing')
  chosen.classList.add('chosen')
  addEventListener('afterprint', done, { once: true })
  print()
}
for (const button of document.querySelectorAll('button[data-print]')) {
  button.hidden = false
  button.addEventListener('click', () => printOnly(button.dataset.print))
}
let pages = []
let at = 0
const turnTo = page => {
  at = Math.max(0, Math.min(pages.length - 1, page))
  for (const each of pages) each.classList.toggle('now', each === pages[at])
  pages[at].querySelector('a').focus({ preventScroll: true })
}
const leave = () => {
  root.classList.remove('showing')
  for (const each of pages) each.classList.remove('now')
  const [first] = pages
  pages = []
  if (document.fullscreenElement !== null) document.exitFullscreen()
  first.closest('.item').querySelector('button[data-show]').focus()
}
const show = async id => {
  pages = [...document.getElementById(id).querySelectorAll('.sheets > .sheet')]
  root.classList.add('showing')
  turnTo(0)
  try { await root.requestFullscreen() } catch { /* The pages fill the window. */ }
}
for (const button of document.querySelectorAll('button[data-show]')) {
  button.hidden = false
  button.addEventListener('click', () => show(button.dataset.show))
}
const onward = ['ArrowRight', 'ArrowDown', 'PageDown', ' ', 'Enter']
const back = ['ArrowLeft', 'ArrowUp', 'PageUp', 'Backspace']
addEventListener('keydown', event => {
  if (pages.length === 0) return
  const { key } = event
  if (onward.includes(key)) turnTo(at + 1)
  else if (back.includes(key)) turnTo(at - 1)
  else if (key === 'Home') turnTo(0)
  else if (key === 'End') turnTo(pages.length - 1)
  else if (key === 'Escape') leave()
  else return
  event.preventDefault()
  event.stopImmediatePropagation()
})
addEventListener('click', event => {
  if (pages.length === 0 || event.target.closest('.sheet') === null) return
  event.preventDefault()
  turnTo(at + 1)
})
document.addEventListener('fullscreenchange', () => {
  if (document.fullscreenElement === null && pages.length > 0) leave()
})
addEventListener('keydown', event => {
  const shown = document.querySelector('.sheet:target')
  if (event.key !== 'Escape' || shown === null) return
  location.hash = shown.closest('.item').id
  shown.querySelector('a').focus()
})
})()
`
