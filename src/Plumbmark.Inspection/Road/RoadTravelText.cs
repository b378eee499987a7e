using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>How the front wheels stand on the road, turn and travel, as <c>plumbmark road</c> prints it for a person.</summary>
internal static class RoadTravelText
{
    private static string Left => Texts.Say("road.travel.left-front-wheel-through-its");
    private static string Right => Texts.Say("road.travel.right-front-wheel-through-its");
    private static readonly string[] s_columns =
    [
        Texts.Say("road.travel.travel-2"),
        Texts.Say("road.travel.camber-2"),
        Texts.Say("road.travel.toe-in-2"),
        Texts.Say("road.travel.castor-2"),
        Texts.Say("road.travel.king-pin-2"),
        Texts.Say("road.travel.half-track"),
        Texts.Say("road.travel.forward-2"),
        Texts.Say("road.travel.scrub-2"),
        Texts.Say("road.travel.trail-2"),
        Texts.Say("road.travel.roll-centre"),
    ];

    /// <summary>Adds the sections that an answer has something for.</summary>
    /// <param name="answer">The answer.</param>
    /// <param name="display">How its numbers are shown.</param>
    /// <param name="section">Takes a title and its lines.</param>
    public static void Add(RoadAnswer answer, RoadDisplay display, Action<string, IReadOnlyList<string>> section)
    {
        section(Texts.Say("road.travel.at-the-road"), [.. answer.Ground.Select(g => Line(g, display))]);
        section(Texts.Say("road.travel.toe-out-on-turns"), [.. answer.Turns.Select(Line)]);
        section(Left, Table(answer.FoundCurves[Side.Left], display));
        section(Right, Table(answer.FoundCurves[Side.Right], display));
    }

    private static string Line(GroundAnswer g, RoadDisplay display)
    {
        string Both(double found, double drawn) => Texts.Say("road.travel.drawn", display.SignedLength(found), display.SignedLength(drawn));
        return Texts.Say(
            "road.travel.scrub-radius-trail-roll-centre",
            RoadNames.Of(g.Side),
            Both(g.ScrubRadius, g.ScrubRadiusDrawn),
            Both(g.Trail, g.TrailDrawn),
            Both(g.RollCentre, g.RollCentreDrawn)
        );
    }

    private static string Line(TurnPoint turn)
    {
        static string Outer(TurnedWheels? wheels) =>
            wheels is { } w ? RoadDisplay.Size(w.OuterTurn) : Texts.Say("road.travel.beyond-reach");
        return Texts.Say(
            "road.travel.inner-wheel-outer-wheel-to",
            RoadDisplay.Size(turn.Inner),
            Outer(turn.ToTheLeft),
            Outer(turn.ToTheRight),
            Outer(turn.Drawn)
        );
    }

    private static List<string> Table(IReadOnlyList<CurvePoint> curve, RoadDisplay display)
    {
        List<IReadOnlyList<string>> rows = [s_columns, .. TravelRows.Of(curve, display, "-")];
        int[] widths = [.. s_columns.Select((_, column) => rows.Max(r => r[column].Length))];
        return curve.Count == 0 ? [] : [.. rows.Select(r => string.Join("  ", r.Select((cell, column) => cell.PadLeft(widths[column]))))];
    }
}
