import type { CSSProperties } from 'satori/jsx'
import { mm } from '../faces/face.js'
import { LINE_HEIGHT, type TextStyle } from './break-lines.js'

/** Lines of text, one box each, so that satori never breaks or clips them. */
export function Lines({
  lines,
  style,
  box = {},
}: {
  readonly lines: readonly string[]
  readonly style: TextStyle
  readonly box?: CSSProperties
}) {
  const justify = { left: 'flex-start', centre: 'center', right: 'flex-end' }[style.align ?? 'left']
  return (
    <div style={{ display: 'flex', flexDirection: 'column', flexShrink: 0, ...box }}>
      {lines.map(line => (
        <div
          style={{
            display: 'flex',
            justifyContent: justify,
            alignItems: 'center',
            height: mm(style.sizeMm * LINE_HEIGHT),
            flexShrink: 0,
          }}
        >
          <div
            style={{
              display: 'flex',
              whiteSpace: 'nowrap',
              fontSize: mm(style.sizeMm),
              lineHeight: 1.3,
              fontWeight: style.weight ?? 400,
              color: style.color ?? '#000000',
            }}
          >
            {line}
          </div>
        </div>
      ))}
    </div>
  )
}
