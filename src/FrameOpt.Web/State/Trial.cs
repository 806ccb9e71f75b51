using FrameOpt.Model;

namespace FrameOpt.Web.State;

/// <summary>What is tried on the machine beside the study: nothing of it is written.</summary>
/// <param name="SeatRight">The pilot sits further to the right, m.</param>
/// <param name="SeatForward">The pilot sits further forward, m.</param>
/// <param name="Pilot">The pilot is heavier, kg.</param>
/// <param name="Carried">What is carried besides, kg: a camera, a bag.</param>
/// <param name="CarriedRight">How far to the right of the middle it hangs, m.</param>
/// <param name="Share">Of a mass that is no part of the body, by its name: how much of it is there, 1 where nothing is said.</param>
public sealed record Trial(double SeatRight, double SeatForward, double Pilot, double Carried, double CarriedRight,
    IReadOnlyDictionary<string, double> Share)
{
    private const double Least = 0.01;

    /// <summary>Nothing is tried.</summary>
    public static Trial None { get; } = new(0, 0, 0, 0, 0.3, new Dictionary<string, double>());

    /// <summary>How much of a mass is there.</summary>
    public double ShareOf(MassItem item) => Share.GetValueOrDefault(item.Name, 1);

    /// <summary>The same with so much of a mass.</summary>
    public Trial With(MassItem item, double share) => this with { Share = new Dictionary<string, double>(Share) { [item.Name] = share } };

    /// <summary>The machine as tried.</summary>
    public Machine Of(Machine machine)
    {
        if (this == None)
            return machine;
        var body = machine.Masses.First(item => item.IsBody);
        MassItem Seated(MassItem item) => item with
        {
            At = item.At with
            {
                RightMetres = item.At.RightMetres + SeatRight,
                ForwardMetres = item.At.ForwardMetres + SeatForward,
            },
        };
        IEnumerable<MassItem> masses = machine.Masses.Select(item =>
            item == body ? Seated(item) with { MassKilograms = Math.Max(1, item.MassKilograms + Pilot) }
            : item.IsBody ? Seated(item)
            : item with { MassKilograms = Math.Max(Least, item.MassKilograms * ShareOf(item)) });
        if (Carried > 0)
            masses = masses.Append(new MassItem("carried", Carried, body.At with { RightMetres = CarriedRight }, IsBody: false));
        return machine.With([.. masses]);
    }
}
