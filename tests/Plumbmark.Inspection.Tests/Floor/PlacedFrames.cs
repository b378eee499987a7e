using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Measured;
using Plumbmark.Testing.Simulation;

namespace Plumbmark.Inspection.Tests.Floor;

/// <summary>Measured frames without a survey: the true places with independent noise of a given size.</summary>
internal static class PlacedFrames
{
    /// <summary>The true places as if measured with this standard uncertainty, turned and shifted as a survey leaves them.</summary>
    public static MeasuredFrame Of(TrueFrame frame, double uMillimetres, Random? random = null, bool book = false, bool heights = true)
    {
        var points = frame
            .Design.Stations.SelectMany(s => new[] { (s, Side: "L", Sign: 1), (s, Side: "R", Sign: -1) })
            .Select(p => new FramePoint(
                $"{p.s.Name}.{p.Side}",
                $"{p.s.Name}.{(p.Side == "L" ? "R" : "L")}",
                p.s.Role,
                Nominal: book ? Place(p.s.X, p.Sign * p.s.HalfWidth, p.s.Z) : null
            ))
            .ToList();
        var coordinates = new List<(int, int)>();
        var values = new List<double>();
        for (var p = 0; p < points.Count; p++)
        {
            var (x, y, z) = frame.Points[points[p].Id];
            foreach (var (axis, value) in new[] { (0, x), (1, y), (2, z) }.Take(heights ? 3 : 2))
            {
                coordinates.Add((p, axis));
                values.Add((value + (random is null ? 0 : uMillimetres * Noise.Normal(random))) / 1000);
            }
        }

        var covariance = new double[values.Count, values.Count];
        for (var i = 0; i < values.Count; i++)
        {
            covariance[i, i] = uMillimetres * uMillimetres / 1e6;
        }

        return new MeasuredFrame(points, coordinates, [.. values], covariance).Moved(0.7, 3, -2);
    }

    private static Place Place(double x, double y, double z) => new(Mm(x), Mm(y), Mm(z));

    private static Engine.Lengths.Length Mm(double value) => Engine.Lengths.Length.FromMillimetres((decimal)value);
}
