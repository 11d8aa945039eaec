import { spawnSync } from 'node:child_process'
import { describe, expect, it } from 'vitest'
import { completions } from '../../src/commands/complete.js'
import { completionCommand } from '../../src/commands/completion.js'
import { shells } from '../../src/commands/completion-shells.js'

const names = {
  keys: async () => ['size', 'copies'],
  layouts: async () => ['bingo', 'word-cards'],
  patterns: async () => ['silent-e', 'silent-letters'],
  itemsOf: async (plan: string) => (plan === 'week.yaml' ? ['bingo', 'key'] : []),
}
const after = (line: string) => completions(line.split(' '), names)

describe('what is completed', () => {
  it.each([
    ['ma', ['make']],
    ['make --fo', ['--format']],
    ['make week.yaml --only ', ['bingo', 'key']],
    ['make week.yaml --format p', ['png', 'pdf']],
    ['list pa', ['papers', 'patterns']],
    ['help si', ['size', 'silent-e', 'silent-letters']],
    ['help word', ['word-cards']],
    ['find --pattern silent-', ['silent-e', 'silent-letters']],
    ['find --place m', ['middle']],
    ['completion f', ['fish']],
    ['--v', ['--version']],
    // Files are left to the shell.
    ['make we', []],
  ])('%s', async (line, expected) => {
    expect(await after(line)).toEqual(expected)
  })
})

describe('the script', () => {
  const script = async (shell: (typeof shells)[number]) => (await completionCommand({ shell })).output
  const syntax = { bash: ['-n'], zsh: ['-n'], fish: ['--no-execute'] }

  it.each(shells)('for %s asks oaktag for what is typed', async shell => {
    expect(await script(shell)).toContain('oaktag complete')
  })

  it.each(shells)('for %s is sound where that shell is installed', async shell => {
    const input = await script(shell)
    const { error, status, stderr } = spawnSync(shell, syntax[shell], { input, encoding: 'utf8' })
    if (error !== undefined) console.log(`not tried: ${shell} is not installed here`)
    else expect([status, stderr]).toEqual([0, ''])
  })

  it('completes in bash', async () => {
    const typed = `${await script('bash')}
oaktag() { printf 'make\\nmarked list\\n'; }
COMP_WORDS=(oaktag ma); COMP_CWORD=1; _oaktag; printf '%s;' "\${COMPREPLY[@]}"`
    const { error, stdout } = spawnSync('bash', ['-c', typed], { encoding: 'utf8' })
    if (error !== undefined) console.log('not tried: bash is not installed here')
    else expect(stdout).toBe('make;marked list;')
  })
})
