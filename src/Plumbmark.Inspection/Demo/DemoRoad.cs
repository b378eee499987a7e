using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Inspection.Demo;

/// <summary>
/// The suspension of the invented Quillorne Dipper, and three cars of it with one fault each, to show what a fault does on the road: a bent wishbone mount, a steering lever of the wrong
/// variant, and an eighth of an inch that does no harm. Every number is invented; inches, axes after ISO 8855, zero on the centre line at the rear axle.
/// </summary>
public static class DemoRoad
{
    private const string Page = "Dipper workshop book (invented), page 31";
    private const string Practice = "what restorers commonly ask; not a factory figure";

    /// <summary>What is wrong with a demo car.</summary>
    public enum Fault
    {
        /// <summary>Nothing: everything found as drawn.</summary>
        None,

        /// <summary>The right lower arm's rear pivot pushed 0.16 in toward the centre line.</summary>
        BentMount,

        /// <summary>The left steering lever is the early one, its pad 0.22 in higher.</summary>
        WrongLever,

        /// <summary>Both rear spring eyes stand an eighth of an inch too far back: the wheelbase is longer, alike on both sides, and nothing else.</summary>
        HarmlessEighth,
    }

    /// <summary>A demo car with one fault, everything else measured as drawn.</summary>
    public static CarFile Car(Fault fault) =>
        CarFile.Named(NameOf(fault), LengthUnit.Inch) with
        {
            Car = new CarIdentity(NameOf(fault), "QD 1047", "Invented: the marque, the car and every number."),
            Frame = new Frame([.. Pairs.SelectMany(Points)], null),
            Road = Section() with { Parts = [.. Found(fault)] },
        };

    /// <summary>The suspension as the invented book draws it.</summary>
    public static RoadSection Section() =>
        new(
            new FrontDrawing
            {
                UpperFront = new PickUp.AtPair("K"),
                UpperRear = new PickUp.AtPair("M"),
                LowerFront = new PickUp.AtPair("B"),
                LowerRear = new PickUp.AtPair("C"),
                TrackRodInner = new PickUp.AtPair("T"),
                UpperJoint = At(86.625m, 23.625m, 17.5m),
                LowerJoint = At(87.25m, 24.5m, 8.5m),
                LeverJoint = At(81.75m, 23.25m, 10.5m),
                WheelCentre = At(87, 26.5m, 13),
                Camber = Angle.FromDegrees(0.5m),
                ToeIn = Typed("0°7'"),
                LoadedRadius = Inches(12.2m),
                Bump = Inches(2.5m),
                Rebound = Inches(2.5m),
            },
            new RearDrawing.LiveAxle(new PickUp.AtPair("G"), Inches(14), Inches(2.5m), Inches(50)),
            Book(),
            [],
            [.. new[] { Side.Left, Side.Right }.SelectMany(Adjusters)],
            []
        );

    /// <summary>
    /// The suspension of the demo car of the shed, whose frame has no points at the upper pivots and the rack. Its owner measured both steering levers: the left one's pad is 0.22 in higher, the step
    /// between two variants of the invented book.
    /// </summary>
    public static RoadSection OfDemoCar()
    {
        var section = Section();
        PartDeviation Lever(Side side, decimal up) =>
            new($"p{(int)side + 1}", CornerPart.Lever, side, [Found(PartQuantity.Up, up)], Inches(0.01m), Note: "pad height on the plate");
        return section with
        {
            Front = section.Front! with { UpperFront = Drawn("K"), UpperRear = Drawn("M"), TrackRodInner = Drawn("T") },
            Parts = [Lever(Side.Left, 0.22m), Lever(Side.Right, 0)],
        };
    }

    private static PickUp.AtPlace Drawn(string pair)
    {
        var (_, _, x, y, z) = Pairs.Single(p => p.Name == pair);
        return new(At(x, y, z));
    }

    private static string NameOf(Fault fault) =>
        fault switch
        {
            Fault.BentMount => "Quillorne Dipper, bent mount (demo)",
            Fault.WrongLever => "Quillorne Dipper, wrong lever (demo)",
            Fault.HarmlessEighth => "Quillorne Dipper, harmless eighth (demo)",
            _ => "Quillorne Dipper, as drawn (demo)",
        };

    private static (string Name, string Label, decimal X, decimal Y, decimal Z)[] Pairs =>
        [
            ("K", "Upper wishbone, forward pivot", 91, 16.5m, 17.5m),
            ("M", "Upper wishbone, rearward pivot", 83, 16.5m, 17.25m),
            ("B", "Front wishbone, forward pivot", 92, 14, 9.5m),
            ("C", "Front wishbone, rearward pivot", 82, 14.5m, 9.75m),
            ("T", "Rack end", 82, 14.75m, 11.1875m),
            ("G", "Rear spring, front eye", 14, 16, 10),
        ];

