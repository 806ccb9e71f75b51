using System.Text.Json;
using FrameOpt.Model;

namespace FrameOpt.Reports.Files.Json;

/// <summary>The wing as understood, in SI.</summary>
internal static class WingJson
{
    public static void Write(Utf8JsonWriter json, Wing wing)
    {
        json.WriteStartObject("wing");
        json.Quantity("mass", wing.MassKilograms, "kg");
        json.Quantity("area", wing.AreaSquareMetres, "m²");
        json.Quantity("span", wing.SpanMetres, "m");
        json.Quantity("lines", wing.LineLengthMetres, "m");
        json.Quantity("line_spread", wing.LineSpreadMetres, "m");
        json.WriteStartObject("polar");
        json.Quantity("mass", wing.Polar.ReferenceMassKilograms, "kg");
        json.Quantity("density", wing.Polar.ReferenceDensity, "kg/m³");
        json.Objects("rows", wing.Polar.Points, point =>
        {
            json.Plain("fraction", point.Fraction);
            json.Quantity("airspeed", point.AirspeedMetresPerSecond, "m/s");
            json.Plain("glide_ratio", point.GlideRatio);
        });
        json.WriteEndObject();
        Coupling(json, wing.RiserCoupling);
        json.Plain("roll_restoring", wing.RollRestoring);
        Leverage(json, wing.YawLeverage);
        json.WriteEndObject();
    }

    private static void Coupling(Utf8JsonWriter json, RiserCoupling coupling)
    {
        json.WriteStartObject("riser_coupling");
        json.WriteString("from", coupling is RiserCoupling.Measured ? "measurement" : "lines");
        if (coupling is RiserCoupling.Measured measured)
        {
            json.Quantity("length", measured.LengthMetres, "m");
            json.Quantity("at_spacing", measured.AtSpacingMetres, "m");
        }

        json.WriteEndObject();
    }

    private static void Leverage(Utf8JsonWriter json, YawLeverage leverage)
    {
        json.WriteStartObject("yaw_leverage");
        switch (leverage)
        {
            case YawLeverage.Constant constant:
                json.Plain("value", constant.Value);
                break;
            case YawLeverage.FromCoefficients from:
                json.Plain("roll_restoring", from.RollRestoring);
                json.Plain("yaw_damping", from.YawDamping);
                break;
        }

        json.WriteEndObject();
    }
}
