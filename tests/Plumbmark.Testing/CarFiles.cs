using CsCheck;
using Plumbmark.Engine.Lengths;
using Plumbmark.Engine.Uncertainty;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor.Levelling;

namespace Plumbmark.Testing;

/// <summary>Random car files that obey every rule of the format.</summary>
public static class CarFiles
{
    private static readonly string[] s_lengthTexts = ["47 5/8 in", "33-17/32\"", "1210 mm", "121.0cm", "5' 1 3/16\"", "12.50", "0.1"];
    private static readonly string[] s_inchTexts = [.. s_lengthTexts, "47 5/8", "3/4"];

    private static readonly Gen<LengthUnit> s_units = OneOf(LengthUnit.Inch, LengthUnit.Millimetre);

    private static Gen<T> OneOf<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    private static Gen<IReadOnlyList<T>> Each<T>(IEnumerable<Gen<T>> gens) =>
        gens.Aggregate(
            Gen.Const<IReadOnlyList<T>>([]),
            (before, next) => Gen.Select(before, next, (list, item) => (IReadOnlyList<T>)[.. list, item])
        );

    private static Gen<Length> Lengths(LengthUnit units) =>
        Gen.OneOf(
            OneOf(units == LengthUnit.Inch ? s_inchTexts : s_lengthTexts)
                .Select(t => ((LengthOutcome.Read)LengthText.Read(t, units, LengthSign.NeverNegative)).Value),
            Gen.Int[1, 2_000_000].Select(n => Length.FromNumber(n / 1000m, units))
        );

    private static Gen<Length> Signed(LengthUnit units) => Gen.Select(Lengths(units), Gen.Bool, (l, minus) => minus ? -l : l);

    private static Gen<T?> Sometimes<T>(Gen<T> gen)
        where T : struct => Gen.Select(Gen.Bool, gen, (given, value) => given ? value : (T?)null);

    private static Gen<T?> Maybe<T>(Gen<T> gen)
        where T : class => Gen.Select(Gen.Bool, gen, (given, value) => given ? value : null);

    private static readonly Gen<string> s_note = OneOf("rubbed", "left hand low, re-measure", "½ in hole", "\"quoted\" <b>", "línea");

    private static Gen<Place> Places(LengthUnit units) =>
        Gen.Select(Sometimes(Signed(units)), Sometimes(Signed(units)), Sometimes(Signed(units)), (x, y, z) => new Place(x, y, z));

    private static Gen<FramePoint> Points(string letter, bool left, LengthUnit units) =>
        Gen.Select(
            Gen.Enum<PointRole>(),
            Maybe(Places(units)),
            Maybe(Places(units)),
            Sometimes(Lengths(units)),
            Gen.Select(Maybe(s_note), Maybe(Places(units)), Maybe(s_note), Gen.Bool, Sometimes(Lengths(units))),
            (role, sketch, nominal, drop, words) =>
                new FramePoint(
                    $"{letter}.{(left ? "L" : "R")}",
                    $"{letter}.{(left ? "R" : "L")}",
                    role,
                    sketch,
                    nominal,
                    drop,
                    Label: words.Item1,
                    Asymmetry: words.Item2,
                    NominalDoubt: words.Item3,
                    CannotDrop: words.Item4
                )
                {
                    Hole = words.Item5,
                    FixedSigma = words.Item4 ? words.Item5 : null,
                }
        );

