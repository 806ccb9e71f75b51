using UnitsNet;

namespace FrameOpt.StudyFile.Values;

/// <summary>A kind of quantity and the unit spellings a study may use for it: this table decides, UnitsNet converts.</summary>
/// <param name="Name">In words, with its article.</param>
/// <param name="Spellings">All that are accepted.</param>
internal sealed record Dimension(string Name, params UnitSpelling[] Spellings)
{
    /// <summary>A plain number.</summary>
    public static readonly Dimension Number = new("a plain number", new UnitSpelling("", v => v));

    /// <summary>A share of one: a plain number or per cent.</summary>
    public static readonly Dimension Share = new("a share",
        new("", v => v), new("%", v => Ratio.FromPercent(v).DecimalFractions));

    /// <summary>Base: m.</summary>
    public static readonly Dimension Length = new("a length",
        new("mm", v => UnitsNet.Length.FromMillimeters(v).Meters), new("m", v => UnitsNet.Length.FromMeters(v).Meters),
        new("cm", v => UnitsNet.Length.FromCentimeters(v).Meters), new("in", v => UnitsNet.Length.FromInches(v).Meters),
        new("ft", v => UnitsNet.Length.FromFeet(v).Meters));

    /// <summary>Base: kg.</summary>
    public static readonly Dimension Mass = new("a mass",
        new("kg", v => UnitsNet.Mass.FromKilograms(v).Kilograms), new("g", v => UnitsNet.Mass.FromGrams(v).Kilograms),
        new("lb", v => UnitsNet.Mass.FromPounds(v).Kilograms));

    /// <summary>Base: N.</summary>
    public static readonly Dimension Force = new("a force",
        new("N", v => UnitsNet.Force.FromNewtons(v).Newtons), new("kN", v => UnitsNet.Force.FromKilonewtons(v).Newtons),
        new("kgf", v => UnitsNet.Force.FromKilogramsForce(v).Newtons), new("lbf", v => UnitsNet.Force.FromPoundsForce(v).Newtons));

    /// <summary>Base: N·m.</summary>
    public static readonly Dimension Torque = new("a torque",
        new("N·m", v => UnitsNet.Torque.FromNewtonMeters(v).NewtonMeters),
            new("N.m", v => UnitsNet.Torque.FromNewtonMeters(v).NewtonMeters),
        new("Nm", v => UnitsNet.Torque.FromNewtonMeters(v).NewtonMeters));

    /// <summary>Base: rad.</summary>
    public static readonly Dimension Angle = new("an angle",
        new("deg", v => UnitsNet.Angle.FromDegrees(v).Radians), new("rad", v => UnitsNet.Angle.FromRadians(v).Radians),
        new("°", v => UnitsNet.Angle.FromDegrees(v).Radians));

    /// <summary>Base: rpm.</summary>
    public static readonly Dimension Revolutions = new("a rotational speed",
        new UnitSpelling("rpm", v => UnitsNet.RotationalSpeed.FromRevolutionsPerMinute(v).RevolutionsPerMinute));

    /// <summary>Base: rad/s.</summary>
    public static readonly Dimension AngularRate = new("an angular rate",
        new("rad/s", v => UnitsNet.RotationalSpeed.FromRadiansPerSecond(v).RadiansPerSecond),
        new("deg/s", v => UnitsNet.RotationalSpeed.FromDegreesPerSecond(v).RadiansPerSecond));

    /// <summary>Base: m/s.</summary>
    public static readonly Dimension Speed = new("a speed",
        new("m/s", v => UnitsNet.Speed.FromMetersPerSecond(v).MetersPerSecond),
        new("km/h", v => UnitsNet.Speed.FromKilometersPerHour(v).MetersPerSecond),
            new("kt", v => UnitsNet.Speed.FromKnots(v).MetersPerSecond));

    /// <summary>Base: s/m.</summary>
    public static readonly Dimension TimePerLength = new("a time per length", new UnitSpelling("s/m", v => v));

