import { render } from 'preact'
import { App } from './app.js'

const root = document.getElementById('desk')
if (root !== null) {
  root.textContent = ''
  render(<App />, root)
}
