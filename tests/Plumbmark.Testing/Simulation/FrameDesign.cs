using Plumbmark.Inspection.Car;

namespace Plumbmark.Testing.Simulation;

/// <summary>One pair of an invented frame as its drawing has it. Millimetres.</summary>
public sealed record DesignStation(string Name, double X, double HalfWidth, double Z, PointRole Role);

/// <summary>An invented frame as its drawing has it: pairs from front to rear.</summary>
public sealed record FrameDesign(IReadOnlyList<DesignStation> Stations)
{
    /// <summary>An invented ladder frame with five to nine pairs: horns in front, suspension at both ends, body mounts between.</summary>
    public static FrameDesign Random(Random random)
    {
        var pairs = random.Next(5, 10);
        var length = 1900 + (random.NextDouble() * 700);
        var width = 330 + (random.NextDouble() * 60);
        var level = 300 + (random.NextDouble() * 100);
        var stations = new List<DesignStation>();
        for (var i = 0; i < pairs; i++)
        {
            var share = i / (double)(pairs - 1);
            var along = share + (i > 0 && i < pairs - 1 ? (random.NextDouble() - 0.5) * 0.5 / pairs : 0);
            var role =
                i == 0 ? PointRole.Other
                : i <= 2 ? PointRole.Suspension
                : i >= pairs - 2 ? PointRole.Spring
                : PointRole.Body;
            var halfWidth = width + ((random.NextDouble() - 0.5) * 80);
            stations.Add(
                new DesignStation($"{(char)('A' + i)}", Math.Round(length * (0.5 - along)), Math.Round(halfWidth), Math.Round(level), role)
            );
        }

        return new FrameDesign(stations);
    }

    /// <summary>The same frame with stations at heights of their own.</summary>
    public FrameDesign WithHeights(Random random) =>
        new([.. Stations.Select(s => s with { Z = Math.Round(s.Z + (random.NextDouble() * 150) - 50) })]);
}
