using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Press;
using CrackMethod = Plumbmark.Inspection.Bench.CrackMethod;

namespace Plumbmark.Inspection.Demo;

/// <summary>The invented owner's press: one strap arm, found bent on the flat, tested for cracks, two bites made and the third asked for.</summary>
internal static class DemoPress
{
    public static IReadOnlyList<PressJob> Jobs() =>
        [
            new("p1", new PressPart("left lower strap arm", PartKind.Wishbone, PartMake.Pressed, Material.MildSheet, Inches(11), Clean))
            {
                Section = new PressSection(SectionShape.Rectangle, Length.FromFraction(0, 1, 8, LengthUnit.Inch), Inches(1.25m)),
                Lines = [new ProfileLine("outer edge", BendPlane.Ram, MeasuredFrom.Hollow, Gaps())],
                OutBy = [Inches(0.16m), Inches(0.165m), Inches(0.16m)],
                SetUp = new PressSetUp(Inches(5), Inches(5), Inches(5.5m)) { TravelAtPart = true },
                Limits = PressLimits.Usual with { Source = LimitSource.Practice, Reading = Inches(0.005m), Travel = Inches(0.005m) },
                Bites =
                [
                    new BiteRecord("b1", Inches(0.17m)) { Set = Inches(0.01m) },
                    new BiteRecord("b2", Inches(0.23m)) { Set = Inches(0.055m) },
                ],
                CrackTests = [new CrackTest("t1", CrackMethod.Dye, Found: false)],
            },
        ];

    private static PartHistory Clean { get; } = new(Answer.No, Answer.No, Answer.No, Answer.No, Answer.No, Answer.No, Answer.No);

    private static IReadOnlyList<ProfileGap> Gaps()
    {
        (decimal At, decimal Gap)[] gaps =
        [
            (0, 0),
            (1.5m, 0.05m),
            (3, 0.095m),
            (4.5m, 0.145m),
            (5.5m, 0.175m),
            (6.5m, 0.145m),
            (8, 0.095m),
            (9.5m, 0.045m),
            (11, 0),
        ];
        return [.. gaps.Select(g => new ProfileGap(Inches(g.At), Inches(g.Gap)))];
    }

    private static Length Inches(decimal inches) => Length.FromInches(inches);
}
