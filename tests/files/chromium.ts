import { runProgram } from './system-program.js'

export function chromiumPath(): string {
  return runProgram('which', ['chromium']).trim()
}

export const quiet = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
]
