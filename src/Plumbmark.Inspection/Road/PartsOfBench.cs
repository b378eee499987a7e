using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Inspection.Road;

/// <summary>
/// What the Bench measured of levers, arms, uprights and track rods, as deviations from the type that the book fits to this car. A finding told on the Road for the same part and side goes before it.
/// </summary>
internal static class PartsOfBench
{
    /// <summary>The dimensions of loose parts that place a wheel, by the names they go by on the Bench.</summary>
    private static readonly Dictionary<(PartKind Kind, string Dimension), (CornerPart Part, PartQuantity Quantity)> s_known = new()
    {
        [(PartKind.SteeringLever, "pad-height")] = (CornerPart.Lever, PartQuantity.Up),
        [(PartKind.UpperWishbone, "front-half")] = (CornerPart.UpperArm, PartQuantity.FrontHalf),
        [(PartKind.UpperWishbone, "rear-half")] = (CornerPart.UpperArm, PartQuantity.RearHalf),
        [(PartKind.UpperWishbone, "ahead")] = (CornerPart.UpperArm, PartQuantity.Ahead),
        [(PartKind.UpperWishbone, "reach")] = (CornerPart.UpperArm, PartQuantity.Reach),
        [(PartKind.LowerWishbone, "front-half")] = (CornerPart.LowerArm, PartQuantity.FrontHalf),
        [(PartKind.LowerWishbone, "rear-half")] = (CornerPart.LowerArm, PartQuantity.RearHalf),
        [(PartKind.LowerWishbone, "ahead")] = (CornerPart.LowerArm, PartQuantity.Ahead),
        [(PartKind.LowerWishbone, "reach")] = (CornerPart.LowerArm, PartQuantity.Reach),
        [(PartKind.Upright, "joint-distance")] = (CornerPart.Upright, PartQuantity.Length),
        // King-pin inclination and camber together: the stub axle leans by what they are off.
        [(PartKind.Upright, "included-angle")] = (CornerPart.Stub, PartQuantity.Camber),
        [(PartKind.TrackRod, "length")] = (CornerPart.TrackRod, PartQuantity.Length),
    };

    /// <summary>The deviations, for what the Road has not been told itself; what was taken is said among the assumptions.</summary>
    public static IReadOnlyList<PartDeviation> Of(CarFile car, RoadSection section, RoadDisplay display, RoadRemarks remarks)
    {
        var told = section.Parts.Where(p => p.Withdrawn is null).Select(p => (p.Part, p.Side)).ToHashSet();
        var serial = SerialNumber.Read(car.Car.Serial);
        var types = BenchInspection.VariantsOf(car).ToLookup(v => v.Kind);
        var found = new List<PartDeviation>();
        foreach (var part in car.Parts.Items.Where(p => SideOf(p) is not null))
        {
            var side = SideOf(part)!.Value;
            if (TypeFor(types[part.Kind], serial) is not { } type)
            {
                continue;
            }

            foreach (var dimension in Reduction.Of(part, car.Tools).Dimensions)
            {
                if (
                    s_known.TryGetValue((part.Kind, dimension.Dimension), out var means)
                    && type.Figure(dimension.Dimension) is { } figure
                    && figure.Nominal.Quantity == dimension.Quantity
                    && !told.Contains((means.Part, side))
                    && Fits(means, section)
                )
                {
                    var off = dimension.Si - figure.Nominal.Si;
                    found.Add(Deviation($"{part.Id} {dimension.Dimension}", means, side, off, dimension.U));
                    remarks.Assume(
                        Texts.Say(
                            "road.parts-of-bench.taken-from-the-bench-against",
                            RoadNames.Of(means.Part, side),
                            RoadNames.Of(means.Quantity),
                            Said(dimension.Quantity, off, display),
                            PartWords.Title(part),
                            type.Name
                        )
                    );
                }
            }
        }

        return found;
    }

    private static string Said(Quantity quantity, double off, RoadDisplay display) =>
        quantity == Quantity.Angle ? RoadDisplay.Signed(off) : display.SignedLength(off);

    private static PartDeviation Deviation(string id, (CornerPart Part, PartQuantity Quantity) means, Side side, double off, double u) =>
        means.Quantity == PartQuantity.Camber
            ? new(id, means.Part, side, [new(means.Quantity, null, Degrees(off))], SigmaAngle: Degrees(u))
            : new(id, means.Part, side, [new(means.Quantity, Millimetres(off), null)], Millimetres(u));

    private static Length Millimetres(double metres) => Length.FromMillimetres((decimal)Math.Round(1000 * metres, 6));

    private static Angle Degrees(double radians) => Angle.FromDegrees((decimal)Math.Round(radians * 180 / Math.PI, 9));

    private static Side? SideOf(Part part) =>
        part.Id.EndsWith(".L", StringComparison.Ordinal) ? Side.Left
        : part.Id.EndsWith(".R", StringComparison.Ordinal) ? Side.Right
        : null;

    // The type that this car was built with; where the book has a single one, that.
    private static PartVariant? TypeFor(IEnumerable<PartVariant> types, SerialNumber? serial)
    {
        var all = types.ToList();
        var fitted = all.Where(t => t.IsFittedTo(serial) == true).ToList();
        return fitted.Count == 1 ? fitted[0]
            : all.Count == 1 && all[0].IsFittedTo(serial) != false ? all[0]
            : null;
    }

    // Halves belong to an arm of two halves, reach to one of one piece.
    private static bool Fits((CornerPart Part, PartQuantity Quantity) means, RoadSection section)
    {
        var make = means.Part == CornerPart.UpperArm ? section.Front?.UpperArm : section.Front?.LowerArm;
        return means.Quantity switch
        {
            PartQuantity.FrontHalf or PartQuantity.RearHalf => make == ArmMake.TwoHalves,
            PartQuantity.Ahead or PartQuantity.Reach => make == ArmMake.OnePiece,
            _ => true,
        };
    }
}
