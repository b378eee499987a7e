using Plumbmark.Inspection.Road;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Road;

/// <summary>The wheel check: the form for the next reading, what the readings say, and the readings themselves.</summary>
/// <param name="Car">The car.</param>
/// <param name="Kind">The kind of reading the form is for: an index of <see cref="RoadFields.WheelKinds"/>.</param>
/// <param name="Readings">Every reading, newest first, those taken back included.</param>
/// <param name="Road">What the Road says.</param>
/// <param name="ValueOf">What stands in the form.</param>
/// <param name="Faults">What is wrong.</param>
public sealed record WheelsView(
    OpenCar Car,
    int Kind,
    IReadOnlyList<WheelReading> Readings,
    RoadView Road,
    Func<string, string> ValueOf,
    FieldFaults Faults
)
{
    /// <summary>The page for a request.</summary>
    public static WheelsView Of(CarRequest request, FieldFaults? faults = null)
    {
        ArgumentNullException.ThrowIfNull(request);
        var readings = (request.Car.File.Road?.Wheels ?? []).Reverse().ToList();
        var values = faults is null ? KeptValues.Asked(request) : KeptValues.Sent(request);
        return new(request.Car, KindOf(request), readings, RoadView.Of(request), values, faults ?? new FieldFaults());
    }

    /// <summary>The kind that a request is about; the first when it names none.</summary>
    public static int KindOf(PageRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var word = request.Field("kind") is { Length: > 0 } sent ? sent : request.Query("kind");
        return Math.Max(
            0,
            RoadFields.WheelKinds.Select((k, i) => (k.Word, i)).Where(k => k.Word == word).Select(k => k.i).FirstOrDefault()
        );
    }
}
