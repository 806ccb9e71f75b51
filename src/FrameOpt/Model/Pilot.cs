namespace FrameOpt.Model;

/// <summary>What the pilot's body can do and the air holds against it.</summary>
/// <param name="LeanMetres">Largest sideways shift of the body's centre of gravity by weight shift.</param>
/// <param name="DragAreaSquareMetres">Drag area (drag over dynamic pressure) of pilot and frame.</param>
/// <param name="DragCentre">Where that drag acts.</param>
public sealed record Pilot(double LeanMetres, double DragAreaSquareMetres, FramePoint DragCentre);
