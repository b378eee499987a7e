using Plumbmark.Engine.Adjustment;

namespace Plumbmark.Inspection.Floor.Levelling;

/// <summary>The floor as its heights tell it: a plane, and between the places read what each differs from the plane.</summary>
/// <remarks>
/// Least-squares plane z = a + b x + c y through all places; the differences are spread by the inverse square of the distance (Shepard, Proceedings of
/// the 23rd ACM National Conference, 1968, 517-524), so that the surface passes through every place read.
/// </remarks>
public sealed class FloorSurface
{
    private const double SamePlaceMetres = 1e-3;
    private const double LeastShare = 1e-9; // of a sum of squares that is left: less, and the places lie on one line

    private readonly (double X, double Y, double Left)[] _places;
    private readonly double _a;

    private FloorSurface((double X, double Y, double Left)[] places, double a, double slopeForward, double slopeLeft) =>
        (_places, _a, SlopeForward, SlopeLeft) = (places, a, slopeForward, slopeLeft);

    /// <summary>Rise of the plane for each metre forward.</summary>
    public double SlopeForward { get; }

    /// <summary>Rise of the plane for each metre to the left.</summary>
    public double SlopeLeft { get; }

    /// <summary>The floor through these places; null with fewer than three or when all lie on one line.</summary>
    public static FloorSurface? Through(IReadOnlyList<FloorHeight> floor)
    {
        var places = floor.Select(f => (X: f.X.Metres, Y: f.Y.Metres, Z: f.Height.Metres)).ToArray();
        if (places.Length < 3)
        {
            return null;
        }

        var (mx, my, mz) = (places.Average(p => p.X), places.Average(p => p.Y), places.Average(p => p.Z));
        var xx = places.Sum(p => (p.X - mx) * (p.X - mx));
        var yy = places.Sum(p => (p.Y - my) * (p.Y - my));
        var xy = places.Sum(p => (p.X - mx) * (p.Y - my));
        var xz = places.Sum(p => (p.X - mx) * (p.Z - mz));
        var yz = places.Sum(p => (p.Y - my) * (p.Z - mz));
        var determinant = (xx * yy) - (xy * xy);
        if (determinant <= LeastShare * xx * yy)
        {
            return null;
        }

        var forward = ((xz * yy) - (yz * xy)) / determinant;
        var left = ((yz * xx) - (xz * xy)) / determinant;
        var a = mz - (forward * mx) - (left * my);
        return new FloorSurface([.. places.Select(p => (p.X, p.Y, p.Z - a - (forward * p.X) - (left * p.Y)))], a, forward, left);
    }

    /// <summary>The floor's height at a place, metres above the level line.</summary>
    public double At(double xMetres, double yMetres)
    {
        var (weights, sum) = (0.0, 0.0);
        foreach (var (x, y, left) in _places)
        {
            var square = Math.Max(SamePlaceMetres * SamePlaceMetres, ((x - xMetres) * (x - xMetres)) + ((y - yMetres) * (y - yMetres)));
            weights += 1 / square;
            sum += left / square;
        }

        return _a + (SlopeForward * xMetres) + (SlopeLeft * yMetres) + (sum / weights);
    }

    /// <summary>The floor as a network wants it.</summary>
    public FloorMap AsMap() => At;
}
