using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Sheets;

/// <summary>A reading in a few words.</summary>
internal static class ReadingWords
{
    /// <summary>What was measured, without the value.</summary>
    public static string What(Reading reading) =>
        reading switch
        {
            Reading.Plan r => Texts.Say("sheet.reading.to", r.From, r.To),
            Reading.Direct r => Texts.Say("sheet.reading.to-direct", r.From, r.To),
            Reading.Height { IsAboveFloor: true } r => Texts.Say("sheet.reading.above-the-floor", r.Point),
            Reading.Height r => Texts.Say("sheet.reading.height", r.Point),
            Reading.Rise r => Texts.Say("sheet.reading.above", r.To, r.From),
            Reading.Offset r => Texts.Say("sheet.reading.left-of-string-to", r.Point, r.From, r.To),
            Reading.Drop r => r.Point,
            Reading.Indirect r => Texts.Say("sheet.reading.by", r.Point, string.Join(", ", r.Way.Marks)),
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
            Reading.Drop { Distance: { } distance } => Texts.Say("sheet.reading.away", distance.AsTyped),
            Reading.Drop r => $"{r.Dx?.AsTyped ?? "?"}, {r.Dy?.AsTyped ?? "?"}",
            Reading.Indirect r => Way(r.Way),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
        return reading.StartAt is { } start ? Texts.Say("sheet.reading.from", value, start.AsTyped) : value;
    }

    private static string Way(IndirectWay way) =>
        way switch
        {
            IndirectWay.Midpoint => Texts.Say("sheet.reading.half-way-between"),
            IndirectWay.Offset w => Texts.Say("sheet.reading.forward-left-of-it", w.Dx.AsTyped, w.Dy.AsTyped),
            IndirectWay.HoleEdge w => Texts.Say("sheet.reading.edge-of", w.Edge.ToString().ToLowerInvariant(), w.Diameter.AsTyped),
            IndirectWay.Bar w => Texts.Say("sheet.reading.bar-out", w.StandOff.AsTyped),
            _ => throw new System.Diagnostics.UnreachableException(),
        };
}
