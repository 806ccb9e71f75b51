using FrameOpt.Cli;

return App.Run(args, Terminal.OfProcess());
