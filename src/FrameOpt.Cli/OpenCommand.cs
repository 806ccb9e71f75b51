using System.CommandLine;
using System.ComponentModel;
using System.Diagnostics;
using System.Net;
using FrameOpt.StudyFile.Syntax;
using Spectre.Console;

namespace FrameOpt.Cli;

/// <summary>open: the application in the browser, served on this machine only.</summary>
internal static class OpenCommand
{
    private const int UsualPort = 7411;

    private static readonly TimeSpan pollInterval = TimeSpan.FromMilliseconds(100);

    public static Command Build(Terminal terminal)
    {
        var study = new Argument<string?>("study")
        {
            Description = "Study file (YAML) to begin with; without it the application shows what the browser kept.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var folder = new Option<string?>("--web")
        {
            Description = "Published folder of the application; without it the one beside the program or in build/web is taken.",
            HelpName = "folder",
        };
        var port = new Option<int>("--port")
        {
            Description = "Port on this machine. The browser keeps studies for each port apart.",
            HelpName = "number",
            DefaultValueFactory = _ => UsualPort,
        };
        port.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && int.TryParse(result.Tokens[0].Value, out var number) && number is < 1024 or > 65535)
                result.AddError($"--port must be a number from 1024 to 65535, not {number}.");
        });
        var quiet = new Option<bool>("--no-browser") { Description = "Only serve and tell the address." };
        var command = new CommandWithExamples(
            "open",
            "Open the application in the browser: machine, holes by hand, choices, printed sheet. Served on this machine only; Ctrl-C ends it.",
            "frameopt open",
            "frameopt open study.yaml")
        {
            study, folder, port, quiet,
        };
        command.SetAction(parsed => Run(
            parsed.GetValue(study), parsed.GetValue(folder), parsed.GetValue(port), !parsed.GetValue(quiet), terminal));
        return command;
    }

    private static int Run(string? study, string? folder, int port, bool withBrowser, Terminal terminal)
    {
        if ((folder ?? FindFolder()) is not { } web || !File.Exists(Path.Combine(web, "index.html")))
        {
            terminal.Error.WriteLine(
                $"{(folder is null ? "The folder of the application was not found" : $"{VisibleText.Path(folder)} is not the application")}. "
                    + "Make it with: dotnet publish src/FrameOpt.Web -c Release -o build/web");
            return ExitCode.InvalidInput;
        }

        if (study is not null && !File.Exists(study))
        {
            terminal.Error.WriteLine($"{VisibleText.Path(study)} does not exist.");
            return ExitCode.InvalidInput;
        }

        using var server = new WebFolderServer(web, study);
        try
        {
            server.Start(port);
        }
        catch (HttpListenerException problem)
        {
            terminal.Error.WriteLine($"Port {port} of this machine cannot be used: {problem.Message}. Choose another with --port.");
            return ExitCode.InvalidInput;
        }

        terminal.Out.WriteLine($"The application is at {server.Address} on this machine only. Ctrl-C ends it.");
        if (withBrowser && !OpenBrowser(server.Address))
            terminal.Error.WriteLine("No browser could be started: open the address above.");
        while (!terminal.StopRequested())
            Thread.Sleep(pollInterval);
        return ExitCode.Success;
    }

    /// <summary>Beside the program, or where the README's command puts it, seen from the program upwards.</summary>
    private static string? FindFolder()
    {
        for (var at = new DirectoryInfo(AppContext.BaseDirectory); at is not null; at = at.Parent)
        {
            foreach (var inside in (string[])["web", "web/wwwroot", "build/web/wwwroot"])
            {
                if (File.Exists(Path.Combine(at.FullName, inside, "_framework", "dotnet.js")))
                    return Path.Combine(at.FullName, inside);
            }
        }

        return null;
    }

    private static bool OpenBrowser(string address)
    {
        try
        {
            using var started = OperatingSystem.IsWindows() ? Process.Start(new ProcessStartInfo(address) { UseShellExecute = true })
                : Process.Start(OperatingSystem.IsMacOS() ? "open" : "xdg-open", address);
            return true;
        }
        catch (Exception problem) when (problem is Win32Exception or FileNotFoundException)
        {
            return false;
        }
    }
}
