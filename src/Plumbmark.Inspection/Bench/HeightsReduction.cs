using Plumbmark.Engine;
using Plumbmark.Engine.Fits;
using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Bench;

/// <summary>
/// Heights of a clamped part square to its clamped face. A plane through the heights of the face says how the part really stands on the surface, so
/// neither the face nor the clamping has to be perfect; what the plane itself leaves open counts in every height.
/// </summary>
internal static class HeightsReduction
{
    // One face in a hundred would stray this much by reading alone.
    private const double NotFlat = 0.01;

    public static void Add(ReductionWork work, Measure.Heights m)
    {
        var doubt = work.DoubtOf(m);
        Vector3[] face = [.. m.Face.Select(f => At(f.X, f.Y, f.Height))];
        var fit = BestFit.Plane(face).FitOrNull;
        if (fit is null)
        {
            work.Wanting.Add(Texts.Say("bench.heights-reduction.the-heights-on-the-clamped"));
            return;
        }

        if (Math.Abs(fit.Plane.Normal.Z) < Math.Cos(Math.PI / 6))
        {
            work.Wanting.Add(Texts.Say("bench.heights-reduction.the-heights-on-the-clamped-face-rise-more-steeply"));
            return;
        }

        var (sigma, remark) = (doubt.ReadingMetres, default(string));
        if (fit.Residuals.SigmaMetres is { } seen)
        {
            var squares = fit.Residuals.SumOfSquares / (sigma * sigma);
            if (ChiSquare.UpperTail(squares, fit.Residuals.DegreesOfFreedom) < NotFlat)
            {
                sigma = Math.Max(sigma, seen);
                remark = Texts.Say("bench.heights-reduction.the-clamped-face-is-not");
            }
        }

        foreach (var place in m.Places)
        {
            var p = At(place.X, place.Y, place.Height);
            var plane = fit.UncertaintyUnder(p, sigma);
            var u = Math.Sqrt((doubt.ReadingMetres * doubt.ReadingMetres) + (plane * plane));
            work.Add(
                new DimensionValue(
                    place.Dimension,
                    Quantity.Length,
                    DimensionNature.Shape,
                    fit.Plane.Distance(p),
                    u,
                    0,
                    m.Tool,
                    [m.Id],
                    remark
                )
            );
        }
    }

    private static Vector3 At(Length x, Length y, Length height) => new(x.Metres, y.Metres, height.Metres);
}
