using Plumbmark.Inspection.Bench;
using static Plumbmark.Inspection.Language.Texts;

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

    private static readonly MeasureField s_dimension = new("dimension", Say("bench.measure.which-dimension"), IsDimension: true);
    private static readonly MeasureField[] s_repeats =
    [
        new("value1", Say("bench.measure.it-reads"), Group: Say("bench.measure.readings")),
        new("value2", Say("bench.measure.again"), Group: Say("bench.measure.readings")),
        new("value3", Say("bench.measure.once-more"), Group: Say("bench.measure.readings")),
    ];

    /// <summary>Every way.</summary>
    public static IReadOnlyList<MeasureKind> All { get; } =
    [
        new("length", Say("bench.measure.length"), Say("bench.measure.caliper-rule-or-height"), [s_dimension, .. s_repeats]),
        new("straightedge", Say("bench.measure.straightedge"), Say("bench.measure.the-gap-under-it"), StraightedgeFields()),
        new("rods", Say("bench.measure.rods-in-eyes"), Say("bench.measure.a-straight-rod-through"), RodFields()),
        new("heights", Say("bench.measure.heights"), Say("bench.measure.clamp-the-part-to"), HeightFields()),
        new("bore", Say("bench.measure.bore"), Say("bench.measure.two-directions-square-to"), BoreFields()),
        new("centres", Say("bench.measure.bore-to-bore"), Say("bench.measure.between-the-edges-over"), CentreFields()),
        new(
            "back-to-back",
            Say("bench.measure.back-to-back"),
            Say("bench.measure.both-sides-laid-together"),
            [s_dimension, new("value1", Say("bench.measure.larger-by"), Say("bench.measure.minus-where-it-is"))]
        ),
        new("angle", Say("bench.measure.angle"), Say("bench.measure.protractor-or-digital-level"), [s_dimension, .. s_repeats]),
        new("spring", Say("bench.measure.spring"), Say("bench.measure.its-length-under-known"), SpringFields()),
        new(
            "run-out",
            Say("bench.measure.run-out"),
            Say("bench.measure.turn-it-between-centres"),
            [
                s_dimension,
                new("value1", Say("bench.measure.highest"), Group: Say("bench.measure.the-dial-shows")),
                new("value2", Say("bench.measure.lowest"), Group: Say("bench.measure.the-dial-shows")),
            ]
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
                        new MeasureField($"at{n}", Say("bench.measure.place-n", n), Group: Say("bench.measure.gap-n", n)),
                        new MeasureField($"gap{n}", Say("bench.measure.gap-n", n), Group: Say("bench.measure.gap-n", n)),
                    }
                ),
        ];

    private static MeasureField[] RodFields() =>
        [
            new("from", Say("bench.measure.first-eye"), Group: Say("bench.measure.eyes")),
            new("to", Say("bench.measure.second-eye"), Group: Say("bench.measure.eyes")),
            new("span", Say("bench.measure.how-far-apart-the")),
            new("near", Say("bench.measure.rod-to-rod-at"), Group: Say("bench.measure.distance")),
            new("far", Say("bench.measure.at-the-second"), Group: Say("bench.measure.distance")),
            new("fromFirst", Say("bench.measure.first-rods-height-there"), Group: Say("bench.measure.first-rod")),
            new("fromSecond", Say("bench.measure.at-the-second"), Group: Say("bench.measure.first-rod")),
            new("toFirst", Say("bench.measure.second-rods-height-there"), Group: Say("bench.measure.second-rod")),
            new("toSecond", Say("bench.measure.at-the-second"), Group: Say("bench.measure.second-rod")),
        ];

    private static MeasureField[] HeightFields() =>
        [
            .. Enumerable
                .Range(1, FacePlaces)
                .SelectMany(n =>
                    new[]
                    {
                        new MeasureField($"faceX{n}", Say("bench.measure.along"), Group: Say("bench.measure.on-the-face-place", n)),
                        new MeasureField($"faceY{n}", Say("bench.measure.across"), Group: Say("bench.measure.on-the-face-place", n)),
                        new MeasureField($"faceHeight{n}", Say("bench.measure.height"), Group: Say("bench.measure.on-the-face-place", n)),
                    }
                ),
            s_dimension,
            new("x", Say("bench.measure.along"), Group: Say("bench.measure.the-place-that-matters")),
            new("y", Say("bench.measure.across"), Group: Say("bench.measure.the-place-that-matters")),
            new("height", Say("bench.measure.height"), Group: Say("bench.measure.the-place-that-matters")),
        ];

    private static MeasureField[] BoreFields() =>
        [
            new("bore", Say("bench.measure.which-bore")),
            new("mouth1", Say("bench.measure.near-the-mouth"), Group: Say("bench.measure.near-the-mouth")),
            new("mouth2", Say("bench.measure.square-to-it"), Group: Say("bench.measure.near-the-mouth")),
            new("deep1", Say("bench.measure.deep-inside"), Group: Say("bench.measure.deep-inside")),
            new("deep2", Say("bench.measure.square-to-it"), Group: Say("bench.measure.deep-inside")),
            new("mate", Say("bench.measure.what-goes-in-it"), Group: Say("bench.measure.what-goes-in")),
            new(
                "mateIs",
                Say("bench.measure.and-is"),
                Choices: [("pin", Say("bench.measure.a-pin-that-turns")), ("bush", Say("bench.measure.a-pressed-bush"))],
                Group: Say("bench.measure.what-goes-in")
            ),
        ];

    private static MeasureField[] CentreFields() =>
        [
            new("from", Say("bench.measure.first-bore"), Group: Say("bench.measure.bores")),
            new("to", Say("bench.measure.second-bore"), Group: Say("bench.measure.bores")),
            new(
                "over",
                Say("bench.measure.measured"),
                Choices:
                [
                    ("inside", Say("bench.measure.between-the-near-edges")),
                    ("outside", Say("bench.measure.over-the-far-edges")),
                    ("centre", Say("bench.measure.from-centre-to-centre")),
                ]
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
                            Say("bench.measure.load-n", n),
                            n == 1 ? Say("bench.measure.with-its-unit-0") : null,
                            Group: Say("bench.measure.length-n", n)
                        ),
                        new MeasureField($"length{n}", Say("bench.measure.length-n", n), Group: Say("bench.measure.length-n", n)),
                    }
                ),
        ];
}
