using System.Runtime.InteropServices;

namespace FrameOpt.Cli;

/// <summary>Hears Ctrl-C and the signal to end, so that a run can write what it has. A second one ends the process at once.</summary>
internal sealed class StopSignal
{
    private readonly List<PosixSignalRegistration> registrations = [];
    private volatile bool requested;

    public StopSignal()
    {
        foreach (var signal in new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM })
            registrations.Add(PosixSignalRegistration.Create(signal, OnSignal));
    }

    public bool IsRequested => requested;

    private void OnSignal(PosixSignalContext context)
    {
        context.Cancel = !requested;
        requested = true;
    }
}
