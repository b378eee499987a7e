namespace Plumbmark.Simulations;

/// <summary>A place on an invented frame, metres.</summary>
internal sealed record Spot(string Id, double X, double Y, double Z);

/// <summary>Invented frames: pairs of points along two rails, a little irregular.</summary>
internal static class Frame
{
    public static List<Spot> Ladder(int pairs, Random random, double length, double halfWidth)
    {
        var spots = new List<Spot>();
        for (var i = 0; i < pairs; i++)
        {
            var x = length * (0.5 - (double)i / Math.Max(1, pairs - 1));
            foreach (var (side, sign) in ((string, int)[])[("L", 1), ("R", -1)])
            {
                spots.Add(
                    new(
                        $"P{i}.{side}",
                        x + 0.02 * (random.NextDouble() - 0.5),
                        sign * halfWidth * (1 + 0.3 * Math.Sin(i)) + 0.02 * (random.NextDouble() - 0.5),
                        0.3 + 0.25 * random.NextDouble()
                    )
                );
            }
        }

        return spots;
    }

    public static double Plan(Spot a, Spot b) => double.Hypot(a.X - b.X, a.Y - b.Y);

    public static double Direct(Spot a, Spot b) => double.Hypot(Plan(a, b), a.Z - b.Z);

    public static double Normal(Random random) =>
        Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
}
