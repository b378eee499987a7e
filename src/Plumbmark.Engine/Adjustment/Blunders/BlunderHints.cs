using Plumbmark.Engine.Lengths;

namespace Plumbmark.Engine.Adjustment.Blunders;

/// <summary>What is known about readings beyond their numbers, for judging which slips are likely.</summary>
public sealed record BlunderHints
{
    /// <summary>Nothing more is known.</summary>
    public static BlunderHints None { get; } = new();

    /// <summary>Other things a reading may have been meant to be, such as <see cref="LengthSlips"/> of its text.</summary>
    public IReadOnlyList<Alternative> Meanings { get; init; } = [];

    /// <summary>The unit each reading was typed in: nobody miscounts a centimetre on an inch tape.</summary>
    public IReadOnlyDictionary<string, LengthUnit> TypedIn { get; init; } = new Dictionary<string, LengthUnit>(StringComparer.Ordinal);

    /// <summary>Diameter of the hole at a point, metres.</summary>
    public IReadOnlyDictionary<string, double> HoleDiametersMetres { get; init; } = new Dictionary<string, double>(StringComparer.Ordinal);
}
