# Completion of coatplan for PowerShell 7.3 and later:  coatplan completion pwsh | Out-String | Invoke-Expression
Register-ArgumentCompleter -Native -CommandName coatplan -ScriptBlock {
    param($wordToComplete, $commandAst, $cursorPosition)
    $words = @($commandAst.CommandElements | Select-Object -Skip 1 | Where-Object { $_.Extent.EndOffset -lt $cursorPosition } | ForEach-Object { $_.ToString() })
    $words += [string] $wordToComplete
    coatplan suggest -- @words 2> $null | ForEach-Object {
        $written = if ($_ -match '\s') { "'" + $_.Replace("'", "''") + "'" } else { $_ }
        [System.Management.Automation.CompletionResult]::new($written, $_, 'ParameterValue', $_)
    }
}
