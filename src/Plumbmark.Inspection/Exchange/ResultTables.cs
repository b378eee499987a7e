using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Inspection.Exchange;

/// <summary>Readings and results as tables. Results are in millimetres with standard uncertainties (k = 1), on the car's axes: x forward, y left, z up.</summary>
public static class ResultTables
{
    /// <summary>Every table, in the order a person looks at them; those of rooms that hold nothing yet are left out.</summary>
    public static IReadOnlyList<PlainTable> All(CarFile car, FloorAnswer answer)
    {
        IReadOnlyList<PlainTable> frame =
        [
            Readings(car, answer),
            Points(car, answer),
            Pairs(answer),
            Checks(answer),
            AnswerTables.Of(answer),
        ];
        IReadOnlyList<PlainTable> others =
        [
            PartTables.Parts(BenchInspection.Of(car)),
            PartTables.Bites(car),
            RoadTables.Figures(RoadInspection.Of(car)),
        ];
        return [.. frame, .. others.Where(t => t.Rows.Count > 0)];
    }

    /// <summary>The readings as written down, and how each fits the rest.</summary>
    public static PlainTable Readings(CarFile car, FloorAnswer answer)
    {
        var fits = answer.Readings.DistinctBy(r => r.Id).ToDictionary(r => r.Id, StringComparer.Ordinal);
        var doubted = answer.Suspects.Select(s => s.Reading).OfType<string>().ToHashSet(StringComparer.Ordinal);
        string[] heads = [.. ColumnMatch.Fields, "value mm", "residual mm", "standardised", "minimal detectable mm", "doubted"];
        var rows = car.Readings.Select(r =>
        {
            var cells = ReadingCells.Of(r, car.Units);
            var fit = fits.GetValueOrDefault(r.Id);
            return (IReadOnlyList<PlainCell>)
                [
                    .. ColumnMatch.Fields.Select(f => PlainCell.Of(cells[f])),
                    Millimetres(ValueOf(r)?.Metres),
                    Millimetres(fit?.ResidualMetres),
                    PlainCell.Of(Rounded(fit?.Standardised)),
                    Millimetres(fit?.MinimalDetectableMetres),
                    PlainCell.Of(doubted.Contains(r.Id) ? "doubted" : null),
                ];
        });
        return new PlainTable("Readings", heads, [.. rows]);
    }

    /// <summary>Where the points are.</summary>
    public static PlainTable Points(CarFile car, FloorAnswer answer)
    {
        var estimates = answer.Points.DistinctBy(p => p.Id).ToDictionary(p => p.Id, StringComparer.Ordinal);
        string[] heads =
        [
            "point",
            "label",
            "x mm",
            "y mm",
            "z mm",
            "u(x) mm",
            "u(y) mm",
            "u(z) mm",
            "off x mm",
            "off y mm",
            "off z mm",
            "against",
        ];
        var rows = car.Frame.Points.Select(p =>
        {
            var e = estimates.GetValueOrDefault(p.Id);
            var against = e?.Deviation?.Against switch
            {
                DeviationFrom.Nominal => "book",
                DeviationFrom.Symmetry => "other side",
                _ => null,
            };
            return (IReadOnlyList<PlainCell>)
                [
                    PlainCell.Of(p.Id),
                    PlainCell.Of(p.Label),
                    Millimetres(e?.XMetres),
                    Millimetres(e?.YMetres),
                    Millimetres(e?.ZMetres),
                    Millimetres(e?.UxMetres),
                    Millimetres(e?.UyMetres),
                    Millimetres(e?.UzMetres),
                    Millimetres(e?.Deviation?.DxMetres),
                    Millimetres(e?.Deviation?.DyMetres),
                    Millimetres(e?.Deviation?.DzMetres),
                    PlainCell.Of(against),
                ];
        });
        return new PlainTable("Points", heads, [.. rows]);
    }

    /// <summary>Left against right.</summary>
    public static PlainTable Pairs(FloorAnswer answer)
    {
        string[] heads =
        [
            "left",
            "right",
            "middle off centre, left + mm",
            "u mm",
            "left ahead mm",
            "u mm",
            "width mm",
            "u mm",
            "left higher mm",
            "u mm",
        ];
        var rows = answer.Pairs.Select(p =>
            (IReadOnlyList<PlainCell>)
                [
                    PlainCell.Of(p.Left),
                    PlainCell.Of(p.Right),
                    Millimetres(p.SideShiftMetres),
                    Millimetres(p.USideShiftMetres),
                    Millimetres(p.StaggerMetres),
                    Millimetres(p.UStaggerMetres),
                    Millimetres(p.WidthMetres),
                    Millimetres(p.UWidthMetres),
                    Millimetres(p.HeightDifferenceMetres),
                    Millimetres(p.UHeightDifferenceMetres),
                ]
        );
        return new PlainTable("Pairs", heads, [.. rows]);
    }

    /// <summary>Every check with its limit, whose limit it is, and the verdict.</summary>
    public static PlainTable Checks(FloorAnswer answer)
    {
        string[] heads = ["check", "kind", "points", "value mm", "u mm", "limit mm", "whose limit", "probability within", "verdict"];
        var rows = answer.Checks.Select(c =>
            (IReadOnlyList<PlainCell>)
                [
                    PlainCell.Of(c.Id),
                    PlainCell.Of(c.Kind),
                    PlainCell.Of(string.Join(' ', c.Points)),
                    Millimetres(c.ValueMetres),
                    Millimetres(c.UMetres),
                    Millimetres(c.LimitMetres),
                    PlainCell.Of(c.LimitSource is { } source ? LimitsJson.Sources.WordFor(source) : null),
                    PlainCell.Of(Rounded(c.ProbabilityWithin)),
                    PlainCell.Of(c.Verdict is { } verdict ? VerdictWord.For(verdict) : null),
                ]
        );
        return new PlainTable("Checks", heads, [.. rows]);
    }

    private static Length? ValueOf(Reading reading) =>
        reading switch
        {
            Reading.Drop r => r.Distance,
            _ => reading.Shown, // null of an indirect way: how a mark was made, not a length
        };

    // A thousandth of a millimetre: finer than anything measured here, so nothing is lost.
    private static PlainCell Millimetres(double? metres) => PlainCell.Of(metres is { } m ? Math.Round(m * 1000, 3) : null);

    private static double? Rounded(double? value) => value is { } v ? Math.Round(v, 4) : null;
}
