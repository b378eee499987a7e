using Microsoft.AspNetCore.Http;
using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Book;
using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Journal;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Bench;

/// <summary>Types of parts are described and struck out.</summary>
internal static class TypeChanges
{
    public static IResult Describe(CarRequest request)
    {
        var faults = new FieldFaults();
        var name = request.RequiredText("name", Say("bench.type.a-name"), faults, most: 60);
        var kind = BenchChoices.Of<PartKind>(request.Field("kind"));
        if (kind is null)
        {
            faults.Add("kind", Say("bench.type.choose-what-it-is"));
        }

        var serials = new SerialRange(Serial(request, "from", faults), Serial(request, "to", faults));
        if (!serials.IsSound)
        {
            faults.Add("to", Say("bench.type.the-last-number-must"));
        }

        var number = request.OptionalText("number", faults, most: 40);
        var figures = Enumerable.Range(1, TypesView.Dimensions).Select(n => Figure(request, n, faults)).OfType<BookFigure>().ToList();
        if (faults.Any)
        {
            return Show.Again<TypesPage>(TypesView.Of(request, faults));
        }

        return request.Keep(
            request.Address("bench/types"),
            car =>
            {
                var known = car.File.Parts.Variants.FirstOrDefault(v => v.Name == name && v.Kind == kind);
                var variant = new PartVariant(
                    known?.Id ?? FreeId(car.File.Parts, name),
                    kind!.Value,
                    name,
                    serials is { From: null, To: null } ? null : serials,
                    number is null ? [] : [number, .. (known?.Numbers ?? []).Skip(1)],
                    // What the form has no room for stays as it was.
                    [.. figures, .. (known?.Figures ?? []).Skip(TypesView.Dimensions)]
                );
                return [new Act.VariantDescribed(variant)];
            }
        );
    }

    public static IResult Remove(CarRequest request) =>
        request.Car.File.Parts.Variants.Any(v => v.Id == request.Part("type"))
            ? request.Keep(request.Address("bench/types"), new Act.VariantRemoved(request.Part("type")))
            : Show.NotFound(Say("bench.type.there-is-no-such"));

    private static SerialNumber? Serial(CarRequest request, string field, FieldFaults faults)
    {
        var text = request.OptionalText(field, faults, most: 30);
        var serial = SerialNumber.Read(text);
        if (text is not null && serial is null)
        {
            faults.Add(field, Say("bench.type.cannot-be-put-in", text, SerialNumber.Allowed));
        }

        return serial;
    }

    private static BookFigure? Figure(CarRequest request, int n, FieldFaults faults)
    {
        var dimension = request.OptionalText($"dimension{n}", faults, most: 40);
        if (dimension is null && request.Field($"nominal{n}").Length == 0)
        {
            return null;
        }

        if (dimension is null)
        {
            faults.Add($"dimension{n}", Say("bench.type.which-dimension-is-this"));
        }

        var nominal = Amount(request, $"nominal{n}", faults);
        var tolerance = request.Field($"tolerance{n}").Length == 0 ? null : Amount(request, $"tolerance{n}", faults);
        if (nominal is not null && tolerance is not null && (tolerance.Quantity != nominal.Quantity || tolerance.Si <= 0))
        {
            faults.Add($"tolerance{n}", Say("bench.type.a-tolerance-is-more"));
        }

        var note = request.OptionalText($"note{n}", faults, most: 120);
        return dimension is null || nominal is null
            ? null
            : new BookFigure(
                string.Join('-', dimension.ToLowerInvariant().Split(' ', StringSplitOptions.RemoveEmptyEntries)),
                nominal,
                tolerance,
                LimitSource.Factory,
                note
            );
    }

    private static Amount? Amount(CarRequest request, string field, FieldFaults faults)
    {
        var amount = AmountText.Read(request.Field(field), request.Car.File.Units, out var refusal);
        if (refusal is not null)
        {
            faults.Add(field, refusal);
        }

        return amount;
    }

    private static string FreeId(PartsSection parts, string name)
    {
        var plain = string.Join(
            '-',
            new string([.. name.ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : ' ')]).Split(
                ' ',
                StringSplitOptions.RemoveEmptyEntries
            )
        );
        plain = plain.Length == 0 ? "type" : plain;
        return Enumerable
            .Range(1, parts.Variants.Count + 1)
            .Select(n => n == 1 ? plain : $"{plain}-{n}")
            .First(id => parts.Variants.All(v => v.Id != id));
    }
}
