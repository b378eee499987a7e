namespace Plumbmark.Engine.Uncertainty;

/// <summary>
/// How well one reading was read, independent of all others: σ² = (division/√12)² + tool² + repeatability². The tool's own scale and
/// zero are not in it, because they are common to its readings: <see cref="TapeAccuracy"/>.
/// </summary>
/// <param name="DivisionMetres">The tool's smallest division, to which the reading is rounded.</param>
/// <param name="ToolMetres">What differs from place to place along the tool, standard uncertainty.</param>
/// <param name="RepeatabilityMetres">How far repeats of the same reading scatter, standard deviation; both ends together.</param>
public sealed record ReadingUncertainty(double DivisionMetres, double ToolMetres, double RepeatabilityMetres)
{
    /// <summary>σ, the standard uncertainty of one reading, in metres.</summary>
    public double StandardUncertaintyMetres =>
        Math.Sqrt(DivisionMetres * DivisionMetres / 12 + ToolMetres * ToolMetres + RepeatabilityMetres * RepeatabilityMetres);

    /// <summary>A length between two marks: both ends are set by eye, each with <see cref="CommonPractice.TapeEndMetres"/> unless told better.</summary>
    /// <param name="divisionMetres">The tool's smallest division; not negative.</param>
    /// <param name="endMetres">Standard uncertainty of one end; not negative.</param>
    public static ReadingUncertainty BetweenMarks(double divisionMetres, double endMetres = CommonPractice.TapeEndMetres) =>
        OfEnds(divisionMetres, endMetres, ends: 2);

    /// <summary>A height or an offset whose other end rests on something: one end is set by eye.</summary>
    /// <param name="divisionMetres">The tool's smallest division; not negative.</param>
    /// <param name="endMetres">Standard uncertainty of that end; not negative.</param>
    public static ReadingUncertainty FromRest(double divisionMetres, double endMetres = CommonPractice.TapeEndMetres) =>
        OfEnds(divisionMetres, endMetres, ends: 1);

    private static ReadingUncertainty OfEnds(double divisionMetres, double endMetres, int ends)
    {
        Demand.NotNegative(divisionMetres);
        Demand.NotNegative(endMetres);
        return new ReadingUncertainty(divisionMetres, ToolMetres: 0, endMetres * Math.Sqrt(ends));
    }
}
