using Plumbmark.Inspection.Road;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Road;

/// <summary>The book's angles and lengths, and the form for one more.</summary>
/// <param name="Car">The car.</param>
/// <param name="Figures">What is asked so far, each in words with its name in the address.</param>
/// <param name="ValueOf">What stands in the form.</param>
/// <param name="Faults">What is wrong.</param>
public sealed record BookView(
    OpenCar Car,
    IReadOnlyList<(string Name, string Title, string Words)> Figures,
    Func<string, string> ValueOf,
    FieldFaults Faults
)
{
    /// <summary>The page for a request.</summary>
    public static BookView Of(CarRequest request, FieldFaults? faults = null)
    {
        ArgumentNullException.ThrowIfNull(request);
        var display = RoadDisplay.Of(request.Car.File);
        var figures = (request.Car.File.Road?.Book ?? [])
            .Select(b => (b.Kind.ToString(), RoadNames.Of(b.Kind), RoadText.Asked(b, display)))
            .ToList();
        return new(
            request.Car,
            figures,
            faults is null ? KeptValues.Asked(request) : KeptValues.Sent(request),
            faults ?? new FieldFaults()
        );
    }
}
