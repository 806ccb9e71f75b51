using BenchmarkDotNet.Running;
using FrameOpt.Benchmarks;

if (args is ["peers", var folder])
    PeerTasks.Run(folder);
else
    BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
