using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Demo;

/// <summary>
/// The demo car's box of parts, invented like the car: two steering levers of one look and two types, a lower arm whose eye is bent and its straight
/// partner, and a pair of springs of which one is tired.
/// </summary>
internal static class DemoParts
{
    private const string Book = "Dipper workshop book, invented";

    public static PartsSection Section() => new(Items(), Variants());

    private static PartVariant[] Variants() =>
        [
            Lever("lever-early", "early lever", new SerialRange(null, SerialNumber.Read("QD 0899")), "QL 417", 1.42m),
            Lever("lever-late", "late lever", new SerialRange(SerialNumber.Read("QD 0900"), null), "QL 533", 1.20m),
            new(
                "spring-front",
                PartKind.CoilSpring,
                "front spring",
                null,
                null,
                [
                    new BookFigure("free-length", Size(11.30m), Size(0.12m), Note: $"{Book}, p. 44"),
                    new BookFigure(
                        "rate",
                        new Amount.OfRate(212, RateUnit.PoundForcePerInch),
                        new Amount.OfRate(10, RateUnit.PoundForcePerInch),
                        Note: $"{Book}, p. 44"
                    ),
                ]
            ),
        ];

    private static PartVariant Lever(string id, string name, SerialRange serials, string number, decimal pad) =>
        new(
            id,
            PartKind.SteeringLever,
            name,
            serials,
            [number],
            [
                new BookFigure("pad-height", Size(pad), Size(0.015m), Note: $"{Book}, p. 61"),
                new BookFigure("arm-length", Size(5.50m), Size(0.020m), Note: $"{Book}, p. 61"),
            ]
        );

    private static Part[] Items() =>
        [
            LeverPart("lever.L", "lever.R", "QL 417", 1.418m, 5.494m, "From the second parts car, box 3."),
            LeverPart("lever.R", "lever.L", "QL 533", 1.203m, 5.507m, "On the car when it was bought."),
            Arm("arm.L", "arm.R", 2.193m, 0.062m, 0.14m),
            Arm("arm.R", "arm.L", 2.004m, 0.003m, 0.01m),
            Spring("spring.L", "spring.R", 10.86m, 9.52m, 8.60m),
            Spring("spring.R", "spring.L", 11.27m, 9.86m, 8.92m),
        ];

    private static Part LeverPart(string id, string mirror, string number, decimal pad, decimal arm, string source) =>
        new(
            id,
            PartKind.SteeringLever,
            PartMake.Forged,
            mirror,
            new PartCard(Numbers: [new CardNumber(number, NumberMark.Cast)], Source: source),
            Measures:
            [
                new Measure.Plain("m1", "pad-height", [Inches(pad)]) { Tool = "caliper" },
                new Measure.Plain("m2", "arm-length", [Inches(arm)]) { Tool = "caliper" },
            ]
        );

    private static Part Arm(string id, string mirror, decimal eye, decimal open, decimal gap) =>
        new(
            id,
            PartKind.LowerWishbone,
            PartMake.Pressed,
            mirror,
            new PartCard(Source: "Box 1, as taken off.", History: ["Wire brushed and looked over; no crease, no crack seen."]),
            ClearBy: CrackMethod.Dye,
            Measures:
            [
                new Measure.Plain("m1", "eye-height", [Inches(eye), Inches(eye + 0.002m)]) { Tool = "caliper" },
                new Measure.Rods("m2", "front-eye", "rear-eye", Inches(6), Inches(9.012m), Inches(9.012m + open), null, null)
                {
                    Tool = "caliper",
                },
                new Measure.Straightedge(
                    "m3",
                    "top-flange",
                    [
                        new Gap(Inches(0), Inches(0)),
                        new Gap(Inches(3), Inches(gap / 2)),
                        new Gap(Inches(5), Inches(gap)),
                        new Gap(Inches(10), Inches(0)),
                    ]
                )
                {
                    Tool = "feelers",
                },
            ]
        );

    private static Part Spring(string id, string mirror, decimal free, decimal under300, decimal under500) =>
        new(
            id,
            PartKind.CoilSpring,
            Mirror: mirror,
            Measures:
            [
                new Measure.SpringLoads(
                    "m1",
                    [
                        new LoadedLength(new Load(0, LoadUnit.PoundForce), Inches(free)),
                        new LoadedLength(new Load(300, LoadUnit.PoundForce), Inches(under300)),
                        new LoadedLength(new Load(500, LoadUnit.PoundForce), Inches(under500)),
                    ]
                ),
            ]
        );

    private static Amount Size(decimal inches) => new Amount.OfLength(Inches(inches));

    private static Length Inches(decimal inches) => Length.FromInches(inches);

    public static Tool[] Tools() => [new("caliper", ToolKind.Caliper, Division: Inches(0.001m)), new("feelers", ToolKind.Feeler)];
}
