using Plumbmark.Engine.Lengths;
using Plumbmark.Inspection.Car;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Floor;

/// <summary>A pair, or a single point, to be drawn anew: what stands in the form.</summary>
/// <param name="Car">The car.</param>
/// <param name="Point">The point named in the address.</param>
/// <param name="Partner">Its partner; null for a single point.</param>
/// <param name="Fields">What stands in each field.</param>
/// <param name="Readings">How many readings go to it, those taken back included: such a point cannot be rubbed out.</param>
/// <param name="Faults">What is wrong in the form.</param>
public sealed record PointView(
    OpenCar Car,
    FramePoint Point,
    FramePoint? Partner,
    IReadOnlyDictionary<string, string> Fields,
    int Readings,
    FieldFaults Faults
)
{
    /// <summary>The points of the form, each with the prefix of its own fields.</summary>
    public IEnumerable<(string Prefix, FramePoint Point)> Points => Partner is null ? [("one", Point)] : [("one", Point), ("two", Partner)];

    /// <summary>The page for the point named in the address; null when there is none.</summary>
    public static PointView? Of(CarRequest request, FieldFaults? faults = null)
    {
        var frame = request.Car.File.Frame;
        if (frame.Point(request.Part("point")) is not { } point)
        {
            return null;
        }

        var partner = PointsView.PartnerOf(frame, point);
        var fields = faults is null
            ? Stored(point, partner)
            : request.Http.Request.Form.ToDictionary(f => f.Key, f => f.Value.ToString(), StringComparer.Ordinal);
        var readings = request.Car.File.Readings.Count(r => r.Points.Any(p => p == point.Id || p == partner?.Id));
        return new PointView(request.Car, point, partner, fields, readings, faults ?? new FieldFaults());
    }

    /// <summary>What stands in a field.</summary>
    public string this[string field] => Fields.GetValueOrDefault(field) ?? "";

    private static Dictionary<string, string> Stored(FramePoint point, FramePoint? partner)
    {
        var fields = new Dictionary<string, string>(StringComparer.Ordinal)
        {
            ["label"] = point.Label ?? "",
            ["role"] = point.Role.ToString(),
            ["drop"] = Text(point.DropSigma),
        };
        Put(fields, "one", point);
        if (partner is not null)
        {
            Put(fields, "two", partner);
        }

        return fields;
    }

    private static void Put(Dictionary<string, string> fields, string prefix, FramePoint point)
    {
        foreach (var (kind, place) in new[] { ("sketch", point.Sketch), ("book", point.Nominal) })
        {
            fields[$"{prefix}-{kind}-x"] = Text(place?.X);
            fields[$"{prefix}-{kind}-y"] = Text(place?.Y);
            fields[$"{prefix}-{kind}-z"] = Text(place?.Z);
        }
    }

    private static string Text(Length? length) => length?.AsTyped ?? "";
}
