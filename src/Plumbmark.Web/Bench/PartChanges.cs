using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Bench;

/// <summary>Parts are laid on the bench, their cards written, and put away.</summary>
internal static class PartChanges
{
    public static IResult Lay(CarRequest request)
    {
        var faults = new FieldFaults();
        var kind = BenchChoices.Of<PartKind>(request.Field("kind"));
        if (kind is null)
        {
            faults.Add("kind", Say("bench.part.choose-what-it-is"));
        }

        var side = request.Field("side") switch
        {
            "left" => ".L",
            "right" => ".R",
            _ => "",
        };
        var name = request.OptionalText("name", faults, most: 80);
        var number = request.OptionalText("number", faults, most: 40);
        if (faults.Any)
        {
            return Show.Again<BenchPage>(BenchView.Of(request, faults));
        }

        var (id, mirror) = FreeName(request.Car.File.Parts, kind!.Value, side);
        var part = new Part(
            id,
            kind.Value,
            BenchChoices.Of<PartMake>(request.Field("made")),
            mirror,
            new PartCard(name, number is null ? [] : [new CardNumber(number)])
        );
        return request.Keep(Address(request, id), new Act.BenchPartLaid(part));
    }

    public static IResult WriteCard(CarRequest request)
    {
        if (Part(request) is not { } part)
        {
            return Show.NotFound(BenchRoom.NoSuchPart);
        }

        var faults = new FieldFaults();
        var number = request.OptionalText("number", faults, most: 40);
        var happened = request.OptionalText("happened", faults, most: 300);
        var card = part.Card with
        {
            Name = request.OptionalText("name", faults, most: 80),
            Source = request.OptionalText("source", faults, most: 200),
            Numbers = number is null
                ? part.Card.Numbers
                : [.. part.Card.Numbers, new CardNumber(number, BenchChoices.Of<NumberMark>(request.Field("how")) ?? NumberMark.Unknown)],
            History = happened is null ? part.Card.History : [.. part.Card.History, happened],
        };
        var seen = Enum.GetValues<PartCondition>().Where(c => request.Field($"seen-{c}").Length > 0);
        var after = part with
        {
            Kind = BenchChoices.Of<PartKind>(request.Field("kind")) ?? part.Kind,
            Make = BenchChoices.Of<PartMake>(request.Field("made")),
            Card = card,
            Conditions = [.. seen],
            ClearBy = BenchChoices.Of<CrackMethod>(request.Field("crackTest")),
        };
        return faults.Any
            ? Show.Again<CardPage>(CardView.Of(request, faults)!)
            : request.Keep(Address(request, part.Id), new Act.BenchPartLaid(after));
    }

    public static IResult PutAway(CarRequest request) =>
        Part(request) is { } part
            ? request.Keep(request.Address("bench"), new Act.BenchPartPutAway(part.Id))
            : Show.NotFound(BenchRoom.NoSuchPart);

    internal static Part? Part(CarRequest request) => request.Car.File.Parts.Part(request.Part("part"));

    internal static string Address(CarRequest request, string part) => request.Address($"bench/parts/{Uri.EscapeDataString(part)}");

    /// <summary>The first free name such as <c>steering-lever.L</c>, then <c>steering-lever-2.L</c>; both sides of a pair share the number.</summary>
    private static (string Id, string? Mirror) FreeName(PartsSection parts, PartKind kind, string side)
    {
        var plain = PartWords.For(kind).Replace(" or bore", "", StringComparison.Ordinal).Replace(' ', '-');
        for (var n = 1; ; n++)
        {
            var name = n == 1 ? plain : $"{plain}-{n}";
            if (parts.Part(name + side) is null)
            {
                return (
                    name + side,
                    side switch
                    {
                        ".L" => $"{name}.R",
                        ".R" => $"{name}.L",
                        _ => null,
                    }
                );
            }
        }
    }
}
