using Plumbmark.Inspection.Road;
using static Plumbmark.Inspection.Language.Texts;
using static Plumbmark.Web.Road.FormField.Holds;

namespace Plumbmark.Web.Road;

/// <summary>The forms of the Road: which fields each has.</summary>
internal static class RoadFields
{
    private static readonly string s_angleHint = Say("road.degrees-or-degrees-and");

    private static readonly (string, string)[] s_wheels =
    [
        ("FL", Say("road.front-left")),
        ("FR", Say("road.front-right")),
        ("RL", Say("road.rear-left")),
        ("RR", Say("road.rear-right")),
    ];
    private static readonly (string, string)[] s_frontWheels = [("FL", Say("road.front-left")), ("FR", Say("road.front-right"))];
    private static readonly (string, string)[] s_sides = [("L", Say("road.left")), ("R", Say("road.right"))];
    private static readonly (string, string)[] s_axles = [("front", Say("road.front")), ("rear", Say("road.rear"))];
    private static readonly (string, string)[] s_makes = [("two halves", Say("road.two-halves")), ("one piece", Say("road.one-piece"))];
    private static readonly FormField s_halfTurn = new("halfTurn", Say("road.rolled-half-a-turn"), Truth);
    private static readonly FormField s_note = new("note", Say("road.note"), Written);

    /// <summary>The front suspension as drawn.</summary>
    public static IReadOnlyList<FormField> Front { get; } =
    [
        new("upperFront", Say("road.upper-arm-front-pivot"), PairOrPlace, Say("road.a-pair-of-frame")),
        new("upperRear", Say("road.upper-arm-rear-pivot"), PairOrPlace),
        new("lowerFront", Say("road.lower-arm-front-pivot"), PairOrPlace),
        new("lowerRear", Say("road.lower-arm-rear-pivot"), PairOrPlace),
        new("trackRodInner", Say("road.track-rod-inner-joint"), PairOrPlace),
        new("upperJoint", Say("road.upper-outer-joint"), ThreeLengths, Heading: Say("road.arms-and-upright-at")),
        new("lowerJoint", Say("road.lower-outer-joint-or"), ThreeLengths),
        new("leverJoint", Say("road.track-rods-joint-on"), ThreeLengths),
        new("wheelCentre", Say("road.wheel-centre"), ThreeLengths),
        new("camber", Say("road.camber-as-drawn"), Hint: Say("road.positive-with-the-top") + s_angleHint),
        new("toeIn", Say("road.toe-in-of-one"), Hint: Say("road.half-of-the-total") + s_angleHint),
        new("upperArm", Say("road.upper-arm-made-in"), Choice, Choices: s_makes),
        new("lowerArm", Say("road.lower-arm-made-in"), Choice, Choices: s_makes),
        new("trunnion.offset", Say("road.trunnion-axis-outboard-of"), Hint: Say("road.leave-empty-for-a")),
        new("trunnion.lead", Say("road.trunnion-thread-per-turn"), Hint: Say("road.plus-when-the-upright")),
        new("loadedRadius", Say("road.wheel-centre-to-road")),
        new("bump", Say("road.travel-from-ride-height")),
        new("rebound", Say("road.travel-from-ride-height-down")),
        new("steeringBox.dropArmShaft", Say("road.drop-arms-shaft"), ThreeLengths, Heading: Say("road.steering-box-leave-empty")),
        new("steeringBox.dropArmJoint", Say("road.centre-links-joint-on"), ThreeLengths),
        new("steeringBox.idlerShaft", Say("road.idlers-shaft"), ThreeLengths),
        new("steeringBox.idlerJoint", Say("road.centre-links-joint-on-the"), ThreeLengths),
        new("steeringBox.rodsOnArms", Say("road.track-rods-hang-on"), Truth),
    ];

    /// <summary>A live axle as drawn.</summary>
    public static IReadOnlyList<FormField> LiveAxle { get; } =
    [
        new("eye", Say("road.springs-fixed-eyes"), PairOrPlace, Say("road.a-pair-of-frame-points")),
        new("eyeToAxle", Say("road.from-the-fixed-eye")),
        new("axleAboveEye", Say("road.axle-above-the-fixed")),
        new("track", Say("road.rear-track")),
    ];

