namespace Plumbmark.Inspection.Road;

/// <summary>How the front wheels stand on the road, turn and travel, as <c>plumbmark road</c> prints it for a person.</summary>
internal static class RoadTravelText
{
    private const string Left = "Left front wheel through its travel, as found";
    private const string Right = "Right front wheel through its travel, as found";
    private static readonly string[] s_columns =
    [
        "travel",
        "camber",
        "toe-in",
        "castor",
        "king-pin",
        "half track",
        "forward",
        "scrub",
        "trail",
        "roll centre",
    ];

    /// <summary>Adds the sections that an answer has something for.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="display">How its numbers are shown.</param>
    /// <param name="section">Takes a title and its lines.</param>
    public static void Add(RoadAnswer answer, RoadDisplay display, Action<string, IReadOnlyList<string>> section)
    {
        section("At the road", [.. answer.Ground.Select(g => Line(g, display))]);
        section("Toe-out on turns", [.. answer.Turns.Select(Line)]);
        section(Left, Table(answer.FoundCurves[Side.Left], display));
        section(Right, Table(answer.FoundCurves[Side.Right], display));
    }

    private static string Line(GroundAnswer g, RoadDisplay display)
    {
        string Both(double found, double drawn) => $"{display.SignedLength(found)} (drawn {display.SignedLength(drawn)})";
        return $"{RoadNames.Of(g.Side)}: scrub radius {Both(g.ScrubRadius, g.ScrubRadiusDrawn)}, trail {Both(g.Trail, g.TrailDrawn)}, roll centre {Both(g.RollCentre, g.RollCentreDrawn)} above the road";
    }

    private static string Line(TurnPoint turn)
    {
        static string Outer(TurnedWheels? wheels) => wheels is { } w ? RoadDisplay.Size(w.OuterTurn) : "beyond reach";
        return $"inner wheel {RoadDisplay.Size(turn.Inner)}: outer wheel {Outer(turn.ToTheLeft)} to the left, {Outer(turn.ToTheRight)} to the right, drawn {Outer(turn.Drawn)}";
    }

    private static List<string> Table(IReadOnlyList<CurvePoint> curve, RoadDisplay display)
    {
        List<IReadOnlyList<string>> rows = [s_columns, .. TravelRows.Of(curve, display, "-")];
        int[] widths = [.. s_columns.Select((_, column) => rows.Max(r => r[column].Length))];
        return curve.Count == 0 ? [] : [.. rows.Select(r => string.Join("  ", r.Select((cell, column) => cell.PadLeft(widths[column]))))];
    }
}
