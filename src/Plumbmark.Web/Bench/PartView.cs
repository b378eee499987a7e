using Plumbmark.Inspection.Bench;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Bench;

/// <summary>One part: the answer, the form for a measure, everything measured, and its card.</summary>
/// <param name="Car">The car.</param>
/// <param name="Answer">What the measures say.</param>
/// <param name="Kind">The way of measuring that the form asks for.</param>
/// <param name="Values">What stands in its fields.</param>
/// <param name="KnownDimensions">Names of dimensions to choose from: the book's, the partner's, those measured.</param>
/// <param name="Faults">What is wrong in a form.</param>
public sealed record PartView(
    OpenCar Car,
    PartAnswer Answer,
    MeasureKind Kind,
    IReadOnlyDictionary<string, string> Values,
    IReadOnlyList<string> KnownDimensions,
    FieldFaults Faults
)
{
    /// <summary>The part.</summary>
    public Part Part => Answer.Part;

    /// <summary>The address of the part.</summary>
    public string Address => $"/cars/{Car.Id}/bench/parts/{Uri.EscapeDataString(Part.Id)}";

    /// <summary>The dimensions as shown.</summary>
    public IReadOnlyList<DimensionLine> Dimensions
    {
        get
        {
            var words = new BenchText(Car.File.Units);
            return [.. Answer.Dimensions.Select(d => DimensionLine.Of(d, words))];
        }
    }

    /// <summary>What stands in a field.</summary>
    public string this[string field] => Values.GetValueOrDefault(field) ?? "";

    /// <summary>The page for the part named in the address; null when there is none. <c>?measure=rods</c> chooses the form.</summary>
    public static PartView? Of(CarRequest request, FieldFaults? faults = null)
    {
        if (BenchInspection.Of(request.Car.File).Part(request.Part("part")) is not { } answer)
        {
            return null;
        }

        var sent = faults is not null && request.Field("measure").Length > 0;
        var word = sent ? request.Field("measure") : request.Query("measure");
        var values = sent
            ? request.Http.Request.Form.ToDictionary(f => f.Key, f => f.Value.ToString(), StringComparer.Ordinal)
            : new Dictionary<string, string>(StringComparer.Ordinal) { ["dimension"] = request.Query("dimension") };
        return new PartView(
            request.Car,
            answer,
            word.Length == 0 ? MeasureKind.UsualFor(answer.Part.Kind) : MeasureKind.Of(word),
            values,
            Known(request.Car, answer.Part),
            faults ?? new FieldFaults()
        );
    }

    private static IReadOnlyList<string> Known(OpenCar car, Part part)
    {
        var parts = car.File.Parts;
        var book = BenchInspection.VariantsOf(car.File).Where(v => v.Kind == part.Kind).SelectMany(v => v.Figures.Select(f => f.Dimension));
        var partner = part.Mirror is { } mirror && parts.Part(mirror) is { } other ? Named(other) : [];
        return [.. book.Concat(Named(part)).Concat(partner).Distinct(StringComparer.Ordinal).Select(DimensionWords.Name)];
    }

    private static IEnumerable<string> Named(Part part) =>
        part.StandingMeasures.SelectMany(m =>
            m switch
            {
                Measure.Plain p => [p.Dimension],
                Measure.Angle a => [a.Dimension],
                Measure.Straightedge s => [s.Dimension],
                Measure.RunOut r => [r.Dimension],
                Measure.Heights h => h.Places.Select(p => p.Dimension),
                Measure.BackToBack b => b.Differences.Select(d => d.Dimension),
                _ => Enumerable.Empty<string>(),
            }
        );
}
