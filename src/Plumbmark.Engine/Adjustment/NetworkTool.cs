namespace Plumbmark.Engine.Adjustment;

/// <summary>
/// What the readings of one tape or rule have in common: reading = (1 + scale) · length + zero. Not the reading error, which every
/// <see cref="Observation"/> carries for itself.
/// </summary>
/// <remarks>
/// The zero enters <see cref="Observation.PlanDistance"/>, <see cref="Observation.DirectDistance"/> and <see cref="Observation.Height"/>;
/// a signed reading (<see cref="Observation.Rise"/>, <see cref="Observation.Offset"/>) is a difference and knows only the scale.
/// </remarks>
/// <param name="Id">The tool's name, unique in its network.</param>
public sealed record NetworkTool(string Id)
{
    /// <summary>The zero error believed beforehand, metres.</summary>
    public double ZeroMetres { get; init; }

    /// <summary>Standard uncertainty of the zero error, metres. Zero: the zero error is taken as known.</summary>
    public double ZeroSigmaMetres { get; init; }

    /// <summary>The relative scale error believed beforehand (1e-4 is 0.1 mm in a metre).</summary>
    public double Scale { get; init; }

    /// <summary>Standard uncertainty of the relative scale error. Zero: the scale is taken as known.</summary>
    public double ScaleSigma { get; init; }
}
