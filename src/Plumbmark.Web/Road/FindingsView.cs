using Plumbmark.Inspection.Language;
using Plumbmark.Inspection.Road;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Road;

/// <summary>Parts and places found off their drawing, and the form for one more.</summary>
/// <param name="Car">The car.</param>
/// <param name="Part">The part the form is for.</param>
/// <param name="Findings">Everything found, newest first, those taken back included.</param>
/// <param name="ValueOf">What stands in the form.</param>
/// <param name="Faults">What is wrong.</param>
public sealed record FindingsView(
    OpenCar Car,
    CornerPart Part,
    IReadOnlyList<PartDeviation> Findings,
    Func<string, string> ValueOf,
    FieldFaults Faults
)
{
    /// <summary>The parts to choose from: the word, what it is called.</summary>
    public static IReadOnlyList<(CornerPart Part, string Title)> Parts { get; } =
    [.. Enum.GetValues<CornerPart>().Select(p => (p, RoadNames.Of(p)))];

    /// <summary>The page for a request.</summary>
    public static FindingsView Of(CarRequest request, FieldFaults? faults = null)
    {
        ArgumentNullException.ThrowIfNull(request);
        var found = (request.Car.File.Road?.Parts ?? []).Reverse().ToList();
        var values = faults is null ? KeptValues.Asked(request) : KeptValues.Sent(request);
        return new(request.Car, PartOf(request), found, values, faults ?? new FieldFaults());
    }

    /// <summary>The part that a request is about; the steering lever when it names none.</summary>
    public static CornerPart PartOf(PageRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        var name = request.Field("part") is { Length: > 0 } sent ? sent : request.Query("part");
        return Enum.TryParse<CornerPart>(name, out var part) && Enum.IsDefined(part) ? part : CornerPart.Lever;
    }

    /// <summary>A finding in one line, as typed.</summary>
    public static string Words(PartDeviation finding)
    {
        ArgumentNullException.ThrowIfNull(finding);
        var amounts = finding.Amounts.Select(a => $"{RoadNames.Of(a.Quantity)} {a.Length?.AsTyped ?? a.Angle?.AsTyped}");
        return $"{RoadNames.Of(finding.Part, finding.Side)}: {Texts.List(amounts)}";
    }
}
