import { type CommandResult, resultOf } from './command-result.js'
import type { Shell } from './completion-shells.js'

/** `oaktag completion bash`: a script that asks `oaktag complete` at each press of the tab key. */
export async function completionCommand({ shell }: { readonly shell: Shell }): Promise<CommandResult> {
  return resultOf(scripts[shell])
}

/** Each hands on the words typed so far, the unfinished one last; files are left to the shell. */
const scripts: Readonly<Record<Shell, string>> = {
  bash: `# oaktag: completion for bash
_oaktag() {
  local found
  found=$(oaktag complete "\${COMP_WORDS[@]:1:COMP_CWORD}" 2>/dev/null)
  local IFS=$'\\n'
  COMPREPLY=($(compgen -W "$found" -- "\${COMP_WORDS[COMP_CWORD]}"))
}
complete -o default -o bashdefault -F _oaktag oaktag`,
  zsh: `#compdef oaktag
# oaktag: completion for zsh
_oaktag() {
  local -a found
  found=(\${(f)"$(oaktag complete "\${(@)words[2,CURRENT]}" 2>/dev/null)"})
  if (( \${#found} )); then
    compadd -a found
  else
    _files
  fi
}
if [ "$funcstack[1]" = _oaktag ]; then
  _oaktag "$@"
else
  compdef _oaktag oaktag
fi`,
  fish: `# oaktag: completion for fish
function __oaktag_complete
  set -l typed (commandline -opc) (commandline -ct)
  oaktag complete $typed[2..-1] 2>/dev/null
end
complete -c oaktag -a '(__oaktag_complete)'`,
}
