using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Inspection.Exchange;

/// <summary>What the wheels will do as a table. Angles in degrees, lengths in millimetres, with standard uncertainties (k = 1).</summary>
public static class RoadTables
{
    /// <summary>Every figure, as drawn and as found, with its verdict.</summary>
    public static PlainTable Figures(RoadAnswer answer)
    {
        string[] heads =
        [
            "figure",
            "side",
            "unit",
            Texts.Say("exchange.road-tables.as-drawn"),
            Texts.Say("exchange.road-tables.as-found"),
            "u",
            Texts.Say("exchange.road-tables.probability-within"),
            "verdict",
        ];
        var rows = answer.Figures.Select(f =>
        {
            var isAngle = RoadFigures.UnitOf(f.Kind) == FigureUnit.Angle;
            PlainCell Shown(double si) => PlainCell.Of(Math.Round(isAngle ? double.RadiansToDegrees(si) : si * 1000, 4));
            return (IReadOnlyList<PlainCell>)
                [
                    PlainCell.Of(RoadNames.Of(f.Kind)),
                    PlainCell.Of(f.Side?.ToString().ToLowerInvariant()),
                    PlainCell.Of(isAngle ? "deg" : "mm"),
                    Shown(f.Drawn),
                    Shown(f.Value),
                    Shown(f.U),
                    PlainCell.Of(f.ProbabilityWithin is { } p ? Math.Round(p, 4) : null),
                    PlainCell.Of(f.Verdict is { } verdict ? VerdictWord.For(verdict) : null),
                ];
        });
        return new PlainTable("Road", heads, [.. rows]);
    }
}
