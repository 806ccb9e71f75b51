using System.Runtime.InteropServices;

namespace FrameOpt.Cli;

/// <summary>Hears Ctrl-C and the signal to end, so that a run can write what it has. A second one ends the process at once.</summary>
internal sealed class StopSignal
{
    private readonly List<PosixSignalRegistration> registrations = [];
    private volatile bool asked;

    public StopSignal()
    {
        foreach (var signal in new[] { PosixSignal.SIGINT, PosixSignal.SIGTERM })
            registrations.Add(PosixSignalRegistration.Create(signal, Heard));
    }

    public bool IsAsked => asked;

    private void Heard(PosixSignalContext context)
    {
        context.Cancel = !asked;
        asked = true;
    }
}
