using System.Diagnostics;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Press;

namespace Plumbmark.Inspection.Exchange;

/// <summary>Loose parts and the press as tables. Values stand in the unit of their row, with standard uncertainties (k = 1).</summary>
public static class PartTables
{
    /// <summary>Every dimension of every part, with what it was held against; a part without a dimension has a row too.</summary>
    public static PlainTable Parts(BenchAnswer answer)
    {
        string[] heads =
        [
            "part",
            Texts.Say("exchange.part-tables.what-to-do"),
            "dimension",
            "unit",
            "value",
            "u",
            "against",
            "reference",
            Texts.Say("exchange.part-tables.off-by"),
            "limit",
            Texts.Say("exchange.part-tables.whose-limit"),
            "verdict",
        ];
        return new PlainTable("Parts", heads, [.. answer.Parts.SelectMany(Rows)]);
    }

    private static IEnumerable<IReadOnlyList<PlainCell>> Rows(PartAnswer part)
    {
        PlainCell[] lead = [PlainCell.Of(part.Part.Id), PlainCell.Of(DispositionWord.For(part.Disposition))];
        if (part.Dimensions.Count == 0)
        {
            yield return [.. lead, .. Enumerable.Repeat(PlainCell.Nothing, 10)];
        }

        foreach (var dimension in part.Dimensions)
        {
            var (value, quantity) = (dimension.Value, dimension.Value.Quantity);
            PlainCell[] measured =
            [
                .. lead,
                PlainCell.Of(value.Dimension),
                PlainCell.Of(UnitOf(quantity)),
                Shown(quantity, value.Si),
                Shown(quantity, value.U),
            ];
            foreach (var c in dimension.Comparisons.DefaultIfEmpty())
            {
                yield return c is null
                    ? [.. measured, .. Enumerable.Repeat(PlainCell.Nothing, 6)]
                    :
                    [
                        .. measured,
                        PlainCell.Of(c.Against.ToString().ToLowerInvariant()),
                        PlainCell.Of(c.Reference),
                        Shown(quantity, c.Deviation),
                        Shown(quantity, c.Limit?.Si),
                        PlainCell.Of(c.Limit is { } limit ? LimitsJson.Sources.WordFor(limit.Source) : null),
                        PlainCell.Of(c.Verdict is { } verdict ? VerdictWord.For(verdict) : null),
                    ];
            }
        }
    }

    private static string UnitOf(Quantity quantity) =>
        quantity switch
        {
            Quantity.Length => "mm",
            Quantity.Angle => "deg",
            Quantity.Rate => "N/mm",
            _ => throw new UnreachableException(),
        };

    private static PlainCell Shown(Quantity quantity, double? si) =>
        PlainCell.Of(
            si is not { } value
                ? null
                : quantity switch
                {
                    Quantity.Length => Math.Round(value * 1000, 4),
                    Quantity.Angle => Math.Round(double.RadiansToDegrees(value), 4),
                    Quantity.Rate => Math.Round(value / 1000, 4),
                    _ => throw new UnreachableException(),
                }
        );

    /// <summary>Every bite of every press job as it was written down, and the set that it left.</summary>
    public static PlainTable Bites(CarFile car)
    {
        string[] heads =
        [
            "part",
            "bite",
            "travel",
            "gauge",
            Texts.Say("exchange.part-tables.left-over"),
            Texts.Say("exchange.part-tables.left-over-later"),
            Texts.Say("exchange.part-tables.set-mm"),
            "note",
            "withdrawn",
        ];
        var rows = car
            .Press.Select(PressReport.Of)
            .SelectMany(report =>
            {
                var told = report.Log?.Bites.ToDictionary(b => b.Record.Id, StringComparer.Ordinal) ?? [];
                return report.Job.Bites.Select(b =>
                    (IReadOnlyList<PlainCell>)
                        [
                            PlainCell.Of(report.Job.Part.Name),
                            PlainCell.Of(b.Id),
                            PlainCell.Of(b.Travel.AsTyped),
                            PlainCell.Of(b.Load),
                            PlainCell.Of(b.Left?.AsTyped),
                            PlainCell.Of(b.LeftLater?.AsTyped),
                            PlainCell.Of(told.GetValueOrDefault(b.Id) is { } known ? Math.Round(known.SetMetres * 1000, 3) : null),
                            PlainCell.Of(b.Note),
                            PlainCell.Of(b.Withdrawn),
                        ]
                );
            });
        return new PlainTable("Bites", heads, [.. rows]);
    }
}
