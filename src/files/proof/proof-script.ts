/**
 * The page's only script, the same for every plan. Printing one set: its sheets are marked as chosen, the browser's own
 * dialogue opens, the mark goes again. Escape leaves the true size of a sheet for the row that it stands in.
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
addEventListener('keydown', event => {
  const shown = document.querySelector('.sheet:target')
  if (event.key !== 'Escape' || shown === null) return
  location.hash = shown.closest('.item').id
  shown.querySelector('a').focus()
})
})()
`
