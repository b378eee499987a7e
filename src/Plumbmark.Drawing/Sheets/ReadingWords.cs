using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Drawing.Sheets;

/// <summary>A reading in a few words.</summary>
internal static class ReadingWords
{
    /// <summary>What was measured, without the value.</summary>
    public static string What(Reading reading) =>
        reading switch
        {
            Reading.Plan r => $"{r.From} to {r.To}",
            Reading.Direct r => $"{r.From} to {r.To}, direct",
            Reading.Height { IsAboveFloor: true } r => $"{r.Point} above the floor",
            Reading.Height r => $"{r.Point} height",
            Reading.Rise r => $"{r.To} above {r.From}",
            Reading.Offset r => $"{r.Point} left of string {r.From} to {r.To}",
            Reading.Drop r => r.Point,
            Reading.Indirect r => $"{r.Point} by {string.Join(", ", r.Way.Marks)}",
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>The same where the kind of reading stands above it.</summary>
    public static string Short(Reading reading) =>
        reading switch
        {
            Reading.Plan r => $"{r.From}–{r.To}",
            Reading.Direct r => $"{r.From}–{r.To}",
            Reading.Height r => r.Point,
            _ => What(reading),
        };

    /// <summary>A value without the unit that stands above it; where any other unit or word is in it, all of it as it was written.</summary>
    public static string WithoutUnit(string value, LengthUnit unit)
    {
        var bare = value.Replace(unit == LengthUnit.Inch ? " in" : " mm", "", StringComparison.Ordinal);
        return bare.All(c => char.IsDigit(c) || " ,./-−⁄".Contains(c, StringComparison.Ordinal)) ? bare : value;
    }

    /// <summary>What was read, as it was written down.</summary>
    public static string Value(Reading reading)
    {
        var value = reading switch
        {
            { Shown: { } length } => length.AsTyped,
            Reading.Drop { Distance: { } distance } => $"{distance.AsTyped} away",
            Reading.Drop r => $"{r.Dx?.AsTyped ?? "?"}, {r.Dy?.AsTyped ?? "?"}",
            Reading.Indirect r => Way(r.Way),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        return reading.StartAt is { } start ? $"{value} from {start.AsTyped}" : value;
    }

    private static string Way(IndirectWay way) =>
        way switch
        {
            IndirectWay.Midpoint => "half way between",
            IndirectWay.Offset w => $"{w.Dx.AsTyped} forward, {w.Dy.AsTyped} left of it",
            IndirectWay.HoleEdge w => $"{w.Edge.ToString().ToLowerInvariant()} edge of {w.Diameter.AsTyped}",
            IndirectWay.Bar w => $"bar, {w.StandOff.AsTyped} out",
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
