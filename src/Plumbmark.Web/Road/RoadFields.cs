using Plumbmark.Inspection.Road;
using static Plumbmark.Web.Road.FormField.Holds;

namespace Plumbmark.Web.Road;

/// <summary>The forms of the Road: which fields each has.</summary>
internal static class RoadFields
{
    private const string AngleHint = "Degrees, or degrees and minutes: 1 1/2, 1°30', 45'.";

    private static readonly (string, string)[] s_wheels =
    [
        ("FL", "front left"),
        ("FR", "front right"),
        ("RL", "rear left"),
        ("RR", "rear right"),
    ];
    private static readonly (string, string)[] s_frontWheels = [("FL", "front left"), ("FR", "front right")];
    private static readonly (string, string)[] s_sides = [("L", "left"), ("R", "right")];
    private static readonly (string, string)[] s_axles = [("front", "front"), ("rear", "rear")];
    private static readonly (string, string)[] s_makes = [("two halves", "two halves"), ("one piece", "one piece")];
    private static readonly FormField s_halfTurn = new("halfTurn", "Rolled half a turn since the first reading", Truth);
    private static readonly FormField s_note = new("note", "Note", Written);

    /// <summary>The front suspension as drawn.</summary>
    public static IReadOnlyList<FormField> Front { get; } =
    [
        new("upperFront", "Upper arm, front pivot", PairOrPlace, "A pair of frame points (its name without .L and .R), or a place."),
        new("upperRear", "Upper arm, rear pivot", PairOrPlace),
        new("lowerFront", "Lower arm, front pivot", PairOrPlace),
        new("lowerRear", "Lower arm, rear pivot", PairOrPlace),
        new("trackRodInner", "Track rod, inner joint", PairOrPlace),
        new("upperJoint", "Upper outer joint", ThreeLengths, Heading: "Arms and upright, at ride height"),
        new("lowerJoint", "Lower outer joint, or middle of the trunnion's pin", ThreeLengths),
        new("leverJoint", "Track rod's joint on the steering lever", ThreeLengths),
        new("wheelCentre", "Wheel centre", ThreeLengths),
        new("camber", "Camber as drawn", Hint: "Positive with the top outward. " + AngleHint),
        new("toeIn", "Toe-in of one wheel as drawn", Hint: "Half of the total. " + AngleHint),
        new("upperArm", "Upper arm made in", Choice, Choices: s_makes),
        new("lowerArm", "Lower arm made in", Choice, Choices: s_makes),
        new("trunnion.offset", "Trunnion: axis outboard of its pin", Hint: "Leave empty for a ball joint."),
        new(
            "trunnion.lead",
            "Trunnion: thread per turn",
            Hint: "Plus when the upright screws out as the front of the wheel swings outboard."
        ),
        new("loadedRadius", "Wheel centre to road, tyre loaded"),
        new("bump", "Travel from ride height up to full bump"),
        new("rebound", "Travel from ride height down to full rebound"),
        new("steeringBox.dropArmShaft", "Drop arm's shaft", ThreeLengths, Heading: "Steering box; leave empty for a rack"),
        new("steeringBox.dropArmJoint", "Centre link's joint on the drop arm", ThreeLengths),
        new("steeringBox.idlerShaft", "Idler's shaft", ThreeLengths),
        new("steeringBox.idlerJoint", "Centre link's joint on the idler", ThreeLengths),
        new("steeringBox.rodsOnArms", "Track rods hang on drop arm and idler, not on the centre link", Truth),
    ];

    /// <summary>A live axle as drawn.</summary>
    public static IReadOnlyList<FormField> LiveAxle { get; } =
    [
        new("eye", "Springs' fixed eyes", PairOrPlace, "A pair of frame points, or a place."),
        new("eyeToAxle", "From the fixed eye back to the axle"),
        new("axleAboveEye", "Axle above the fixed eyes"),
        new("track", "Rear track"),
    ];

