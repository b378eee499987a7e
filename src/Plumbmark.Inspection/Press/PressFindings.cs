using Plumbmark.Engine.Bending;

namespace Plumbmark.Inspection.Press;

/// <summary>Where a part is bent, from everything measured along and across it.</summary>
/// <param name="Lines">What each line says.</param>
/// <param name="Bend">The bend in the plane of the ram, from all its lines; null when none shows or too little was measured.</param>
/// <param name="IsSweep">Whether the lines are better explained by a sweep than by a kink.</param>
/// <param name="SideBend">A bend across the ram; null when none shows.</param>
/// <param name="LinesDisagree">Whether two lines of the same plane turn by different angles (95 %): a flange is bent by itself, or the part is twisted.</param>
/// <param name="Twist">The twist; null when not measured.</param>
public sealed record PressFindings(
    IReadOnlyList<LineFinding> Lines,
    Bend? Bend,
    bool IsSweep,
    Bend? SideBend,
    bool LinesDisagree,
    Twist? Twist
)
{
    private const double CoverageFactor = 2; // 95 % of a normal distribution

    /// <summary>What the readings of a job say.</summary>
    public static PressFindings Of(PressJob job)
    {
        var sigma = job.Limits.Reading.Metres;
        var lines = job.Lines.Select(line => new LineFinding(line, BendFinder.Find(Readings(line, sigma)))).ToList();
        var ram = Bends(lines, BendPlane.Ram);
        var side = Bends(lines, BendPlane.Side);
        var twist = Twist.From([
            .. job.Winding.Select(w => new TwistReading(w.At.Metres, w.Left.Metres, w.Right.Metres, Math.Abs(w.Width.Metres), sigma)),
        ]);
        var sweeps = lines.Count(l => l.Line.Plane == BendPlane.Ram && l.Finding is BendFinding.Sweep);
        return new(lines, Mean(ram), 2 * sweeps > ram.Count, Mean(side), Disagree(ram) || Disagree(side), twist);
    }

    private static List<Bend> Bends(List<LineFinding> lines, BendPlane plane) =>
        [.. lines.Where(l => l.Line.Plane == plane).Select(l => l.Bend).OfType<Bend>()];

    // The gap under a straightedge across the hollow is how far the part has gone towards its crown; on the crown side it is how far it falls away.
    private static List<ProfileReading> Readings(ProfileLine line, double sigma)
    {
        var sign = line.Edge == MeasuredFrom.Crown ? -1 : 1;
        return [.. line.Gaps.Select(g => new ProfileReading(g.At.Metres, sign * g.Gap.Metres, sigma))];
    }

    private static bool Disagree(List<Bend> bends) =>
        bends.Any(a =>
            bends.Any(b =>
                Math.Abs(a.AngleRadians - b.AngleRadians)
                > CoverageFactor
                    * Math.Sqrt(
                        (a.AngleUncertaintyRadians * a.AngleUncertaintyRadians) + (b.AngleUncertaintyRadians * b.AngleUncertaintyRadians)
                    )
            )
        );

    // Lines measured apart are independent: each counts by the inverse of its variance.
    private static Bend? Mean(List<Bend> bends)
    {
        if (bends.Count < 2)
        {
            return bends.FirstOrDefault();
        }

        var (place, uPlace) = Weighted(bends, b => b.CentreMetres, b => b.CentreUncertaintyMetres);
        var (angle, uAngle) = Weighted(bends, b => b.AngleRadians, b => b.AngleUncertaintyRadians);
        var swept = bends.Where(b => b.LengthMetres > 0).ToList();
        var (length, uLength) = swept.Count == 0 ? (0, 0) : Weighted(swept, b => b.LengthMetres, b => b.LengthUncertaintyMetres);
        return new(place, uPlace, angle, uAngle, length, uLength);
    }

    private static (double Value, double Uncertainty) Weighted(List<Bend> bends, Func<Bend, double> value, Func<Bend, double> uncertainty)
    {
        var weights = bends.Select(b => 1 / Math.Max(1e-18, uncertainty(b) * uncertainty(b))).ToList();
        var total = weights.Sum();
        return (bends.Zip(weights, (b, w) => w * value(b)).Sum() / total, 1 / Math.Sqrt(total));
    }
}