    private static Gen<Reading> Readings(int number, IReadOnlyList<string> points, LengthUnit units) =>
        Gen.Select(
            Gen.Select(Gen.Int[0, 10], Gen.Shuffle(points.ToArray()), Lengths(units), Signed(units), Signed(units)),
            Gen.Select(Maybe(Gen.Const("tape")), Sometimes(Lengths(units)), Maybe(s_note), Maybe(s_note)),
            (what, extra) =>
            {
                var (kind, ends, value, dx, dy) = what;
                var id = $"r{number}";
                Reading reading = kind switch
                {
                    0 => new Reading.Plan(id, ends[0], ends[1], value),
                    1 => new Reading.Direct(id, ends[0], ends[1], value),
                    2 => new Reading.Height(id, ends[0], dx) { IsAboveFloor = number % 2 == 0 },
                    3 => new Reading.Rise(id, ends[0], ends[1], dx),
                    4 => new Reading.Offset(id, ends[0], ends[1], ends[2], dy),
                    5 => new Reading.Drop(id, ends[0], value, null, null),
                    7 => new Reading.Indirect(id, ends[0], new IndirectWay.Midpoint(ends[1], ends[2])),
                    8 => new Reading.Indirect(id, ends[0], new IndirectWay.Offset(ends[1], dx, dy)),
                    9 => new Reading.Indirect(id, ends[0], new IndirectWay.HoleEdge(ends[1], value, (EdgeSide)(number % 4))),
                    10 => new Reading.Indirect(id, ends[0], new IndirectWay.Bar(ends[1], ends[2], value)),
                    _ => new Reading.Drop(id, ends[0], null, dx, dy),
                };
                return reading with
                {
                    Tool = extra.Item1,
                    Sigma = extra.Item2,
                    Note = extra.Item3,
                    Withdrawn = extra.Item4,
                    StartAt = kind <= 1 && number % 3 == 0 ? value / 2 : null,
                };
            }
        );

    private static Gen<LevelSection> Levels(LengthUnit units) =>
        Gen.Select(
            Each(
                Enumerable
                    .Range(1, 4)
                    .Select(n =>
                        Gen.Select(
                            Signed(units),
                            Signed(units),
                            Signed(units),
                            Sometimes(Signed(units)),
                            (x, y, h, should) => new StandReading($"stand {n}", x, y, h, should)
                        )
                    )
            ),
            Each(
                Enumerable
                    .Range(1, 3)
                    .Select(_ => Gen.Select(Signed(units), Signed(units), Signed(units), (x, y, h) => new FloorHeight(x, y, h)))
            ),
            Maybe(Gen.Select(Lengths(units), Signed(units), (length, gap) => new PlumbCheck(length, gap))),
            (stands, floor, plumb) => new LevelSection(stands, floor, plumb)
        );

    /// <summary>A car with two to six pairs and up to thirty readings of every kind.</summary>
    public static Gen<CarFile> Any { get; } =
        from units in s_units
        from pairs in Gen.Int[2, 6]
        from points in Each(Enumerable.Range(0, pairs * 2).Select(i => Points($"{(char)('A' + (i / 2))}", i % 2 == 0, units)))
        from limits in Maybe(
            Gen.Select(
                Sometimes(Lengths(units)),
                Sometimes(Lengths(units)),
                Gen.Enum<LimitSource>(),
                Maybe(s_note),
                (m, h, source, note) => new Limits(m, h, null, source, note)
            )
        )
        from tools in Gen.Select(
            Gen.Enum<ToolKind>(),
            Sometimes(Gen.Enum<TapeClass>()),
            Sometimes(Lengths(units)),
            Sometimes(Lengths(units)),
            (kind, tapeClass, division, sigma) => new Tool("tape", kind, tapeClass, division, sigma)
        )
        from count in Gen.Int[0, 30]
        from readings in Each(Enumerable.Range(1, count).Select(n => Readings(n, [.. points.Select(p => p.Id)], units)))
        from serial in Maybe(OneOf("TX 00417", "0012-B"))
        from parts in PartFiles.Any
        from book in BookPages.Any
        from level in Maybe(Levels(units))
        from photos in Gen.Int[0, 2]
        select new CarFile(units, new CarIdentity("Invented", serial), [tools], new Frame(points, limits), readings)
        {
            Parts = parts,
            Book = book,
            Level = level,
            Photos =
            [
                .. Enumerable.Range(1, photos).Select(n => n == 1 ? new PhotoOf("0a1b", Point: "A.L") : new PhotoOf("2c3d", Reading: "r1")),
            ],
        };
}
