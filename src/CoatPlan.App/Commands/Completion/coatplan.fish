# Completion of coatplan for fish:  coatplan completion fish | source
function __coatplan_suggest
    set -l before (commandline -opc)
    set -l last (commandline -ct)
    coatplan suggest -- $before[2..-1] "$last" 2> /dev/null
end
complete -c coatplan -f -a '(__coatplan_suggest)'
