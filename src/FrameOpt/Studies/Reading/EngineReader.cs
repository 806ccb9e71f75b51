using FrameOpt.Model;

namespace FrameOpt.Studies.Reading;

/// <summary>Reads the engine.</summary>
internal static class EngineReader
{
    public static Engine? Read(Section? engine)
    {
        if (engine is null)
            return null;
        var reduction = engine.Number("reduction", Dimension.Number, Bound.Above0(20, "20"));
        var efficiency = engine.Number("efficiency", Dimension.Share, Bound.Above0(1, "1 (100 %)"));
        var rows = Row.Table(engine, "torque",
            [
                new("crank speed", "5000 rpm", Dimension.Revolutions, Bound.From0(30000, "30000 rpm")),
                new("torque", "18.5 N·m", Dimension.Torque, Bound.Above0(500, "500 N·m")),
            ], rising: 1);
        return rows is null
            ? null
            : new Engine(new LinearTable([.. rows.Select(row => row[0])], [.. rows.Select(row => row[1])]), reduction, efficiency);
    }
}
