using Plumbmark.Drawing.Pictures;
using Plumbmark.Drawing.Sheets.Pages;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Floor;
using Plumbmark.Inspection.Language;

namespace Plumbmark.Drawing.Sheets;

/// <summary>The loose parts on paper: for each what to do, why, what was measured against what, and what it may be.</summary>
public static class PartsSheet
{
    /// <summary>The sheet as PDF.</summary>
    public static byte[] Pdf(CarFile car, BenchAnswer answer, SheetOptions options) =>
        new SheetDocument(
            Texts.Say("sheet.parts.parts-sheet"),
            SheetWords.SubjectOf(car, options),
            options,
            [.. Blocks(car, answer)]
        ).Pdf();

    private static IEnumerable<Block> Blocks(CarFile car, BenchAnswer answer)
    {
        yield return new SpaceBlock(4);
        yield return new TextBlock(answer.Headline, PageType.Strong);
        if (answer.Parts.Count > 1)
        {
            yield return Overview(answer);
        }

        var text = new BenchText(car.Units);
        foreach (var block in answer.Parts.SelectMany(p => PartBlocks(text, p)))
        {
            yield return block;
        }

        var reminders = answer.Parts.SelectMany(p => p.Reminders).Distinct(StringComparer.Ordinal).ToList();
        foreach (var block in SheetWords.CautionBlocks(reminders.Count > 0 ? reminders : Cautions.Parts))
        {
            yield return block;
        }
    }

    private static TableBlock Overview(BenchAnswer answer) =>
        new(
            [
                new(Texts.Say("sheet.parts.part"), 2),
                new(Texts.Say("sheet.parts.what-to-do"), 1),
                new(Texts.Say("sheet.parts.as-measured"), 1),
                new(Texts.Say("sheet.parts.type"), 2),
            ],
            [
                .. answer.Parts.Select(p =>
                    (IReadOnlyList<TableCell>)
                        [
                            new TableCell(Capital(PartWords.Title(p.Part)), PageType.CellStrong),
                            new TableCell(DispositionWord.Said(p.Disposition), PageType.CellStrong),
                            new TableCell(VerdictWord.Said(p.Verdict), SheetWords.LetteringFor(p.Verdict)),
                            new TableCell(TypeWords(p)),
                        ]
                ),
            ]
        );

    private static IEnumerable<Block> PartBlocks(BenchText text, PartAnswer part)
    {
        yield return TextBlock.Heading($"{Capital(PartWords.Title(part.Part))}: {DispositionWord.Said(part.Disposition)}");
        yield return new TextBlock(Tag(part.Part), PageType.Small, staysWithNext: true);
        foreach (var reason in part.Reasons)
        {
            yield return new TextBlock(reason, PageType.Body, "•", below: 1);
        }

        if (TypeOdds(part) is { } odds)
        {
            yield return new TextBlock(odds, PageType.Body, "•", below: 2);
        }

        if (part.Dimensions.Count > 0)
        {
            yield return Dimensions(text, part.Dimensions);
        }

        foreach (var lacking in part.Wanting)
        {
            yield return new TextBlock(lacking, PageType.Small, "•", below: 1);
        }

        if (part.MeasureNext.Count > 0)
        {
            yield return new TextBlock(Texts.Say("sheet.parts.measure-next", string.Join(" ", part.MeasureNext)), PageType.Body);
        }

        yield return new SpaceBlock(5);
    }

    private static TableBlock Dimensions(BenchText text, IReadOnlyList<DimensionAnswer> dimensions)
    {
        TableColumn[] columns =
        [
            new(Texts.Say("sheet.parts.dimension"), 2),
            new(Texts.Say("sheet.parts.measured"), 1.1, IsRight: true),
            new(Texts.Say("sheet.parts.sure-to"), 0.9, IsRight: true),
            new(Texts.Say("sheet.parts.against"), 1.5),
            new(Texts.Say("sheet.parts.off-by"), 1, IsRight: true),
            new(Texts.Say("sheet.parts.limit"), 1.5),
            new(Texts.Say("sheet.parts.verdict"), 1.5),
        ];
        return new TableBlock(columns, [.. dimensions.SelectMany(d => Rows(text, d))], padding: 0.9);
    }

