using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;

namespace Plumbmark.Journeys;

/// <summary>What a tape would show on a ladder frame that is exactly as its skeleton sketches it, read to 1/16 in.</summary>
internal sealed class LadderSurvey(int pairs)
{
    private readonly Dictionary<string, FramePoint> _points = FrameSkeleton
        .Ladder(pairs, LengthUnit.Inch)
        .ToDictionary(p => p.Id, StringComparer.Ordinal);

    /// <summary>Lengths across, along and diagonally, in walking order.</summary>
    public IEnumerable<(string From, string To, string Value)> Lengths()
    {
        var names = _points.Keys.Select(id => id[..^2]).Distinct().ToList();
        foreach (var (name, next) in names.Zip(names.Skip(1)))
        {
            yield return Plan($"{name}.L", $"{next}.L");
            yield return Plan($"{name}.R", $"{next}.R");
            yield return Plan($"{name}.L", $"{next}.R");
            yield return Plan($"{name}.R", $"{next}.L");
            yield return Plan($"{name}.L", $"{name}.R");
        }

        yield return Plan($"{names[^1]}.L", $"{names[^1]}.R");
    }

    private (string, string, string) Plan(string from, string to)
    {
        var (a, b) = (_points[from].Sketch!, _points[to].Sketch!);
        var (dx, dy) = ((a.X!.Value - b.X!.Value).Inches, (a.Y!.Value - b.Y!.Value).Inches);
        var sixteenths = (int)Math.Round(16 * Math.Sqrt(dx * dx + dy * dy));
        var (whole, rest) = (sixteenths / 16, sixteenths % 16);
        return (from, to, rest == 0 ? $"{whole}" : $"{whole} {rest}/16");
    }
}
