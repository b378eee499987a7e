namespace Plumbmark.Testing.Simulation;

/// <summary>Where the points of a simulated frame really are. Millimetres; left points end in .L.</summary>
public sealed class TrueFrame
{
    private readonly Dictionary<string, (double X, double Y, double Z)> _points = new(StringComparer.Ordinal);

    /// <summary>A frame exactly as drawn.</summary>
    public TrueFrame(FrameDesign design)
    {
        Design = design;
        foreach (var s in design.Stations)
        {
            _points[$"{s.Name}.L"] = (s.X, s.HalfWidth, s.Z);
            _points[$"{s.Name}.R"] = (s.X, -s.HalfWidth, s.Z);
        }
    }

    public FrameDesign Design { get; }

    /// <summary>The one point that was bent; null when it is another kind of damage.</summary>
    public string? BentPoint { get; init; }

    public IReadOnlyDictionary<string, (double X, double Y, double Z)> Points => _points;

    /// <summary>Moves every point by a rule.</summary>
    public TrueFrame Move(Func<string, (double X, double Y, double Z), (double X, double Y, double Z)> by)
    {
        foreach (var (id, at) in _points.ToList())
        {
            var (x, y, z) = by(id, at);
            _points[id] = (at.X + x, at.Y + y, at.Z + z);
        }

        return this;
    }

    /// <summary>Scatter of building: every coordinate by itself.</summary>
    public TrueFrame Scatter(Random random, double sigma) =>
        Move((_, _) => (sigma * Noise.Normal(random), sigma * Noise.Normal(random), sigma * Noise.Normal(random)));

    /// <summary>Sidesway of the front: the first stations shifted alike, or growing from the next station on.</summary>
    public TrueFrame Sidesway(int lastMoved, double amount, bool grows)
    {
        var (outer, hinge) = (Design.Stations[0].X, Design.Stations[lastMoved + 1].X);
        var border = (Design.Stations[lastMoved].X + hinge) / 2;
        return Move((_, at) => at.X < border ? (0, 0, 0) : (0, grows ? amount * (at.X - hinge) / (outer - hinge) : amount, 0));
    }

    /// <summary>Diamond: the left rail ahead.</summary>
    public TrueFrame Diamond(double amount) => Move((id, _) => (IsLeft(id) ? amount : 0, 0, 0));

    /// <summary>Mash: one side of the front pushed back.</summary>
    public TrueFrame Mash(int lastMoved, bool isLeft, double amount)
    {
        var border = (Design.Stations[lastMoved].X + Design.Stations[lastMoved + 1].X) / 2;
        return Move((id, at) => at.X > border && IsLeft(id) == isLeft ? (-amount, 0, 0) : (0, 0, 0));
    }

    /// <summary>Twist: the left side of the front up, growing from the rear.</summary>
    public TrueFrame Twist(double amount)
    {
        var (front, rear) = (Design.Stations[0].X, Design.Stations[^1].X);
        return Move((id, at) => (0, 0, (IsLeft(id) ? 0.5 : -0.5) * amount * (at.X - rear) / (front - rear)));
    }

    /// <summary>Sag of one side or both, lowest at a station.</summary>
    public TrueFrame Sag(int lowest, double amount, bool? isLeft)
    {
        var (front, low, rear) = (Design.Stations[0].X, Design.Stations[lowest].X, Design.Stations[^1].X);
        return Move(
            (id, at) =>
                isLeft is { } side && side != IsLeft(id)
                    ? (0, 0, 0)
                    : (0, 0, -amount * (at.X > low ? (front - at.X) / (front - low) : (at.X - rear) / (low - rear)))
        );
    }

    /// <summary>One point displaced.</summary>
    public TrueFrame Bend(string point, double dx, double dy, double dz) => Move((id, _) => id == point ? (dx, dy, dz) : (0, 0, 0));

    /// <summary>The frame not level on its stands: heights lean, the plan does not notice.</summary>
    public TrueFrame Lean(double rollRadians, double noseRadians) => Move((_, at) => (0, 0, (rollRadians * at.Y) + (noseRadians * at.X)));

    private static bool IsLeft(string id) => id.EndsWith(".L", StringComparison.Ordinal);
}