    private static IEnumerable<IReadOnlyList<TableCell>> Rows(BenchText text, DimensionAnswer dimension)
    {
        var value = dimension.Value;
        var name = new TableCell(DimensionWords.Capital(value.Dimension));
        var measured = new TableCell(text.Value(value.Quantity, value.ShownSi, value.U));
        var sure = new TableCell(text.PlusMinus(value.Quantity, value.U));
        if (dimension.Comparisons.Count == 0)
        {
            yield return
            [
                name,
                measured,
                sure,
                new TableCell(Texts.Say("sheet.parts.nothing-yet"), PageType.Small),
                TableCell.Empty,
                TableCell.Empty,
                TableCell.Empty,
            ];
        }

        for (var i = 0; i < dimension.Comparisons.Count; i++)
        {
            var c = dimension.Comparisons[i];
            var isFirst = i == 0;
            yield return
            [
                isFirst ? name : TableCell.Empty,
                isFirst ? measured : TableCell.Empty,
                isFirst ? sure : TableCell.Empty,
                new TableCell(Against(c)),
                new TableCell(c.Against == ComparedWith.Itself ? "" : text.Signed(value.Quantity, c.Deviation, c.U)),
                new TableCell(
                    c.Limit is { } limit
                        ? $"{text.Value(value.Quantity, limit.Si, Math.Min(limit.Si / 10, c.U))} ({SheetWords.For(limit.Source)})"
                        : Texts.Say("sheet.parts.not-known")
                ),
                c.PutDownTo is { } other
                    ? new TableCell([
                        (SheetWords.For(c.Verdict), SheetWords.LetteringFor(c.Verdict)),
                        (Texts.Say("sheet.parts.put-down-to", other), PageType.Small),
                    ])
                    : new TableCell(SheetWords.For(c.Verdict), SheetWords.LetteringFor(c.Verdict)),
            ];
        }
    }

    private static string Against(Comparison comparison) =>
        comparison.Against switch
        {
            ComparedWith.Book => Texts.Say("sheet.parts.book", comparison.Reference),
            ComparedWith.Mirror => Texts.Say("sheet.parts.other-side", comparison.Reference),
            ComparedWith.Itself => Texts.Say("sheet.parts.itself"),
            _ => throw new System.Diagnostics.UnreachableException(),
        };

    /// <summary>What stands on the tag of the part: kind, make, numbers, what was seen, crack test, source.</summary>
    private static string Tag(Part part)
    {
        List<string> parts = [PartWords.For(part.Kind), PartWords.For(part.Make)];
        parts.AddRange(part.Card.Numbers.Select(n => Texts.Say("sheet.parts.number", n.Text)));
        parts.AddRange(part.Conditions.Select(PartWords.For));
        parts.Add(PartWords.For(part.ClearBy));
        if (part.Card.Source is { } source)
        {
            parts.Add(Texts.Say("sheet.parts.source", source.TrimEnd('.')));
        }

        return string.Join("; ", parts);
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string TypeWords(PartAnswer part) =>
        part.Variant is null or { Compared: 0 } ? Texts.Say("sheet.parts.nothing-to-compare-with")
        : part.Variant.Type is not { } type ? Texts.Say("sheet.parts.not-recognised")
        : part.IsRightForThisCar switch
        {
            true => Texts.Say("sheet.parts.as-this-car-had", type.Variant.Name),
            false => Texts.Say("sheet.parts.not-this-cars", type.Variant.Name),
            null => type.Variant.Name,
        };

    private static string? TypeOdds(PartAnswer part)
    {
        if (part.Variant is not { Compared: > 0 } variant)
        {
            return null;
        }

        var odds = variant.Odds.Select(o => $"{o.Variant.Name} {DimensionWords.Chance(o.Straight)}");
        var decided = variant.DecidedBy is { } dimension ? Texts.Say("sheet.parts.decided-by", DimensionWords.Name(dimension)) : "";
        return Texts.Say(
            "sheet.parts.which-type-none-of-these",
            string.Join(", ", odds),
            DimensionWords.Chance(variant.NoneOrBent),
            decided
        );
    }
}
