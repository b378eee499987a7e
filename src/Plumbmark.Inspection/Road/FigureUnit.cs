namespace Plumbmark.Inspection.Road;

/// <summary>What a figure is measured in.</summary>
public enum FigureUnit
{
    /// <summary>An angle, radians.</summary>
    Angle,

    /// <summary>A length, metres.</summary>
    Length,
}
