using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Press;

namespace Plumbmark.Web.Press;

/// <summary>What may be chosen in the forms of the press, with the words read on screen.</summary>
internal static class PressChoices
{
    public static IReadOnlyList<(string, string)> Kinds { get; } =
    [
        ("wishbone", "wishbone, or half of one"),
        ("bracket", "bracket"),
        ("horn", "frame horn"),
        ("outrigger", "outrigger"),
        ("crossmember", "crossmember without suspension"),
        ("bumper-iron", "bumper iron"),
        ("stay", "stay or strut of the body"),
        ("suspension-crossmember", "crossmember with suspension"),
        ("steering-lever", "steering lever"),
        ("tie-rod", "track rod or tie rod"),
        ("upright", "upright"),
        ("stub-axle", "stub axle"),
        ("ball-joint", "ball joint"),
        ("fulcrum-pin", "fulcrum or king pin"),
        ("spring", "spring"),
    ];

    public static IReadOnlyList<(string, string)> Makes { get; } =
    [
        ("pressed", "pressed from sheet"),
        ("fabricated", "built up of sheet or tube"),
        ("bar", "cut from bar"),
        ("tube", "tube"),
        ("forged", "forged"),
        ("cast", "cast"),
    ];

    public static IReadOnlyList<(string, string)> Materials { get; } =
    [.. MaterialTable.All.Select(m => (PressWordLists.Materials.WordFor(m.Material), m.Name))];

    public static IReadOnlyList<(string, string)> Shapes { get; } =
    [
        ("rectangle", "flat or square bar"),
        ("round", "solid round"),
        ("tube", "round tube"),
        ("box", "box"),
        ("channel", "channel, web upright"),
        ("channel-web-at-ram", "channel, web under the ram"),
        ("channel-legs-at-ram", "channel, legs at the ram"),
        ("I", "I, web upright"),
        ("hat", "hat, crown under the ram"),
    ];

    public static IReadOnlyList<(string, string)> Answers { get; } = [("no", "no"), ("yes", "yes")];

    public static IReadOnlyList<(string, string)> Planes { get; } = [("ram", "the way the ram goes"), ("side", "across the ram")];

    public static IReadOnlyList<(string, string)> Edges { get; } =
    [
        ("hollow", "straightedge across the hollow side"),
        ("crown", "straightedge on the crown side"),
        ("table", "heights above a table, crown up"),
    ];

    public static IReadOnlyList<(string, string)> TravelPlaces { get; } =
    [("ram", "at the ram"), ("part", "by a gauge on the part itself")];

    public static IReadOnlyList<(string, string)> Sources { get; } =
    [("factory", "the maker, for this part"), ("practice", "what the trade uses"), ("own", "my own choice")];

    public static IReadOnlyList<(string, string)> Methods { get; } =
    [("dye", "dye penetrant"), ("magnetic", "magnetic particles"), ("eye", "looked at only")];

    public static IReadOnlyList<(BiteSign Sign, string Word, string Text)> Signs { get; } =
    [
        (BiteSign.Tick, "tick", "I heard a tick or a crack"),
        (BiteSign.Flaking, "flaking", "paint or scale flaked off"),
        (BiteSign.LoadFell, "load-fell", "the load fell while pumping"),
        (BiteSign.WrongPlane, "wrong-plane", "it moved sideways or turned"),
        (BiteSign.Buckled, "buckled", "a wall buckled or was marked"),
    ];

    public static string SourceWord(LimitSource source) =>
        source switch
        {
            LimitSource.Factory => "factory",
            LimitSource.Practice => "practice",
            _ => "own",
        };
}
