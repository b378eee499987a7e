using CsCheck;
using Plumbmark.Engine.Fits;

namespace Plumbmark.Engine.Tests.Fits;

/// <summary>Points near a shape, and rigid motions, for the laws. Lengths in metres, about the size of a part.</summary>
internal static class Clouds
{
    private static readonly Gen<double> s_error = Gen.Double[-1e-3, 1e-3];

    public static Gen<Point2[]> NearLine { get; } =
        Gen.Select(Gen.Double[-0.5, 0.5], s_error, (x, e) => new Point2(x, (0.3 * x) + e)).Array[4, 40];

    public static Gen<Point2[]> NearCircle { get; } =
        Gen.Select(Gen.Double[0, 2 * Math.PI], s_error, (angle, e) => (angle, e))
            .Array[5, 30]
            .Select(polar =>
                Array.ConvertAll(
                    // Spread the points round so that the circle is determined: the random angle only shifts each one.
                    polar.Select((p, i) => (Angle: (2 * Math.PI * i / polar.Length) + (0.3 * p.angle / polar.Length), p.e)).ToArray(),
                    p => new Point2(0.2 + ((0.05 + p.e) * Math.Cos(p.Angle)), -0.1 + ((0.05 + p.e) * Math.Sin(p.Angle)))
                )
            );

    public static Gen<Vector3[]> NearPlane { get; } =
        Gen.Select(Gen.Double[0, 1], s_error)
            .Array[5, 30]
            .Select(face =>
                face.Select(
                        (p, i) =>
                        {
                            // Spread over the face by the golden angle, each shifted a little: nobody probes one spot nine times.
                            var (angle, r) = (2.4 * i, 0.3 * Math.Sqrt((i + 0.5 + (0.4 * p.Item1)) / face.Length));
                            var (x, y) = (r * Math.Cos(angle), 0.7 * r * Math.Sin(angle));
                            return new Vector3(x, y, (0.1 * x) - (0.2 * y) + p.Item2);
                        }
                    )
                    .ToArray()
            );

    public static Gen<Vector3[]> NearRod { get; } =
        Gen.Select(Gen.Double[-0.3, 0.3], s_error, s_error, (s, e, f) => new Vector3(s, (0.2 * s) + e, f - (0.1 * s))).Array[4, 25];

    public static Gen<Vector3[]> NearBore { get; } =
        Gen.Select(Gen.Double[-0.03, 0.03], Gen.Double[0, 1], s_error, (z, a, e) => (z, a, e))
            .Array[12, 30]
            .Select(bore =>
                bore.Select(
                        (p, i) =>
                        {
                            var angle = (2 * Math.PI * ((i * 0.381966) % 1)) + (0.2 * p.a);
                            var r = 0.02 + (0.01 * p.e);
                            // Depth goes to both ends by turns, so that the tilt of the axis is determined.
                            return new Vector3(r * Math.Cos(angle), r * Math.Sin(angle), (i % 2 == 0 ? 0.02 : -0.02) + (0.2 * p.z));
                        }
                    )
                    .ToArray()
            );

    public static Gen<Func<Vector3, Vector3>> Motion { get; } =
        Gen.Select(Gen.Double[-3, 3], Gen.Double[-3, 3], Gen.Double[-2, 2], Gen.Double[-2, 2])
            .Select((a, b, x, y) => (Func<Vector3, Vector3>)(p => TurnX(TurnZ(p, a), b) + new Vector3(x, y, x - y)));

    public static Gen<Func<Point2, Point2>> FlatMotion { get; } =
        Gen.Select(Gen.Double[-3, 3], Gen.Double[-2, 2], Gen.Double[-2, 2])
            .Select(
                (a, x, y) =>
                    (Func<Point2, Point2>)(
                        p => new Point2((Math.Cos(a) * p.X) - (Math.Sin(a) * p.Y) + x, (Math.Sin(a) * p.X) + (Math.Cos(a) * p.Y) + y)
                    )
            );

    /// <summary>Points exactly on a bore of 20 mm radius about a leaning axis.</summary>
    public static Vector3[] Bore(int count) =>
        [
            .. Enumerable
                .Range(0, count)
                .Select(i =>
                    TurnX(new Vector3(.02 * Math.Cos(2.4 * i), .02 * Math.Sin(2.4 * i), .003 * (i % 5)), .4) + new Vector3(.1, .2, -.1)
                ),
        ];

    public static T[] Shuffled<T>(T[] items, int seed)
    {
        var copy = (T[])items.Clone();
        new Random(seed).Shuffle(copy);
        return copy;
    }

    private static Vector3 TurnZ(Vector3 p, double a) =>
        new((Math.Cos(a) * p.X) - (Math.Sin(a) * p.Y), (Math.Sin(a) * p.X) + (Math.Cos(a) * p.Y), p.Z);

    private static Vector3 TurnX(Vector3 p, double a) =>
        new(p.X, (Math.Cos(a) * p.Y) - (Math.Sin(a) * p.Z), (Math.Sin(a) * p.Y) + (Math.Cos(a) * p.Z));
}
