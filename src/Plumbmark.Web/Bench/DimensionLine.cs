using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

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
            ComparedWith.Book => $"{off} from the book ({c.Reference})",
            ComparedWith.Mirror =>
                $"{off} from {c.Reference ?? "the other side"}{(c.PutDownTo is { } other ? $", put down to {other}" : "")}",
            _ when value.ShouldBeNothing => "should be nothing",
            _ => "against its limit",
        };
    }

    private static string Limit(DimensionValue value, Comparison c, BenchText words)
    {
        if (c.Limit is not { } limit)
        {
            return "no limit known";
        }

        var whose = limit.Source switch
        {
            LimitSource.Factory => "factory",
            LimitSource.Practice => "practice",
            _ => "own",
        };
        return $"limit {words.Value(value.Quantity, limit.Si, Math.Min(limit.Si / 10, c.U))}, {whose}{(limit.Note is { } note ? $": {note}" : "")}";
    }
}
