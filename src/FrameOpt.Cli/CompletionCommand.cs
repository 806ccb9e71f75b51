using System.CommandLine;

namespace FrameOpt.Cli;

/// <summary>completion: a script with which a shell completes commands, options and file names.</summary>
internal static class CompletionCommand
{
    private static readonly Dictionary<string, string> scripts = new()
    {
        ["bash"] = """
            # Completion of frameopt in bash. In ~/.bashrc: eval "$(frameopt completion bash)"
            _frameopt() {
                local word="${COMP_WORDS[COMP_CWORD]}" typed="${COMP_LINE:0:COMP_POINT}" IFS=$'\n'
                typed="${typed#*[[:space:]]}"
                COMPREPLY=($(compgen -W "$('PROGRAM' "[suggest:${#typed}]" "$typed" 2>/dev/null)" -- "$word"))
                [[ $word != -* && ( ${COMP_WORDS[COMP_CWORD-1]} == --out ||
                    ( $COMP_CWORD -gt 1 && ${COMP_WORDS[1]} =~ ^(run|evaluate|check|plan|compare|line)$ ) ) ]] &&
                    COMPREPLY+=($(compgen -f -- "$word"))
            }
            complete -o filenames -F _frameopt frameopt FrameOpt.Cli
            """,
        ["zsh"] = """
            # Completion of frameopt in zsh. In ~/.zshrc, after compinit: eval "$(frameopt completion zsh)"
            _frameopt() {
                local typed="${LBUFFER#*[[:space:]]}"
                local -a found
                found=("${(@f)$('PROGRAM' "[suggest:${#typed}]" "$typed" 2>/dev/null)}")
                compadd -- $found
                [[ $words[CURRENT-1] == --out || ( $CURRENT -gt 2 && $words[2] == (run|evaluate|check) ) ]] && _files
            }
            compdef _frameopt frameopt FrameOpt.Cli
            """,
        ["pwsh"] = """
            # Completion of frameopt in PowerShell. In $PROFILE: frameopt completion pwsh | Out-String | Invoke-Expression
            Register-ArgumentCompleter -Native -CommandName frameopt, FrameOpt.Cli -ScriptBlock {
                param($word, $line, $cursor)
                $typed = $line.ToString().PadRight($cursor).Substring(0, $cursor) -replace '^\S+\s', ''
                & 'PROGRAM' "[suggest:$($typed.Length)]" $typed 2>$null | Where-Object { $_ -like "$word*" } | ForEach-Object {
                    [System.Management.Automation.CompletionResult]::new($_, $_, 'ParameterValue', $_)
                }
            }
            """,
    };

    public static Command Build(Terminal terminal)
    {
        var shell = new Argument<string>("shell") { Description = "bash, zsh or pwsh." };
        shell.AcceptOnlyFromAmong([.. scripts.Keys]);
        var command = new CommandWithExamples(
            "completion",
            "Print a script that lets your shell complete commands, options and file names with the Tab key.",
            "eval \"$(frameopt completion bash)\"")
        {
            shell,
        };
        command.SetAction(parsed =>
        {
            terminal.Out.Profile.Out.Writer.WriteLine(Script(parsed.GetRequiredValue(shell), Environment.ProcessPath ?? "frameopt"));
            return ExitCode.Success;
        });
        return command;
    }

    /// <summary>The script of a shell, calling the program at that path.</summary>
    public static string Script(string shell, string program) =>
        scripts[shell].Replace("'PROGRAM'", shell == "pwsh" ? $"'{program.Replace("'", "''")}'" : $"'{program.Replace("'", "'\\''")}'");
}
