using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Press;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Press;

/// <summary>What may be chosen in the forms of the press, with the words read on screen.</summary>
internal static class PressChoices
{
    public static IReadOnlyList<(string, string)> Kinds { get; } =
    [
        ("wishbone", Say("press.wishbone-or-half-of")),
        ("bracket", Say("press.bracket")),
        ("horn", Say("press.frame-horn")),
        ("outrigger", Say("press.outrigger")),
        ("crossmember", Say("press.crossmember-without-suspension")),
        ("bumper-iron", Say("press.bumper-iron")),
        ("stay", Say("press.stay-or-strut-of")),
        ("suspension-crossmember", Say("press.crossmember-with-suspension")),
        ("steering-lever", Say("press.steering-lever")),
        ("tie-rod", Say("press.track-rod-or-tie")),
        ("upright", Say("press.upright")),
        ("stub-axle", Say("press.stub-axle")),
        ("ball-joint", Say("press.ball-joint")),
        ("fulcrum-pin", Say("press.fulcrum-or-king-pin")),
        ("spring", Say("press.spring")),
    ];

    public static IReadOnlyList<(string, string)> Makes { get; } =
    [
        ("pressed", Say("press.pressed-from-sheet")),
        ("fabricated", Say("press.built-up-of-sheet")),
        ("bar", Say("press.cut-from-bar")),
        ("tube", Say("press.tube")),
        ("forged", Say("press.forged")),
        ("cast", Say("press.cast")),
    ];

    public static IReadOnlyList<(string, string)> Materials { get; } =
    [.. MaterialTable.All.Select(m => (PressWordLists.Materials.WordFor(m.Material), m.Name))];

    public static IReadOnlyList<(string, string)> Shapes { get; } =
    [
        ("rectangle", Say("press.flat-or-square-bar")),
        ("round", Say("press.solid-round")),
        ("tube", Say("press.round-tube")),
        ("box", Say("press.box")),
        ("channel", Say("press.channel-web-upright")),
        ("channel-web-at-ram", Say("press.channel-web-under-the")),
        ("channel-legs-at-ram", Say("press.channel-legs-at-the")),
        ("I", Say("press.i-web-upright")),
        ("hat", Say("press.hat-crown-under-the")),
    ];

    public static IReadOnlyList<(string, string)> Answers { get; } = [("no", Say("press.no")), ("yes", Say("press.yes"))];

    public static IReadOnlyList<(string, string)> Planes { get; } =
    [("ram", Say("press.the-way-the-ram")), ("side", Say("press.across-the-ram"))];

    public static IReadOnlyList<(string, string)> Edges { get; } =
    [
        ("hollow", Say("press.straightedge-across-the-hollow")),
        ("crown", Say("press.straightedge-on-the-crown")),
        ("table", Say("press.heights-above-a-table")),
    ];

    public static IReadOnlyList<(string, string)> TravelPlaces { get; } =
    [("ram", Say("press.at-the-ram")), ("part", Say("press.by-a-gauge-on"))];

    public static IReadOnlyList<(string, string)> Sources { get; } =
    [("factory", Say("press.the-maker-for-this")), ("practice", Say("press.what-the-trade-uses")), ("own", Say("press.my-own-choice"))];

    public static IReadOnlyList<(string, string)> Methods { get; } =
    [("dye", Say("press.dye-penetrant")), ("magnetic", Say("press.magnetic-particles")), ("eye", Say("press.looked-at-only"))];

    public static IReadOnlyList<(BiteSign Sign, string Word, string Text)> Signs { get; } =
    [
        (BiteSign.Tick, "tick", Say("press.i-heard-a-tick")),
        (BiteSign.Flaking, "flaking", Say("press.paint-or-scale-flaked")),
        (BiteSign.LoadFell, "load-fell", Say("press.the-load-fell-while")),
        (BiteSign.WrongPlane, "wrong-plane", Say("press.it-moved-sideways-or")),
        (BiteSign.Buckled, "buckled", Say("press.a-wall-buckled-or")),
    ];

    public static string SourceWord(LimitSource source) =>
        source switch
        {
            LimitSource.Factory => "factory",
            LimitSource.Practice => "practice",
            _ => "own",
        };
}
