using CsCheck;
using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Linkage;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Road;

namespace Plumbmark.Testing;

/// <summary>Random road sections that obey every rule of the format; their pick-ups are places or the pairs A and B, so that they can stand in any car of <see cref="CarFiles"/>.</summary>
public static class RoadSections
{
    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static readonly Gen<string> s_note = OneOf("bushes new", "line 2 rubbed", "½ \"quoted\"");

    private static readonly Gen<Length> s_length = Gen.OneOf(
        OneOf("11 5/8 in", "295.5 mm", "9 1/32\"").Select(Typed),
        Gen.Int[1, 900_000].Select(n => Length.FromMillimetres(n / 1000m))
    );

    private static readonly Gen<Length> s_signed = Gen.Select(s_length, Gen.Bool, (l, minus) => minus ? -l : l);

    private static readonly Gen<Angle> s_angle = Gen.OneOf(
        OneOf("1°30'", "-0°15'", "1 1/2", "30'", "2.25").Select(TypedAngle),
        Gen.Int[-3000, 3000].Select(n => Angle.FromDegrees(n / 100m))
    );

    private static readonly Gen<Angle> s_positiveAngle = Gen.Int[1, 3000].Select(n => Angle.FromDegrees(n / 100m));

    private static readonly Gen<Place> s_place = Gen.Select(
        Sometimes(s_signed),
        Sometimes(s_signed),
        Sometimes(s_signed),
        (x, y, z) => new Place(x, y, z)
    );

    private static readonly Gen<PickUp> s_pickUp = Gen.OneOf(
        OneOf("A", "B").Select(n => (PickUp)new PickUp.AtPair(n)),
        s_place.Select(p => (PickUp)new PickUp.AtPlace(p))
    );

    private static Gen<T?> Sometimes<T>(Gen<T> gen)
        where T : struct => Gen.Select(Gen.Bool, gen, (given, value) => given ? value : (T?)null);

    private static Gen<T?> Maybe<T>(Gen<T> gen)
        where T : class => Gen.Select(Gen.Bool, gen, (given, value) => given ? value : null);

    private static Length Typed(string text) =>
        ((LengthOutcome.Read)LengthText.Read(text, LengthUnit.Inch, LengthSign.NeverNegative)).Value;

    private static Angle TypedAngle(string text) => Angle.TryParse(text, out var angle) ? angle : throw new InvalidOperationException(text);

    private static readonly Gen<FrontDrawing> s_front =
        from pickUps in Maybe(s_pickUp).Array[5]
        from places in Maybe(s_place).Array[4]
        from lengths in Sometimes(s_length).Array[5]
        from camber in Sometimes(s_angle)
        from makes in Gen.Enum<ArmMake>().Array[2]
        from box in Maybe(Gen.Select(Maybe(s_place).Array[4], Gen.Bool, (p, arms) => new SteeringBoxDrawing(p[0], p[1], p[2], p[3], arms)))
        select new FrontDrawing
        {
            UpperFront = pickUps[0],
            UpperRear = pickUps[1],
            LowerFront = pickUps[2],
            LowerRear = pickUps[3],
            TrackRodInner = pickUps[4],
            UpperJoint = places[0],
            LowerJoint = places[1],
            LeverJoint = places[2],
            WheelCentre = places[3],
            Camber = camber,
            UpperArm = makes[0],
            LowerArm = makes[1],
            TrunnionOffset = lengths[0],
            TrunnionLead = lengths[1],
            LoadedRadius = lengths[2],
            Bump = lengths[3],
            Rebound = lengths[4],
            SteeringBox = box,
        };

    private static readonly Gen<RearDrawing> s_rear = Gen.OneOf(
        Gen.Select(
            Maybe(s_pickUp),
            Sometimes(s_signed),
            Sometimes(s_signed),
            Sometimes(s_length),
            (eye, back, above, track) => (RearDrawing)new RearDrawing.LiveAxle(eye, back, above, track)
        ),
        Gen.Select(
            Maybe(s_pickUp),
            Maybe(s_pickUp),
            Maybe(s_place),
            Sometimes(s_angle),
            (inner, outer, wheel, camber) => (RearDrawing)new RearDrawing.TrailingArms(inner, outer, wheel, camber, null)
        )
    );

