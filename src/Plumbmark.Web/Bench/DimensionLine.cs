using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Bench;

/// <summary>A dimension as the page shows it.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Value">The value with its unit.</param>
/// <param name="Sure">Twice its standard uncertainty.</param>
/// <param name="Remark">What a person should know about it.</param>
/// <param name="Comparisons">What it was held against, each with its verdict.</param>
public sealed record DimensionLine(
    string Name,
    string Value,
    string Sure,
    string? Remark,
    IReadOnlyList<(string Text, string Limit, Verdict? Verdict)> Comparisons
)
{
    /// <summary>The line for a dimension.</summary>
    public static DimensionLine Of(DimensionAnswer dimension, BenchText words)
    {
        var value = dimension.Value;
        return new DimensionLine(
            DimensionWords.Capital(value.Dimension),
            words.Value(value.Quantity, value.ShownSi, value.U),
            words.PlusMinus(value.Quantity, value.U),
            value.Remark,
            [.. dimension.Comparisons.Select(c => (Text(value, c, words), Limit(value, c, words), c.Verdict))]
        );
    }

    private static string Text(DimensionValue value, Comparison c, BenchText words)
    {
        var off = words.Signed(value.Quantity, c.Deviation, c.U);
        return c.Against switch
        {
            ComparedWith.Book => Say("bench.dimension.from-the-book", off, c.Reference),
            ComparedWith.Mirror => Say(
                "bench.dimension.n-from-n-n",
                off,
                c.Reference ?? Say("bench.dimension.the-other-side"),
                c.PutDownTo is { } other ? Say("bench.dimension.put-down-to", other) : ""
            ),
            _ when value.ShouldBeNothing => Say("bench.dimension.should-be-nothing"),
            _ => Say("bench.dimension.against-its-limit"),
        };
    }

    private static string Limit(DimensionValue value, Comparison c, BenchText words)
    {
        if (c.Limit is not { } limit)
        {
            return Say("bench.dimension.no-limit-known");
        }

        var whose = limit.Source switch
        {
            LimitSource.Factory => Say("bench.dimension.factory"),
            LimitSource.Practice => Say("bench.dimension.practice"),
            _ => Say("bench.dimension.own"),
        };
        return Say(
            "bench.dimension.limit-n-n-n",
            words.Value(value.Quantity, limit.Si, Math.Min(limit.Si / 10, c.U)),
            whose,
            limit.Note is { } note ? $": {note}" : ""
        );
    }
}