    private static FramePoint[] Points((string Name, string Label, decimal X, decimal Y, decimal Z) p) =>
        [
            new($"{p.Name}.L", $"{p.Name}.R", PointRole.Suspension, At(p.X, p.Y, p.Z), At(p.X, p.Y, p.Z), Label: p.Label),
            new($"{p.Name}.R", $"{p.Name}.L", PointRole.Suspension, At(p.X, -p.Y, p.Z), At(p.X, -p.Y, p.Z), Label: p.Label),
        ];

    private static AskedFigure[] Book() =>
        [
            OfAngle(FigureKind.Camber, "0°30'", "0°30'", LimitSource.Factory, Page),
            OfAngle(FigureKind.Castor, "4°", "0°30'", LimitSource.Factory, Page),
            OfAngle(FigureKind.KingPin, "5°30'", "0°45'", LimitSource.Factory, Page),
            new(FigureKind.ToeIn, Toe(0.0625m), Toe(0.0625m), null, null, LimitSource.Factory, Page),
            OfAngle(FigureKind.ToeOutOnTurns, "18°50'", "1°", LimitSource.Factory, Page),
            OfAngle(FigureKind.CamberSplit, null, "0°30'", LimitSource.Practice, Practice),
            OfAngle(FigureKind.CastorSplit, null, "0°30'", LimitSource.Practice, Practice),
            OfAngle(FigureKind.BumpSteer, null, "0°15'", LimitSource.Practice, Practice),
            OfAngle(FigureKind.Thrust, null, "0°10'", LimitSource.Practice, Practice),
            new(FigureKind.WheelbaseSplit, null, new FigureAmount.OfLength(Inches(0.25m)), null, null, LimitSource.Practice, Practice),
        ];

    private static IEnumerable<Adjuster> Adjusters(Side side)
    {
        var name = RoadNames.Of(side);
        yield return new(
            $"{name} upper bracket shims",
            AdjusterKind.Shims,
            side,
            [CornerPart.UpperFront, CornerPart.UpperRear],
            AdjusterDirection.Out,
            Length.Zero,
            Inches(0.25m),
            Length.FromFraction(0, 1, 32, LengthUnit.Inch),
            Usual: Inches(0.125m)
        );
        yield return new($"{name} track rod", AdjusterKind.TrackRod, side, [], AdjusterDirection.Out, Inches(-0.5m), Inches(0.5m));
    }

    // Everything is measured, each place and size to 0.006 in; only the fault is off its drawing.
    private static IEnumerable<PartDeviation> Found(Fault fault)
    {
        foreach (var side in new[] { Side.Left, Side.Right })
        {
            foreach (var part in Enum.GetValues<CornerPart>().Where(p => p != CornerPart.RearOuter))
            {
                yield return new(
                    $"{RoadNames.Of(side)} {RoadNames.Of(part)}",
                    part,
                    side,
                    [.. Amounts(fault, part, side)],
                    Inches(0.006m),
                    Typed("3'")
                );
            }
        }
    }

    private static IEnumerable<PartDeviation.Amount> Amounts(Fault fault, CornerPart part, Side side) =>
        part switch
        {
            CornerPart.UpperArm or CornerPart.LowerArm => [Found(PartQuantity.FrontHalf, 0), Found(PartQuantity.RearHalf, 0)],
            CornerPart.TrackRod or CornerPart.Upright => [Found(PartQuantity.Length, 0)],
            CornerPart.Stub =>
            [
                new(PartQuantity.Camber, null, Angle.FromDegrees(0)),
                new(PartQuantity.ToeIn, null, Angle.FromDegrees(0)),
                Found(PartQuantity.Up, 0),
            ],
            _ => new[] { PartQuantity.Forward, PartQuantity.Out, PartQuantity.Up }.Select(q => Found(q, Off(fault, part, q, side))),
        };

    private static PartDeviation.Amount Found(PartQuantity quantity, decimal inches) => new(quantity, Inches(inches), null);

    private static decimal Off(Fault fault, CornerPart part, PartQuantity quantity, Side side) =>
        (fault, part, quantity, side) switch
        {
            (Fault.BentMount, CornerPart.LowerRear, PartQuantity.Out, Side.Right) => -0.16m,
            (Fault.WrongLever, CornerPart.Lever, PartQuantity.Up, Side.Left) => 0.22m,
            (Fault.HarmlessEighth, CornerPart.RearEye, PartQuantity.Forward, _) => -0.125m,
            _ => 0,
        };

    private static AskedFigure OfAngle(FigureKind kind, string? value, string limit, LimitSource source, string note) =>
        new(
            kind,
            value is null ? null : new FigureAmount.OfAngle(Typed(value)),
            new FigureAmount.OfAngle(Typed(limit)),
            null,
            null,
            source,
            note
        );

    private static FigureAmount.OfToe Toe(decimal inches) => new(Inches(inches), Inches(15));

    private static Angle Typed(string text) =>
        Angle.TryParse(text, out var angle) ? angle : throw new ArgumentException("No angle.", nameof(text));

    private static Place At(decimal x, decimal y, decimal z) => new(Inches(x), Inches(y), Inches(z));

    private static Length Inches(decimal inches) => Length.FromNumber(inches, LengthUnit.Inch);
}