    /// <summary>Semi-trailing arms as drawn.</summary>
    public static IReadOnlyList<FormField> TrailingArms { get; } =
    [
        new("inner", "Inner pivot", PairOrPlace, "A pair of frame points, or a place."),
        new("outer", "Outer pivot", PairOrPlace),
        new("wheelCentre", "Rear wheel centre", ThreeLengths),
        new("camber", "Rear camber as drawn", Hint: AngleHint),
        new("toeIn", "Rear toe-in of one wheel as drawn", Hint: AngleHint),
    ];

    /// <summary>One figure of the book.</summary>
    public static IReadOnlyList<FormField> Figure { get; } =
    [
        new("figure", "What", Choice, IsRequired: true, Choices: [.. Figures.Select(f => (f.Word, RoadNames.Of(f.Kind)))]),
        new(
            "value",
            "The book's figure",
            Hint: "Angles in degrees or degrees and minutes. Wheelbase, track and ride height as lengths; toe too, with a diameter."
        ),
        new("limit", "Allowed either way"),
        new("least", "Or: the least", Hint: "Where the book gives a range, fill in least and most instead of figure and limit."),
        new("most", "and the most"),
        new("diameter", "Toe as a length is measured at this diameter"),
        new(
            "source",
            "Whose figure it is",
            Choice,
            IsRequired: true,
            Choices: [("factory", "the maker, for this car"), ("practice", "what the trade uses"), ("own", "my own choice")]
        ),
        new("note", "Where it is from", Written, "Book, edition, page."),
    ];

    /// <summary>An adjuster.</summary>
    public static IReadOnlyList<FormField> Adjuster { get; } =
    [
        new("id", "What you call it", Written, IsRequired: true),
        new(
            "kind",
            "Kind",
            Choice,
            IsRequired: true,
            Choices: [("shims", "shims behind a bracket"), ("eccentric", "eccentric bolt or bush"), ("trackRod", "track rod's screw")]
        ),
        new("side", "Side", Choice, IsRequired: true, Choices: s_sides),
        new(
            "at",
            "It moves",
            Several,
            "For shims and eccentrics, one or more of: upperFront, upperRear, lowerFront, lowerRear, trackRodInner. Commas between."
        ),
        new(
            "direction",
            "More of it moves them",
            Choice,
            Choices:
            [
                ("out", "outward"),
                ("in", "inward"),
                ("forward", "forward"),
                ("rearward", "rearward"),
                ("up", "up"),
                ("down", "down"),
            ]
        ),
        new("least", "The least it can be", Hint: "Shims: empty is none. Eccentric or screw: empty is as far the other way."),
        new("most", "The most it can be", IsRequired: true),
        new("step", "Thinnest shim", Hint: "Empty when it can be set anywhere."),
        new("fitted", "Fitted now", Hint: "Counted from what the drawing and the measured frame stand for."),
        new("usual", "Usual up to", Hint: "Beyond this it absorbs a fault."),
        s_note,
    ];

    /// <summary>The fields of a finding on one part.</summary>
    public static IReadOnlyList<FormField> Finding(CornerPart part) =>
        [
            new("side", "Side", Choice, IsRequired: true, Choices: s_sides),
            .. part switch
            {
                CornerPart.UpperArm or CornerPart.LowerArm => new FormField[]
                {
                    new("frontHalf", "In two halves: front half longer by"),
                    new("rearHalf", "Rear half longer by"),
                    new("ahead", "In one piece: outer joint further forward by"),
                    new("reach", "Reach longer by"),
                },
                CornerPart.TrackRod or CornerPart.Upright => [new("length", "Longer by", Hint: "Minus for shorter.")],
                CornerPart.Stub =>
                [
                    new("camber", "Turned toward more camber by", Hint: AngleHint),
                    new("toeIn", "Turned toward more toe-in by", Hint: AngleHint),
                    new("up", "Higher by"),
                ],
                _ =>
                [
                    new("forward", "Forward by", Hint: "Found minus drawn; minus for rearward."),
                    new("out", "Away from the centre line by", Hint: "Minus for inward."),
                    new("up", "Up by", Hint: "Minus for down."),
                ],
            },
            new("sigma", "How sure a length is", Hint: "Standard uncertainty; empty for a quarter of a millimetre."),
            s_note,
        ];

