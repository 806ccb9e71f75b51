using BenchmarkDotNet.Running;
using FrameOpt.Benchmarks;

if (args is ["peers", var folder])
    PeerTasks.Run(folder);
else if (args is ["convergence", var study])
    Convergence.Print(study);
else if (args is ["guard"])
    return SpeedGuard.Run();
else
    BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
