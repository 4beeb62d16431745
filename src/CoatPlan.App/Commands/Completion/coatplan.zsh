#compdef coatplan
# Completion of coatplan for zsh:  source <(coatplan completion zsh)  after compinit, or keep it as _coatplan in a folder of $fpath.
_coatplan() {
    local -a suggestions
    suggestions=(${(f)"$(coatplan suggest -- "${(@)words[2,CURRENT]}" 2> /dev/null)"})
    compadd -- ${suggestions:#*/}
    compadd -S '' -- ${(M)suggestions:#*/}
}
if [[ "${funcstack[1]}" == _coatplan ]]; then
    _coatplan "$@"
else
    compdef _coatplan coatplan
fi