    /// <summary>Semi-trailing arms as drawn.</summary>
    public static IReadOnlyList<FormField> TrailingArms { get; } =
    [
        new("inner", Say("road.inner-pivot"), PairOrPlace, Say("road.a-pair-of-frame-points")),
        new("outer", Say("road.outer-pivot"), PairOrPlace),
        new("wheelCentre", Say("road.rear-wheel-centre"), ThreeLengths),
        new("camber", Say("road.rear-camber-as-drawn"), Hint: s_angleHint),
        new("toeIn", Say("road.rear-toe-in-of"), Hint: s_angleHint),
    ];

    /// <summary>One figure of the book.</summary>
    public static IReadOnlyList<FormField> Figure { get; } =
    [
        new("figure", Say("road.what"), Choice, IsRequired: true, Choices: [.. Figures.Select(f => (f.Word, RoadNames.Of(f.Kind)))]),
        new("value", Say("road.the-books-figure"), Hint: Say("road.angles-in-degrees-or")),
        new("limit", Say("road.allowed-either-way")),
        new("least", Say("road.or-the-least"), Hint: Say("road.where-the-book-gives")),
        new("most", Say("road.and-the-most")),
        new("diameter", Say("road.toe-as-a-length")),
        new(
            "source",
            Say("road.whose-figure-it-is"),
            Choice,
            IsRequired: true,
            Choices:
            [
                ("factory", Say("road.the-maker-for-this")),
                ("practice", Say("road.what-the-trade-uses")),
                ("own", Say("road.my-own-choice")),
            ]
        ),
        new("note", Say("road.where-it-is-from"), Written, Say("road.book-edition-page")),
    ];

    /// <summary>An adjuster.</summary>
    public static IReadOnlyList<FormField> Adjuster { get; } =
    [
        new("id", Say("road.what-you-call-it"), Written, IsRequired: true),
        new(
            "kind",
            Say("road.kind"),
            Choice,
            IsRequired: true,
            Choices:
            [
                ("shims", Say("road.shims-behind-a-bracket")),
                ("eccentric", Say("road.eccentric-bolt-or-bush")),
                ("trackRod", Say("road.track-rods-screw")),
            ]
        ),
        new("side", Say("road.side"), Choice, IsRequired: true, Choices: s_sides),
        new("at", Say("road.it-moves"), Several, Say("road.for-shims-and-eccentrics")),
        new(
            "direction",
            Say("road.more-of-it-moves"),
            Choice,
            Choices:
            [
                ("out", Say("road.outward")),
                ("in", Say("road.inward")),
                ("forward", Say("road.forward")),
                ("rearward", Say("road.rearward")),
                ("up", Say("road.up")),
                ("down", Say("road.down")),
            ]
        ),
        new("least", Say("road.the-least-it-can"), Hint: Say("road.shims-empty-is-none")),
        new("most", Say("road.the-most-it-can"), IsRequired: true),
        new("step", Say("road.thinnest-shim"), Hint: Say("road.empty-when-it-can")),
        new("fitted", Say("road.fitted-now"), Hint: Say("road.counted-from-what-the")),
        new("usual", Say("road.usual-up-to"), Hint: Say("road.beyond-this-it-absorbs")),
        s_note,
    ];

    /// <summary>The fields of a finding on one part.</summary>
    public static IReadOnlyList<FormField> Finding(CornerPart part) =>
        [
            new("side", Say("road.side"), Choice, IsRequired: true, Choices: s_sides),
            .. part switch
            {
                CornerPart.UpperArm or CornerPart.LowerArm => new FormField[]
                {
                    new("frontHalf", Say("road.in-two-halves-front")),
                    new("rearHalf", Say("road.rear-half-longer-by")),
                    new("ahead", Say("road.in-one-piece-outer")),
                    new("reach", Say("road.reach-longer-by")),
                },
                CornerPart.TrackRod or CornerPart.Upright => [new("length", Say("road.longer-by"), Hint: Say("road.minus-for-shorter"))],
                CornerPart.Stub =>
                [
                    new("camber", Say("road.turned-toward-more-camber"), Hint: s_angleHint),
                    new("toeIn", Say("road.turned-toward-more-toe"), Hint: s_angleHint),
                    new("up", Say("road.higher-by")),
                ],
                _ =>
                [
                    new("forward", Say("road.forward-by"), Hint: Say("road.found-minus-drawn-minus")),
                    new("out", Say("road.away-from-the-centre"), Hint: Say("road.minus-for-inward")),
                    new("up", Say("road.up-by"), Hint: Say("road.minus-for-down")),
                ],
            },
            new("sigma", Say("road.how-sure-a-length"), Hint: Say("road.standard-uncertainty-empty-for")),
            s_note,
        ];

