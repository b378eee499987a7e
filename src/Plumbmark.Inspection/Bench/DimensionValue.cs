using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>A dimension of a part as its measures give it: an estimate with its doubt. What the book says of it is a <see cref="BookFigure"/>.</summary>
/// <param name="Dimension">Its name.</param>
/// <param name="Quantity">Length, angle or rate.</param>
/// <param name="Nature">What it tells.</param>
/// <param name="Si">The value in metres, radians or newtons per metre; signed where it should be nothing and a sign has a meaning.</param>
/// <param name="ReadingU">Standard uncertainty from reading, same unit: another reading has another error.</param>
/// <param name="ToolU">Standard uncertainty of the tool's own, same unit: all readings with it share the error, so it cancels between two parts.</param>
/// <param name="Tool">The tool, when one and the same; null otherwise.</param>
/// <param name="Measures">The measures it comes from.</param>
/// <param name="Remark">What a person should know about it; null when nothing.</param>
public sealed record DimensionValue(
    string Dimension,
    Quantity Quantity,
    DimensionNature Nature,
    double Si,
    double ReadingU,
    double ToolU,
    string? Tool,
    IReadOnlyList<string> Measures,
    string? Remark = null
)
{
    /// <summary>Combined standard uncertainty, k = 1.</summary>
    public double U => Math.Sqrt((ReadingU * ReadingU) + (ToolU * ToolU));

    /// <summary>Whether bending changes it.</summary>
    public bool IsBendable => Nature is DimensionNature.Shape or DimensionNature.Trueness;

    /// <summary>Whether it should be nothing.</summary>
    public bool ShouldBeNothing => Nature is DimensionNature.Trueness or DimensionNature.Roundness;

    /// <summary>Whether its sign says nothing to a person: which way a bore is oval. <see cref="Si"/> keeps it, so that two measures add up.</summary>
    public bool IsSizeAlone => Nature == DimensionNature.Roundness;

    /// <summary>What is shown of it: <see cref="Si"/>, without its sign where that says nothing; metres, radians or newtons per metre.</summary>
    public double ShownSi => IsSizeAlone ? Math.Abs(Si) : Si;

    /// <summary>Whether it is compared with the other side.</summary>
    public bool IsPaired => Nature is DimensionNature.Shape or DimensionNature.Spring;

    /// <summary>Standard uncertainty of the difference to the same dimension of another part; a common tool's own error drops out.</summary>
    public double UOfDifference(DimensionValue other)
    {
        var common = Tool is not null && Tool == other.Tool;
        var own = (ReadingU * ReadingU) + (other.ReadingU * other.ReadingU);
        return Math.Sqrt(common ? own : own + (ToolU * ToolU) + (other.ToolU * other.ToolU));
    }

    /// <summary>Two estimates of the same dimension as one: the mean weighted by 1/u² of independent readings.</summary>
    internal DimensionValue With(DimensionValue other)
    {
        var (a, b) = (1 / (U * U), 1 / (other.U * other.U));
        var (share, rest) = (a / (a + b), b / (a + b));
        var apart = Math.Abs(Si - other.Si);
        // Beyond 3 u two readings of one thing hardly belong together.
        var remark =
            apart > 3 * Math.Sqrt((U * U) + (other.U * other.U)) ? Texts.Say("bench.dimension-value.two-measures-of-this-disagree") : null;
        return this with
        {
            Si = (share * Si) + (rest * other.Si),
            ReadingU = Math.Sqrt((share * share * ReadingU * ReadingU) + (rest * rest * other.ReadingU * other.ReadingU)),
            ToolU =
                Tool == other.Tool
                    ? (share * ToolU) + (rest * other.ToolU)
                    : Math.Sqrt((share * share * ToolU * ToolU) + (rest * rest * other.ToolU * other.ToolU)),
            Tool = Tool == other.Tool ? Tool : null,
            Measures = [.. Measures, .. other.Measures],
            Remark = remark ?? Remark ?? other.Remark,
        };
    }

    /// <summary>Probability of lying within a limit either way of a target.</summary>
    internal static double Within(double deviation, double u, double limit) => ConformityProbability.Between(deviation, u, -limit, limit);
}