    /// <summary>The kinds of wheel readings: the word, what it is called, what to do, its fields.</summary>
    public static IReadOnlyList<(string Word, string Title, string Ask, IReadOnlyList<FormField> Fields)> WheelKinds { get; } =
    [
        (
            "plumbLine",
            "Camber, plumb line",
            "Hang a line just outboard of the tyre. Measure level from the line to the rim's edge at the top and at the bottom. Read again after rolling the car half a wheel's turn.",
            [
                Wheel(s_wheels),
                new("top", "Line to the top edge", IsRequired: true),
                new("bottom", "Line to the bottom edge", IsRequired: true),
                new("span", "Between the two edges", IsRequired: true),
                s_halfTurn,
                s_note,
            ]
        ),
        (
            "level",
            "Camber, level",
            "Hold the level across the rim's edges.",
            [Wheel(s_wheels), new("camber", "Camber", IsRequired: true, Hint: AngleHint), s_halfTurn, s_note]
        ),
        (
            "stringGaps",
            "String, one wheel",
            "Strings along both sides at hub height. Square to the string, measure to the rim's front and rear edges and to the hub. Tracks may differ.",
            [
                Wheel(s_wheels),
                new("front", "String to the front edge", IsRequired: true),
                new("rear", "String to the rear edge", IsRequired: true),
                new("span", "Between the two edges", IsRequired: true),
                new("hub", "String to the hub's face"),
                s_halfTurn,
                s_note,
            ]
        ),
        (
            "strings",
            "Strings apart",
            "How far the two strings are apart, ahead of the car and behind it.",
            [
                new("ahead", "Apart ahead", IsRequired: true),
                new("behind", "Apart behind", IsRequired: true),
                new("between", "Along the car between the two", IsRequired: true),
                s_note,
            ]
        ),
        (
            "across",
            "Toe across a pair",
            "Measure across between the rims, or between lines scribed on the treads, ahead of the axle and behind it at hub height.",
            [
                new("axle", "Axle", Choice, IsRequired: true, Choices: s_axles),
                new("ahead", "Apart ahead", IsRequired: true),
                new("behind", "Apart behind", IsRequired: true),
                new("diameter", "Diameter where measured", IsRequired: true),
                new("atTread", "At a line on the tread, not at the rim", Truth),
                s_halfTurn,
                s_note,
            ]
        ),
        (
            "swing",
            "Castor by two turns",
            "Camber straight ahead, then with the wheel turned 20° each way on greased plates. Outward means the front of this wheel swings away from the car.",
            [
                Wheel(s_frontWheels),
                new("ahead", "Camber straight ahead", IsRequired: true, Hint: AngleHint),
                new("outTurn", "Turned outward by", IsRequired: true),
                new("outCamber", "Camber turned outward", IsRequired: true),
                new("inTurn", "Turned inward by", IsRequired: true),
                new("inCamber", "Camber turned inward", IsRequired: true),
                s_note,
            ]
        ),
        (
            "rideHeight",
            "Ride height",
            "From a place alike on both sides down to the pad or the floor, after bouncing and rolling the car.",
            [Wheel(s_wheels), new("value", "Height", IsRequired: true), s_note]
        ),
        (
            "wheelbase",
            "Wheelbase",
            "Hub to hub along one side.",
            [
                new("side", "Side", Choice, IsRequired: true, Choices: s_sides),
                new("value", "Front hub to rear hub", IsRequired: true),
                s_note,
            ]
        ),
        (
            "pad",
            "Pad height",
            "The pad under each wheel by the water level; camber is corrected for what is not level.",
            [Wheel(s_wheels), new("value", "Height of the pad", IsRequired: true), s_note]
        ),
    ];

    /// <summary>The words for figures as the file has them.</summary>
    private static IEnumerable<(string Word, FigureKind Kind)> Figures =>
        Enum.GetValues<FigureKind>().Select(k => (Word: $"{char.ToLowerInvariant(k.ToString()[0])}{k.ToString()[1..]}", k));

    private static FormField Wheel(IReadOnlyList<(string, string)> wheels) =>
        new("wheel", "Wheel", Choice, IsRequired: true, Choices: wheels);
}