    /// <summary>The kinds of wheel readings: the word, what it is called, what to do, its fields.</summary>
    public static IReadOnlyList<(string Word, string Title, string Ask, IReadOnlyList<FormField> Fields)> WheelKinds { get; } =
    [
        (
            "plumbLine",
            Say("road.camber-plumb-line"),
            Say("road.hang-a-line-just"),
            [
                Wheel(s_wheels),
                new("top", Say("road.line-to-the-top"), IsRequired: true),
                new("bottom", Say("road.line-to-the-bottom"), IsRequired: true),
                new("span", Say("road.between-the-two-edges"), IsRequired: true),
                s_halfTurn,
                s_note,
            ]
        ),
        (
            "level",
            Say("road.camber-level"),
            Say("road.hold-the-level-across"),
            [Wheel(s_wheels), new("camber", Say("road.camber"), IsRequired: true, Hint: s_angleHint), s_halfTurn, s_note]
        ),
        (
            "stringGaps",
            Say("road.string-one-wheel"),
            Say("road.strings-along-both-sides"),
            [
                Wheel(s_wheels),
                new("front", Say("road.string-to-the-front"), IsRequired: true),
                new("rear", Say("road.string-to-the-rear"), IsRequired: true),
                new("span", Say("road.between-the-two-edges"), IsRequired: true),
                new("hub", Say("road.string-to-the-hubs")),
                s_halfTurn,
                s_note,
            ]
        ),
        (
            "strings",
            Say("road.strings-apart"),
            Say("road.how-far-the-two"),
            [
                new("ahead", Say("road.apart-ahead"), IsRequired: true),
                new("behind", Say("road.apart-behind"), IsRequired: true),
                new("between", Say("road.along-the-car-between"), IsRequired: true),
                s_note,
            ]
        ),
        (
            "across",
            Say("road.toe-across-a-pair"),
            Say("road.measure-across-between-the"),
            [
                new("axle", Say("road.axle"), Choice, IsRequired: true, Choices: s_axles),
                new("ahead", Say("road.apart-ahead"), IsRequired: true),
                new("behind", Say("road.apart-behind"), IsRequired: true),
                new("diameter", Say("road.diameter-where-measured"), IsRequired: true),
                new("atTread", Say("road.at-a-line-on"), Truth),
                s_halfTurn,
                s_note,
            ]
        ),
        (
            "swing",
            Say("road.castor-by-two-turns"),
            Say("road.camber-straight-ahead-then"),
            [
                Wheel(s_frontWheels),
                new("ahead", Say("road.camber-straight-ahead"), IsRequired: true, Hint: s_angleHint),
                new("outTurn", Say("road.turned-outward-by"), IsRequired: true),
                new("outCamber", Say("road.camber-turned-outward"), IsRequired: true),
                new("inTurn", Say("road.turned-inward-by"), IsRequired: true),
                new("inCamber", Say("road.camber-turned-inward"), IsRequired: true),
                s_note,
            ]
        ),
        (
            "rideHeight",
            Say("road.ride-height"),
            Say("road.from-a-place-alike"),
            [Wheel(s_wheels), new("value", Say("road.height"), IsRequired: true), s_note]
        ),
        (
            "wheelbase",
            Say("road.wheelbase"),
            Say("road.hub-to-hub-along"),
            [
                new("side", Say("road.side"), Choice, IsRequired: true, Choices: s_sides),
                new("value", Say("road.front-hub-to-rear"), IsRequired: true),
                s_note,
            ]
        ),
        (
            "pad",
            Say("road.pad-height"),
            Say("road.the-pad-under-each"),
            [Wheel(s_wheels), new("value", Say("road.height-of-the-pad"), IsRequired: true), s_note]
        ),
    ];

    /// <summary>The words for figures as the file has them.</summary>
    private static IEnumerable<(string Word, FigureKind Kind)> Figures =>
        Enum.GetValues<FigureKind>().Select(k => (Word: $"{char.ToLowerInvariant(k.ToString()[0])}{k.ToString()[1..]}", k));

    private static FormField Wheel(IReadOnlyList<(string, string)> wheels) =>
        new("wheel", Say("road.wheel"), Choice, IsRequired: true, Choices: wheels);
}
