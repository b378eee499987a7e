using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Bench;

/// <summary>What the measures of one part come to: its dimensions, its differences from its partner, and what could not be worked out.</summary>
/// <param name="Dimensions">Each dimension once, in the order first measured.</param>
/// <param name="SideDifferences">Differences seen directly, this part less its partner.</param>
/// <param name="Wanting">Sentences: what a measure lacks to be of use.</param>
public sealed record Reduction(
    IReadOnlyList<DimensionValue> Dimensions,
    IReadOnlyList<DimensionValue> SideDifferences,
    IReadOnlyList<string> Wanting
)
{
    /// <summary>The dimension of that name; null when not measured.</summary>
    public DimensionValue? Dimension(string name) => Dimensions.FirstOrDefault(d => d.Dimension == name);

    /// <summary>Works out every standing measure of a part.</summary>
    public static Reduction Of(Part part, IReadOnlyList<Tool> tools)
    {
        var work = new ReductionWork(tools);
        // Bores first: a distance measured between or over edges needs their diameters.
        foreach (var bore in part.StandingMeasures.OfType<Measure.Bore>())
        {
            BoreReduction.Add(work, bore);
        }

        foreach (var measure in part.StandingMeasures)
        {
            switch (measure)
            {
                case Measure.Plain m:
                    PlainReduction.Add(work, m, part.Kind);
                    break;
                case Measure.Angle m:
                    PlainReduction.Add(work, m);
                    break;
                case Measure.RunOut m:
                    PlainReduction.Add(work, m);
                    break;
                case Measure.BackToBack m:
                    PlainReduction.Add(work, m);
                    break;
                case Measure.Centres m:
                    CentresReduction.Add(work, m);
                    break;
                case Measure.Heights m:
                    HeightsReduction.Add(work, m);
                    break;
                case Measure.Straightedge m:
                    StraightedgeReduction.Add(work, m);
                    break;
                case Measure.Rods m:
                    RodsReduction.Add(work, m);
                    break;
                case Measure.SpringLoads m:
                    SpringReduction.Add(work, m);
                    break;
            }
        }

        return new Reduction(work.Dimensions, work.SideDifferences, work.Wanting);
    }
}
