using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Adjusting;

namespace Plumbmark.Inspection.Floor.Planning;

/// <summary>What to do about a point that cannot be dropped: the ways there are, what each asks for and what it costs in certainty.</summary>
public static class ObstructedPoint
{
    /// <summary>The ways, surest first; empty when there is no such point.</summary>
    public static IReadOnlyList<IndirectProposal> For(CarFile car, string point)
    {
        if (car.Frame.Point(point) is not { } of)
        {
            return [];
        }

        var words = LengthWords.For(car);
        var drop = of.DropSigma?.Metres ?? CommonPractice.DropMetres;
        var proposals = new List<IndirectProposal>
        {
            Proposal("midpoint", double.Hypot(drop / Math.Sqrt(2), IndirectDrops.MidpointMetres)),
            Proposal("offset", double.Hypot(drop, IndirectDrops.OffsetMetres)),
            Proposal("move-stand", drop),
        };
        if (of.Mirror is { } partner)
        {
            proposals.Add(Proposal("bar", double.Hypot(drop, IndirectDrops.BarMetres), partner));
        }

        if (Trammel(car, of) is var (from, u))
        {
            proposals.Add(Proposal("trammel", u, [.. from]));
        }

        // Moving the stand costs a new levelling, however sure the drop is then: it comes last.
        return [.. proposals.OrderBy(p => p.Way == "move-stand").ThenBy(p => p.UMetres)];

        IndirectProposal Proposal(string way, double u, params string[] others) =>
            new(way, ObstructedWords.Asks(way, point, others), u, drop, ObstructedWords.Sentence(way, point, others, u, drop, words));
    }

    /// <summary>Three marked points to set a trammel from, chosen for the best crossing, and what they leave of uncertainty.</summary>
    /// <remarks>
    /// Least squares of one point from three lengths: cov = (Σ a aᵀ / σ²)⁻¹, a the direction of each length in plan, σ of the length with the drop of its
    /// far end. The heights of the four points must be known to about an eighth of an inch.
    /// </remarks>
    private static (IReadOnlyList<string> From, double U)? Trammel(CarFile car, FramePoint point)
    {
        if ((point.Sketch ?? point.Nominal) is not { X: { } px, Y: { } py })
        {
            return null;
        }

        var sigma = double.Hypot(ToolHabits.Reading(car, null, isBetweenMarks: true).StandardUncertaintyMetres, CommonPractice.DropMetres);
        var near = car
            .Frame.Points.Where(p => p.Id != point.Id && !p.CannotDrop)
            .Select(p => (p.Id, Place: p.Sketch ?? p.Nominal))
            .Where(p => p.Place is { X: not null, Y: not null })
            .Select(p => (p.Id, X: p.Place!.X!.Value.Metres - px.Metres, Y: p.Place.Y!.Value.Metres - py.Metres))
            .Where(p => double.Hypot(p.X, p.Y) > 0.1)
            .ToList();
        var best = (From: (IReadOnlyList<string>)[], U: double.PositiveInfinity);
        for (var i = 0; i < near.Count; i++)
        {
            for (var j = i + 1; j < near.Count; j++)
            {
                for (var k = j + 1; k < near.Count; k++)
                {
                    var u = UncertaintyFrom(sigma, near[i], near[j], near[k]);
                    best = u < best.U ? ([near[i].Id, near[j].Id, near[k].Id], u) : best;
                }
            }
        }

        const double MostUsefulMetres = 0.01; // worse than that no trammel is worth the walk
        return best.U < MostUsefulMetres ? best : null;
    }

    private static double UncertaintyFrom(double sigma, params ReadOnlySpan<(string Id, double X, double Y)> from)
    {
        var (xx, xy, yy) = (0.0, 0.0, 0.0);
        foreach (var (_, x, y) in from)
        {
            var (cos, sin) = (x / double.Hypot(x, y), y / double.Hypot(x, y));
            xx += cos * cos / (sigma * sigma);
            xy += cos * sin / (sigma * sigma);
            yy += sin * sin / (sigma * sigma);
        }

        return Math.Sqrt(Math.Max(xx, yy) / ((xx * yy) - (xy * xy)));
    }
}
