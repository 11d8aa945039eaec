/**
 * What the page may do (Content Security Policy Level 3, W3C): run its own script, use its own style and what it holds
 * as data, and nothing else: no request leaves it, and no text of a plan can become script or style.
 */
import { createHash } from 'node:crypto'

export function pagePolicy({ script, style }: { readonly script: string; readonly style: string }): string {
  const only = (text: string) => `'sha256-${createHash('sha256').update(text).digest('base64')}'`
  return [
    "default-src 'none'",
    `script-src ${only(script)}`,
    `style-src ${only(style)}`,
    'img-src data:',
    'font-src data:',
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ')
}
