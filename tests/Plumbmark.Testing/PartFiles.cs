using CsCheck;
using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Car;

namespace Plumbmark.Testing;

/// <summary>Random parts sections that obey every rule of the format.</summary>
public static class PartFiles
{
    private static readonly string[] s_texts = ["1.42 in", "33-17/32\"", "36 mm", "12.1cm"];

    private static readonly Gen<Length> s_length = Gen.OneOf(
        Gen.Int[0, s_texts.Length - 1].Select(i => ((LengthOutcome.Read)LengthText.Read(s_texts[i], LengthUnit.Inch)).Value),
        Gen.Int[1, 90_000].Select(n => Length.FromInches(n / 1000m)),
        Gen.Int[1, 90_000].Select(n => Length.FromMillimetres(n / 100m))
    );

    private static readonly Gen<IReadOnlyList<Length>> s_lengths = s_length.Array[1, 4].Select(a => (IReadOnlyList<Length>)a);
    private static readonly Gen<(Length, Length)> s_two = Gen.Select(s_length, s_length);
    private static readonly Gen<string> s_name = Gen.Int[0, 5]
        .Select(i => ((string[])["pad-height", "eye", "front", "rear", "\"odd\" <name>", "é"])[i]);
    private static readonly Gen<string?> s_note = Gen.Int[0, 2].Select(i => ((string?[])[null, "slipped, ½ in", "p. 61"])[i]);
    private static readonly Gen<Amount.OfAngle> s_angle = Gen.Int[-9000, 9000].Select(n => new Amount.OfAngle(n / 100m));

    private static readonly Gen<Amount> s_amount = Gen.OneOf(
        s_length.Select(l => (Amount)new Amount.OfLength(l)),
        s_angle.Where(a => a.Degrees > 0).Select(a => (Amount)a),
        Gen.Select(Gen.Int[1, 900], Gen.Enum<RateUnit>(), (n, unit) => (Amount)new Amount.OfRate(n, unit))
    );

    private static Gen<Measure> Body(string id) =>
        Gen.OneOf(
            Gen.Select(s_name, s_lengths, (d, v) => (Measure)new Measure.Plain(id, d, v)),
            Gen.Select(s_name, s_angle.Array[1, 3], (d, v) => (Measure)new Measure.Angle(id, d, v)),
            Gen.Select(
                s_name,
                s_two,
                s_two,
                Gen.Bool,
                s_length,
                Gen.Enum<BoreMate>(),
                (b, m, d, isDeep, mate, what) =>
                    (Measure)
                        new Measure.Bore(
                            id,
                            b,
                            [m.Item1, m.Item2],
                            isDeep ? [d.Item1, d.Item2] : [],
                            isDeep ? null : mate,
                            isDeep ? BoreMate.Pin : what
                        )
            ),
            Gen.Select(s_lengths, Gen.Enum<CentresOver>(), (v, over) => (Measure)new Measure.Centres(id, "front", "rear", v, over)),
            Gen.Select(
                Gen.Select(s_length, s_length, s_length, (x, y, h) => new FaceHeight(x, y, h)).Array[3, 5],
                Gen.Select(s_name, s_length, s_length, s_length, (d, x, y, h) => new PlaceHeight(d, x, y, -h)).Array[1, 2],
                (face, places) => (Measure)new Measure.Heights(id, face, places)
            ),
            Gen.Select(s_name, s_gap.Array[3, 6], (d, gaps) => (Measure)new Measure.Straightedge(id, d, gaps)),
            Gen.Select(
                s_two,
                s_two,
                s_two,
                Gen.Int[1, 3],
                (a, b, c, which) =>
                    (Measure)
                        new Measure.Rods(
                            id,
                            "front",
                            "rear",
                            a.Item1,
                            (which & 1) > 0 ? a.Item2 : null,
                            (which & 1) > 0 ? b.Item1 : null,
                            (which & 2) > 0 ? b : null,
                            (which & 2) > 0 ? c : null
                        )
            ),
            Gen.Select(s_name, s_length, (d, v) => (Measure)new Measure.BackToBack(id, [new SideDifference(d, -v)])),
            Gen.Select(
                Gen.Select(Gen.Int[0, 900], Gen.Enum<LoadUnit>(), s_length, (n, unit, l) => new LoadedLength(new Load(n, unit), l)).Array[
                    1,
                    4
                ],
                loads => (Measure)new Measure.SpringLoads(id, loads)
            ),
            Gen.Select(s_name, s_length.Array[2, 5], (d, v) => (Measure)new Measure.RunOut(id, d, v))
        );

