namespace FrameOpt.Model;

/// <summary>The wing as the model sees it.</summary>
/// <param name="MassKilograms">Canopy and lines.</param>
/// <param name="AreaSquareMetres">Flat area S.</param>
/// <param name="SpanMetres">Flat span b.</param>
/// <param name="LineLengthMetres">Hang line to wing, L.</param>
/// <param name="LineSpreadMetres">Distance between the centroids of the two half-wings' line attachments, b_top.</param>
/// <param name="Polar">Airspeed and glide ratio.</param>
/// <param name="RiserCoupling">Measured, or from the lines.</param>
/// <param name="RollRestoring">|Cl_phi| per radian of bank; used for the indicative turn rate.</param>
/// <param name="YawLeverage">Given, assumed, or from two coefficients.</param>
public sealed record Wing(
    double MassKilograms,
    double AreaSquareMetres,
    double SpanMetres,
    double LineLengthMetres,
    double LineSpreadMetres,
    Polar Polar,
    RiserCoupling RiserCoupling,
    double RollRestoring,
    YawLeverage YawLeverage);
