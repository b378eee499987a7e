using Plumbmark.Inspection.Bench;
using Plumbmark.Inspection.Language;
using Plumbmark.Store;
using Plumbmark.Web.Layout;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Bench;

/// <summary>The types of parts that are known, and the form to describe one.</summary>
/// <param name="Car">The car.</param>
/// <param name="Values">What stands in the form.</param>
/// <param name="Faults">What is wrong in it.</param>
public sealed record TypesView(OpenCar Car, IReadOnlyDictionary<string, string> Values, FieldFaults Faults)
{
    /// <summary>How many dimensions the form asks for; a type described again under its name keeps those not asked.</summary>
    public const int Dimensions = 4;

    /// <summary>What stands in a field.</summary>
    public string this[string field] => Values.GetValueOrDefault(field) ?? "";

    /// <summary>The page for a request; <c>?type=early</c> puts that type into the form.</summary>
    public static TypesView Of(CarRequest request, FieldFaults? faults = null)
    {
        if (faults is not null)
        {
            return new TypesView(
                request.Car,
                request.Http.Request.Form.ToDictionary(f => f.Key, f => f.Value.ToString(), StringComparer.Ordinal),
                faults
            );
        }

        var type = request.Car.File.Parts.Variants.FirstOrDefault(v => v.Id == request.Query("type"));
        return new TypesView(
            request.Car,
            type is null ? new Dictionary<string, string>(StringComparer.Ordinal) : Stored(type),
            new FieldFaults()
        );
    }

    /// <summary>A type in a line: which cars, which numbers.</summary>
    public static string Line(PartVariant type)
    {
        var cars = type.Serials switch
        {
            { From: { } from, To: { } to } => Say("bench.types.cars-n-to-n", from, to),
            { From: { } from } => Say("bench.types.cars-from-n", from),
            { To: { } to } => Say("bench.types.cars-up-to", to),
            _ => Say("bench.types.cars-not-told"),
        };
        return type.Numbers.Count == 0 ? cars : Say("bench.types.n-number-n", cars, Texts.List(type.Numbers));
    }

    /// <summary>A figure in a line.</summary>
    public static string Line(BookFigure figure) =>
        $"{DimensionWords.Name(figure.Dimension)} {AmountText.Write(figure.Nominal)}"
        + (figure.Tolerance is { } tolerance ? $" ± {AmountText.Write(tolerance)}" : Say("bench.types.no-tolerance-told"))
        + (figure.Note is { } note ? $" ({note})" : "");

    private static Dictionary<string, string> Stored(PartVariant type)
    {
        var values = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["name"] = type.Name,
            ["kind"] = type.Kind.ToString(),
            ["from"] = type.Serials?.From?.AsWritten ?? "",
            ["to"] = type.Serials?.To?.AsWritten ?? "",
            ["number"] = type.Numbers.Count > 0 ? type.Numbers[0] : "",
        };
        foreach (var (figure, n) in type.Figures.Take(Dimensions).Select((f, i) => (f, i + 1)))
        {
            values[$"dimension{n}"] = DimensionWords.Name(figure.Dimension);
            values[$"nominal{n}"] = AmountText.Write(figure.Nominal);
            values[$"tolerance{n}"] = figure.Tolerance is { } tolerance ? AmountText.Write(tolerance) : "";
            values[$"note{n}"] = figure.Note ?? "";
        }

        return values;
    }
}
