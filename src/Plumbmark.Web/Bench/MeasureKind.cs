using Plumbmark.Inspection.Bench;

namespace Plumbmark.Web.Bench;

/// <summary>A way of measuring, as the form offers it.</summary>
/// <param name="Word">Its name in the address.</param>
/// <param name="Label">The word on its button.</param>
/// <param name="Hint">How it is done.</param>
/// <param name="Fields">What is asked.</param>
public sealed record MeasureKind(string Word, string Label, string Hint, IReadOnlyList<MeasureField> Fields)
{
    /// <summary>How many gaps the form for a straightedge asks for.</summary>
    public const int Gaps = 8;

    /// <summary>How many places on the clamped face the form asks for.</summary>
    public const int FacePlaces = 4;

    /// <summary>How many loads the form for a spring asks for.</summary>
    public const int Loads = 4;

    private static readonly MeasureField s_dimension = new("dimension", "Which dimension", IsDimension: true);
    private static readonly MeasureField[] s_repeats =
    [
        new("value1", "It reads", Group: "Readings"),
        new("value2", "again", Group: "Readings"),
        new("value3", "once more", Group: "Readings"),
    ];

    /// <summary>Every way.</summary>
    public static IReadOnlyList<MeasureKind> All { get; } =
    [
        new("length", "Length", "Caliper, rule or height gauge. Two or three repeats make it surer.", [s_dimension, .. s_repeats]),
        new(
            "straightedge",
            "Straightedge",
            "The gap under it at several places. A measured gap, two feelers (0.004 to 0.005: goes, stops) or paper (2 sheets, 0.10 mm each as a rule).",
            StraightedgeFields()
        ),
        new(
            "rods",
            "Rods in eyes",
            "A straight rod through each eye. Their distance at two places, and the height of each rod there. The plate need not be level.",
            RodFields()
        ),
        new(
            "heights",
            "Heights",
            "Clamp the part to a flat surface. Three or four heights on the clamped face tell how it really stands; then the place that matters.",
            HeightFields()
        ),
        new("bore", "Bore", "Two directions square to each other near the mouth, and two deep inside.", BoreFields()),
        new(
            "centres",
            "Bore to bore",
            "Between the edges, over the edges, or from centre to centre. The bores' diameters do the rest.",
            CentreFields()
        ),
        new(
            "back-to-back",
            "Back to back",
            "Both sides laid together on one rod: how much larger this part is than the other.",
            [s_dimension, new("value1", "Larger by", "Minus where it is smaller.")]
        ),
        new("angle", "Angle", "Protractor or digital level, in degrees.", [s_dimension, .. s_repeats]),
        new(
            "spring",
            "Spring",
            "Its length under known loads; no load is one of them. A proper restraint, and no hands between the coils.",
            SpringFields()
        ),
        new(
            "run-out",
            "Run-out",
            "Turn it between centres or in V-blocks under a dial.",
            [s_dimension, new("value1", "Highest", Group: "The dial shows"), new("value2", "Lowest", Group: "The dial shows")]
        ),
    ];

    /// <summary>The way of that name; the first when there is none.</summary>
    public static MeasureKind Of(string word) => All.FirstOrDefault(k => k.Word == word) ?? All[0];

    /// <summary>The usual first way for a kind of part.</summary>
    public static MeasureKind UsualFor(PartKind kind) =>
        Of(
            kind switch
            {
                PartKind.LowerWishbone or PartKind.UpperWishbone => "rods",
                PartKind.SpringSeat => "straightedge",
                PartKind.Upright => "angle",
                PartKind.StubAxle or PartKind.FulcrumPin => "run-out",
                PartKind.CoilSpring => "spring",
                PartKind.Trunnion or PartKind.Bush => "bore",
                _ => "length",
            }
        );

    private static MeasureField[] StraightedgeFields() =>
        [
            s_dimension,
            .. Enumerable
                .Range(1, Gaps)
                .SelectMany(n =>
                    new[]
                    {
                        new MeasureField($"at{n}", $"Place {n}", Group: $"Gap {n}"),
                        new MeasureField($"gap{n}", $"Gap {n}", Group: $"Gap {n}"),
                    }
                ),
        ];

    private static MeasureField[] RodFields() =>
        [
            new("from", "First eye", Group: "Eyes"),
            new("to", "Second eye", Group: "Eyes"),
            new("span", "How far apart the two places are, along the rods"),
            new("near", "Rod to rod at the first place", Group: "Distance"),
            new("far", "at the second", Group: "Distance"),
            new("fromFirst", "First rod's height there", Group: "First rod"),
            new("fromSecond", "at the second", Group: "First rod"),
            new("toFirst", "Second rod's height there", Group: "Second rod"),
            new("toSecond", "at the second", Group: "Second rod"),
        ];

    private static MeasureField[] HeightFields() =>
        [
            .. Enumerable
                .Range(1, FacePlaces)
                .SelectMany(n =>
                    new[]
                    {
                        new MeasureField($"faceX{n}", "Along", Group: $"On the face, place {n}"),
                        new MeasureField($"faceY{n}", "Across", Group: $"On the face, place {n}"),
                        new MeasureField($"faceHeight{n}", "Height", Group: $"On the face, place {n}"),
                    }
                ),
            s_dimension,
            new("x", "Along", Group: "The place that matters"),
            new("y", "Across", Group: "The place that matters"),
            new("height", "Height", Group: "The place that matters"),
        ];

    private static MeasureField[] BoreFields() =>
        [
            new("bore", "Which bore"),
            new("mouth1", "Near the mouth", Group: "Near the mouth"),
            new("mouth2", "square to it", Group: "Near the mouth"),
            new("deep1", "Deep inside", Group: "Deep inside"),
            new("deep2", "square to it", Group: "Deep inside"),
            new("mate", "What goes in it measures", Group: "What goes in"),
            new("mateIs", "and is", Choices: [("pin", "a pin that turns"), ("bush", "a pressed bush")], Group: "What goes in"),
        ];

    private static MeasureField[] CentreFields() =>
        [
            new("from", "First bore", Group: "Bores"),
            new("to", "Second bore", Group: "Bores"),
            new(
                "over",
                "Measured",
                Choices: [("inside", "between the near edges"), ("outside", "over the far edges"), ("centre", "from centre to centre")]
            ),
            .. s_repeats,
        ];

    private static MeasureField[] SpringFields() =>
        [
            .. Enumerable
                .Range(1, Loads)
                .SelectMany(n =>
                    new[]
                    {
                        new MeasureField(
                            $"load{n}",
                            $"Load {n}",
                            n == 1 ? "With its unit: 0 lbf, 200 lbf, 90 kgf, 890 N." : null,
                            Group: $"Length {n}"
                        ),
                        new MeasureField($"length{n}", $"Length {n}", Group: $"Length {n}"),
                    }
                ),
        ];
}