    private static Gen<AskedFigure> Figures(FigureKind kind)
    {
        var isLength =
            kind
            is FigureKind.Wheelbase
                or FigureKind.WheelbaseSplit
                or FigureKind.FrontTrack
                or FigureKind.RearTrack
                or FigureKind.RearOffset
                or FigureKind.DogTrack
                or FigureKind.RideHeightSplit;
        var amount = isLength
            ? s_length.Select(l => (FigureAmount)new FigureAmount.OfLength(l))
            : s_positiveAngle.Select(a => (FigureAmount)new FigureAmount.OfAngle(a));
        return Gen.Select(
            Maybe(amount),
            Maybe(amount),
            Gen.Enum<LimitSource>(),
            Maybe(s_note),
            (value, limit, source, note) => new AskedFigure(kind, value, limit, null, null, source, note)
        );
    }

    private static readonly Gen<PartDeviation> s_part = Gen.Select(
        OneOf(
            (CornerPart.LowerRear, PartQuantity.Out),
            (CornerPart.Lever, PartQuantity.Up),
            (CornerPart.UpperArm, PartQuantity.Reach),
            (CornerPart.TrackRod, PartQuantity.Length)
        ),
        Gen.Enum<Side>(),
        s_signed,
        Sometimes(s_length),
        Maybe(s_note),
        (what, side, amount, sigma, note) =>
            new PartDeviation($"{what.Item1}-{side}", what.Item1, side, [new(what.Item2, amount, null)], sigma, null, note)
    );

    private static readonly Gen<Adjuster> s_adjuster = Gen.Select(
        Gen.Enum<AdjusterKind>(),
        Gen.Enum<AdjusterDirection>(),
        Gen.Enum<Side>(),
        s_length,
        Sometimes(s_length),
        (kind, direction, side, most, step) =>
            new Adjuster(
                $"{kind}-{side}",
                kind,
                side,
                kind == AdjusterKind.TrackRod ? [] : [CornerPart.UpperFront, CornerPart.UpperRear],
                kind == AdjusterKind.TrackRod ? AdjusterDirection.Out : direction,
                kind == AdjusterKind.Shims ? Length.Zero : -most,
                most,
                step
            )
    );

    private static readonly Gen<WheelReading> s_wheel = Gen.Select(
        Gen.Int[0, 8],
        Gen.Enum<WheelPlace>(),
        Gen.Int[1, 60].Array[3],
        s_angle,
        Gen.Bool,
        (kind, wheel, gaps, camber, half) => Reading($"w{kind}{wheel}{half}", kind, wheel, gaps, camber) with { HalfTurn = half }
    );

    private static WheelReading Reading(string id, int kind, WheelPlace wheel, int[] gaps, Angle camber)
    {
        var (a, b, span) = (Length.FromMillimetres(gaps[0]), Length.FromMillimetres(gaps[1]), Length.FromMillimetres(350 + gaps[2]));
        var turn = Angle.FromDegrees(20);
        return kind switch
        {
            0 => new WheelReading.PlumbLine(id, wheel, a, b, span),
            1 => new WheelReading.Level(id, wheel, camber),
            2 => new WheelReading.StringGaps(id, wheel, a, b, span, gaps[2] % 2 == 0 ? b : null),
            3 => new WheelReading.Strings(id, span, span + a, span + span),
            4 => new WheelReading.Across(id, gaps[2] % 2 == 0 ? Axle.Front : Axle.Rear, span + a, span + b, span, gaps[2] % 3 == 0),
            5 => new WheelReading.Swing(id, (WheelPlace)((int)wheel % 2), camber, turn, camber, turn, camber),
            6 => new WheelReading.RideHeight(id, wheel, a),
            7 => new WheelReading.Wheelbase(id, (Side)((int)wheel % 2), span),
            _ => new WheelReading.Pad(id, wheel, a - b),
        };
    }

    /// <summary>Any section.</summary>
    public static Gen<RoadSection> Any { get; } =
        from front in Maybe(s_front)
        from rear in Maybe(s_rear)
        from kinds in Gen.Shuffle(Enum.GetValues<FigureKind>())
        from book in Figures(kinds[0]).Array[1]
        from more in Figures(kinds[1]).Array[0, 1]
        from parts in s_part.Array[0, 4]
        from adjusters in s_adjuster.Array[0, 3]
        from wheels in s_wheel.Array[0, 8]
        select new RoadSection(
            front,
            rear,
            [.. book, .. more],
            [.. parts.DistinctBy(p => p.Id)],
            [.. adjusters.DistinctBy(a => a.Id)],
            [.. wheels.DistinctBy(w => w.Id)]
        );
}
