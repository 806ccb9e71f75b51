using System.Text.Json;
using FrameOpt.Model;

namespace FrameOpt.Reports.Files.Json;

/// <summary>The wing as understood, in SI.</summary>
internal static class WingJson
{
    public static void Write(Utf8JsonWriter json, Wing wing)
    {
        json.WriteStartObject("wing");
        json.WriteQuantity("mass", wing.MassKilograms, "kg");
        json.WriteQuantity("area", wing.AreaSquareMetres, "m²");
        json.WriteQuantity("span", wing.SpanMetres, "m");
        json.WriteQuantity("lines", wing.LineLengthMetres, "m");
        json.WriteQuantity("line_spread", wing.LineSpreadMetres, "m");
        json.WriteStartObject("polar");
        json.WriteQuantity("mass", wing.Polar.ReferenceMassKilograms, "kg");
        json.WriteQuantity("density", wing.Polar.ReferenceDensity, "kg/m³");
        json.WriteObjects("rows", wing.Polar.Points, point =>
        {
            json.WriteDecimal("fraction", point.Fraction);
            json.WriteQuantity("airspeed", point.AirspeedMetresPerSecond, "m/s");
            json.WriteDecimal("glide_ratio", point.GlideRatio);
        });
        json.WriteEndObject();
        Coupling(json, wing.RiserCoupling);
        json.WriteDecimal("roll_restoring", wing.RollRestoring);
        Leverage(json, wing.YawLeverage);
        json.WriteEndObject();
    }

    private static void Coupling(Utf8JsonWriter json, RiserCoupling coupling)
    {
        json.WriteStartObject("riser_coupling");
        json.WriteString("from", coupling is RiserCoupling.Measured ? "measurement" : "lines");
        if (coupling is RiserCoupling.Measured measured)
        {
            json.WriteQuantity("length", measured.LengthMetres, "m");
            json.WriteQuantity("at_spacing", measured.AtSpacingMetres, "m");
        }

        json.WriteEndObject();
    }

    private static void Leverage(Utf8JsonWriter json, YawLeverage leverage)
    {
        json.WriteStartObject("yaw_leverage");
        switch (leverage)
        {
            case YawLeverage.Constant constant:
                json.WriteDecimal("value", constant.Value);
                break;
            case YawLeverage.FromCoefficients from:
                json.WriteDecimal("roll_restoring", from.RollRestoring);
                json.WriteDecimal("yaw_damping", from.YawDamping);
                break;
        }

        json.WriteEndObject();
    }
}
