# Completion of coatplan for bash:  source <(coatplan completion bash)
_coatplan() {
    local suggestion
    COMPREPLY=()
    while IFS= read -r suggestion; do
        COMPREPLY+=("$suggestion")
    done < <(coatplan suggest -- "${COMP_WORDS[@]:1:COMP_CWORD}" 2> /dev/null)
}
complete -o filenames -F _coatplan coatplan
