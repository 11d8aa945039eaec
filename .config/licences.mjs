// The licences of the packages that went into a bundle.
import { readdirSync, readFileSync } from 'node:fs'
import { join } from 'node:path'

export function licencesOf(output) {
  const folders = new Set(output.flatMap(({ moduleIds }) => moduleIds.flatMap(packageFolder)))
  return [...folders].sort().map(licenceIn).join('\n\n')
}

function packageFolder(id) {
  return id.match(/^(.*[\\/]node_modules[\\/](?:@[^\\/]+[\\/])?[^\\/]+)[\\/]/)?.[1] ?? []
}

/** The licence that a package carries, under its name and where its source is. */
function licenceIn(folder) {
  const { name, version, license, repository } = JSON.parse(
    readFileSync(join(folder, 'package.json'), 'utf8'),
  )
  const source = typeof repository === 'string' ? repository : repository?.url
  const file = readdirSync(folder).find(each => /^licen[cs]e/i.test(each))
  const text = file === undefined ? '' : `\n\n${readFileSync(join(folder, file), 'utf8').trim()}`
  return `${name} ${version} (${license}), ${source ?? 'https://www.npmjs.com'}${text}\n`
}
