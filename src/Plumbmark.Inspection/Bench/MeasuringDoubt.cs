using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Bench;

/// <summary>How well a length on a loose part is read: the reader's share, and the tool's own share that all its readings have in common.</summary>
/// <remarks>
/// Order of belief: the measure's own sigma, the tool's own sigma, the tool's kind, the kind of measure. The figures by kind are common practice without a
/// published source: a casting is rougher than the caliper's jaws. Each is replaced as soon as its owner states a sigma.
/// </remarks>
/// <param name="ReadingMetres">Standard uncertainty of one reading, metres.</param>
/// <param name="ToolMetres">Standard uncertainty of the tool's own error, metres.</param>
public sealed record MeasuringDoubt(double ReadingMetres, double ToolMetres)
{
    private const double Millimetre = 1e-3;

    /// <summary>A rule or tape end set by eye, a caliper on a rough casting: what is taken when nothing is told.</summary>
    public static MeasuringDoubt Untold { get; } = new(0.3 * Millimetre, 0.05 * Millimetre);

    /// <summary>The doubt of one reading of a measure.</summary>
    public static MeasuringDoubt Of(Measure measure, IReadOnlyList<Tool> tools)
    {
        if (measure.Sigma is { } own)
        {
            return new MeasuringDoubt(own.Metres, 0);
        }

        var tool = tools.FirstOrDefault(t => t.Id == measure.Tool);
        if (tool?.Sigma is { } sigma)
        {
            return new MeasuringDoubt(sigma.Metres, 0);
        }

        var kind = tool?.Kind ?? KindNamed(measure.Tool);
        var doubt = kind is null ? OfMeasure(measure) : OfTool(kind.Value);
        var division = (tool?.Division?.Metres ?? 0) / Math.Sqrt(12);
        return doubt with
        {
            ReadingMetres = Math.Max(doubt.ReadingMetres, Math.Sqrt((division * division) + (0.01 * Millimetre * 0.01 * Millimetre))),
        };
    }

    /// <summary>A tool's kind when it is only named and not described, such as <c>caliper</c>.</summary>
    private static ToolKind? KindNamed(string? name) => ToolWords.TryGetValue(name ?? "", out var kind) ? kind : null;

    private static MeasuringDoubt OfTool(ToolKind kind) =>
        kind switch
        {
            ToolKind.Micrometer => new(0.005 * Millimetre, 0.003 * Millimetre),
            ToolKind.Dial => new(0.01 * Millimetre, 0.01 * Millimetre),
            ToolKind.Feeler => new(0.02 * Millimetre, 0.01 * Millimetre),
            ToolKind.Caliper => new(0.04 * Millimetre, 0.02 * Millimetre),
            ToolKind.Rule => new(0.25 * Millimetre, 0.05 * Millimetre),
            ToolKind.Trammel => new(0.4 * Millimetre, 0),
            ToolKind.Tape => new(0.7 * Millimetre, 0.2 * Millimetre),
            _ => Untold,
        };

    private static MeasuringDoubt OfMeasure(Measure measure) =>
        measure switch
        {
            Measure.Bore => new(0.02 * Millimetre, 0.01 * Millimetre),
            Measure.Straightedge => OfTool(ToolKind.Feeler),
            Measure.RunOut => OfTool(ToolKind.Dial),
            Measure.SpringLoads => new(0.5 * Millimetre, 0.1 * Millimetre),
            Measure.BackToBack => new(0.1 * Millimetre, 0),
            _ => Untold,
        };

    private static IReadOnlyDictionary<string, ToolKind> ToolWords => ToolJson.Kinds;
}