    /// <summary>Base: m².</summary>
    public static readonly Dimension Area = new("an area",
        new("m²", v => UnitsNet.Area.FromSquareMeters(v).SquareMeters), new("m2", v => UnitsNet.Area.FromSquareMeters(v).SquareMeters));

    /// <summary>Base: kg/m³.</summary>
    public static readonly Dimension Density = new("a density",
        new("kg/m³", v => UnitsNet.Density.FromKilogramsPerCubicMeter(v).KilogramsPerCubicMeter),
        new("kg/m3", v => UnitsNet.Density.FromKilogramsPerCubicMeter(v).KilogramsPerCubicMeter),
        new("kg/l", v => UnitsNet.Density.FromKilogramsPerLiter(v).KilogramsPerCubicMeter));

    /// <summary>Base: kg·m².</summary>
    public static readonly Dimension Inertia = new("a moment of inertia",
        new("kg·m²", v => MassMomentOfInertia.FromKilogramSquareMeters(v).KilogramSquareMeters),
        new("kg m2", v => MassMomentOfInertia.FromKilogramSquareMeters(v).KilogramSquareMeters),
        new("kg.m2", v => MassMomentOfInertia.FromKilogramSquareMeters(v).KilogramSquareMeters));

    /// <summary>Base: W. One hp is 745.7 W (mechanical horsepower).</summary>
    public static readonly Dimension Power = new("a power",
        new("kW", v => (double)UnitsNet.Power.FromKilowatts(v).Watts),
            new("hp", v => (double)UnitsNet.Power.FromMechanicalHorsepower(v).Watts));

    /// <summary>Base: m³.</summary>
    public static readonly Dimension Volume = new("a volume",
        new("l", v => UnitsNet.Volume.FromLiters(v).CubicMeters), new("litre", v => UnitsNet.Volume.FromLiters(v).CubicMeters),
        new("L", v => UnitsNet.Volume.FromLiters(v).CubicMeters));

    /// <summary>Base: K; a difference, so that 10 °C is 10 K.</summary>
    public static readonly Dimension TemperatureDifference = new("a temperature difference",
        new("K", v => TemperatureDelta.FromKelvins(v).Kelvins), new("°C", v => TemperatureDelta.FromDegreesCelsius(v).Kelvins),
        new("degC", v => TemperatureDelta.FromDegreesCelsius(v).Kelvins));

    /// <summary>Base: s.</summary>
    public static readonly Dimension Time = new("a time",
        new("s", v => Duration.FromSeconds(v).Seconds), new("min", v => Duration.FromMinutes(v).Seconds),
            new("h", v => Duration.FromHours(v).Seconds));

    /// <summary>All of them.</summary>
    public static readonly IReadOnlyList<Dimension> All =
    [
        Number, Share, Length, Mass, Force, Torque, Angle, Revolutions, AngularRate, Speed, TimePerLength, Area, Density, Inertia, Power,
        Volume, TemperatureDifference, Time,
    ];

    /// <summary>The spelling written so, or null.</summary>
    public UnitSpelling? FindUnit(string unit) => Array.Find(Spellings, spelling => spelling.Text == unit);

    /// <summary>The dimension of a response's unit.</summary>
    public static Dimension OfUnit(string unit) => All.First(dimension => dimension.FindUnit(unit) is not null);

    /// <summary>The spellings: "mm, m, cm, in, ft".</summary>
    public string SpellingList => string.Join(", ", Spellings.Select(s => s.Text).Where(t => t.Length > 0));

    /// <summary>What to write, without a number that somebody might copy: "a length and its unit (mm, m, cm, in, ft)".</summary>
    public string Wanted => this == Number ? Name
        : this == Share ? "a share, as a plain number or with %"
        : $"{Name} and its unit ({SpellingList})";
}

/// <summary>One accepted way to write a unit.</summary>
/// <param name="Text">Exactly as written; empty for a plain number.</param>
/// <param name="ToBase">A value in this unit in the base unit of its dimension.</param>
internal sealed record UnitSpelling(string Text, Func<double, double> ToBase);
