using FrameOpt.Cli;

if (StandardStreams.HasOutput)
    return App.Run(args, Terminal.OfProcess());
if (StandardStreams.HasError)
    Console.Error.WriteLine("The standard output is closed, so the answer could not be shown: nothing was done. Redirect it to /dev/null.");
return ExitCode.InvalidInput;
