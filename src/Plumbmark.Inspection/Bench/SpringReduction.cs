using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>A coil spring's rate and free length from its length under known loads.</summary>
/// <remarks>
/// A straight line: length = free length - load / rate, by weighted least squares. Both errors count: a length has its reading error and a load is taken as known
/// to 1 % (common practice, no published source), which at the present slope is a length too (effective variance).
/// </remarks>
internal static class SpringReduction
{
    private const double LoadShare = 0.01;

    // The weights hang on the slope and the slope on the weights; three rounds settle more digits than a scale shows.
    private const int Rounds = 3;

    public static void Add(ReductionWork work, Measure.SpringLoads m)
    {
        var doubt = work.DoubtOf(m);
        double[] loads = [.. m.Loads.Select(l => l.Load.Newtons)];
        double[] lengths = [.. m.Loads.Select(l => l.Length.Metres)];
        if (loads.Distinct().Count() < 2)
        {
            work.Wanting.Add(Texts.Say("bench.spring-reduction.a-springs-rate-needs-its"));
            return;
        }

        var line = Line(loads, lengths, doubt.ReadingMetres);
        if (!(line.Slope < 0))
        {
            work.Wanting.Add(Texts.Say("bench.spring-reduction.the-springs-length-grows-with"));
            return;
        }

        var rate = -1 / line.Slope;
        // u(k) = u(slope) k², because k = 1 / slope.
        work.Add(new DimensionValue("rate", Quantity.Rate, DimensionNature.Spring, rate, line.USlope * rate * rate, 0, m.Tool, [m.Id]));
        work.Add(
            new DimensionValue(
                "free-length",
                Quantity.Length,
                DimensionNature.Spring,
                line.Start,
                line.UStart,
                doubt.ToolMetres,
                m.Tool,
                [m.Id]
            )
        );
    }

    private static (double Start, double Slope, double UStart, double USlope) Line(double[] loads, double[] lengths, double sigma)
    {
        var (start, slope, uStart, uSlope) = (0.0, 0.0, 0.0, 0.0);
        for (var round = 0; round < Rounds; round++)
        {
            double s = 0,
                sx = 0,
                sy = 0;
            var weights = Array.ConvertAll(loads, x => 1 / ((sigma * sigma) + (slope * LoadShare * x * slope * LoadShare * x)));
            for (var i = 0; i < loads.Length; i++)
            {
                (s, sx, sy) = (s + weights[i], sx + (weights[i] * loads[i]), sy + (weights[i] * lengths[i]));
            }

            var (meanX, meanY) = (sx / s, sy / s);
            double sxx = 0,
                sxy = 0;
            for (var i = 0; i < loads.Length; i++)
            {
                sxx += weights[i] * (loads[i] - meanX) * (loads[i] - meanX);
                sxy += weights[i] * (loads[i] - meanX) * (lengths[i] - meanY);
            }

            slope = sxy / sxx;
            start = meanY - (slope * meanX);
            (uSlope, uStart) = (Math.Sqrt(1 / sxx), Math.Sqrt((1 / s) + (meanX * meanX / sxx)));
        }

        return (start, slope, uStart, uSlope);
    }
}
