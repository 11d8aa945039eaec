/** `npm run reference`: writes the plan reference anew. */
import { mkdirSync, writeFileSync } from 'node:fs'
import { dirname, join } from 'node:path'
import { installationFolder } from '../installation.js'
import { planReference } from './plan-reference.js'

const path = join(installationFolder, '.docs/plan-keys.md')
mkdirSync(dirname(path), { recursive: true })
writeFileSync(path, planReference())
