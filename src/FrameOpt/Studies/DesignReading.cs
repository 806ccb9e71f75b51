using FrameOpt.Model;

namespace FrameOpt.Studies;

/// <summary>What came of reading the settings of one design.</summary>
/// <param name="Geometry">The design, or null when there are mistakes.</param>
/// <param name="Values">Its inputs: the factors of the study, then any other that was set; of use only with a geometry.</param>
/// <param name="Mistakes">All of them.</param>
public sealed record DesignReading(FrameGeometry? Geometry, IReadOnlyList<DesignValue> Values, IReadOnlyList<Mistake> Mistakes);