    private static readonly Gen<Gap> s_gap = Gen.OneOf(
        Gen.Select(s_length, s_length, (at, g) => new Gap(at, g)),
        Gen.Select(
            s_length,
            Gen.Int[1, 99],
            (at, n) => new Gap(at, Length.FromMillimetres(n / 100m), Length.FromMillimetres((n + 5) / 100m))
        ),
        Gen.Select(s_length, Gen.Int[0, 9], Gap.OfPaper)
    );

    private static Gen<Measure> Measures(int number) =>
        Gen.Select(
            Body($"m{number}"),
            s_note,
            s_note,
            Gen.Bool,
            s_length,
            (measure, note, withdrawn, told, sigma) =>
                measure with
                {
                    Tool = told ? "caliper" : null,
                    Sigma = told ? null : sigma,
                    Note = note,
                    Withdrawn = withdrawn,
                }
        );

    private static Gen<IReadOnlyList<T>> Each<T>(int count, Func<int, Gen<T>> gen) =>
        Enumerable
            .Range(1, count)
            .Aggregate(
                Gen.Const<IReadOnlyList<T>>([]),
                (before, n) => Gen.Select(before, gen(n), (list, item) => (IReadOnlyList<T>)[.. list, item])
            );

    private static Gen<Part> Parts(int number) =>
        from kind in Gen.Enum<PartKind>()
        from make in Gen.Enum<PartMake>()
        from conditions in Gen.Enum<PartCondition>().Array[0, 3]
        from test in Gen.Enum<CrackMethod>()
        from count in Gen.Int[0, 2]
        from measures in Each(count, Measures)
        from name in s_note
        from mark in Gen.Enum<NumberMark>()
        from limits in Gen.Select(s_name, s_amount, Gen.Enum<LimitSource>(), s_note, (d, w, s, n) => new PartLimit(d, w, s, n)).Array[0, 2]
        select new Part(
            $"part{number}",
            kind,
            number % 2 == 0 ? make : null,
            number == 2 ? "elsewhere" : null,
            new PartCard(
                name,
                name is null ? [] : [new CardNumber("51-0417", mark)],
                name,
                name is null ? ["photo"] : [],
                name is null ? [] : [name]
            ),
            [.. conditions.Distinct()],
            number % 2 == 0 ? test : null,
            measures,
            limits
        );

    private static Gen<PartVariant> Variants(int number) =>
        from kind in Gen.Enum<PartKind>()
        from figures in Gen.Select(
            s_name,
            s_amount,
            Gen.Bool,
            Gen.Enum<LimitSource>(),
            s_note,
            (d, n, t, s, note) => new BookFigure(d, n, t ? n : null, s, note)
        ).Array[0, 3]
        from open in Gen.Bool
        select new PartVariant(
            $"v{number}",
            kind,
            $"type {number}",
            open ? null : new SerialRange(SerialNumber.Read("TX 1"), null),
            open ? [] : ["51-0417"],
            figures
        );

    /// <summary>Up to two parts and one variant.</summary>
    public static Gen<PartsSection> Any { get; } =
        from parts in Gen.Int[0, 2]
        from variants in Gen.Int[0, 1]
        from items in Each(parts, Parts)
        from types in Each(variants, Variants)
        select new PartsSection(items, types);
}
