import type { Readable } from 'node:stream'

/** What a program says while it runs. */
export interface WhatIsTold {
  readonly text: () => string
  /** Waits until the text has come since it was last forgotten. */
  readonly until: (text: string) => Promise<void>
  readonly forget: () => void
}

export function whatIsTold(streams: readonly Readable[]): WhatIsTold {
  let told = ''
  let wake = (): void => {}
  for (const stream of streams)
    stream.setEncoding('utf8').on('data', (text: string) => {
      told += text
      wake()
    })
  return {
    text: () => told,
    until: async text => {
      while (!told.includes(text))
        await new Promise<void>(done => {
          wake = done
        })
    },
    forget: () => {
      told = ''
    },
  }
}
