using Plumbmark.Inspection.Road;
using Plumbmark.Store;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Road;

/// <summary>What can be adjusted, and the form for one more.</summary>
/// <param name="Car">The car.</param>
/// <param name="Adjusters">What there is so far.</param>
/// <param name="ValueOf">What stands in the form.</param>
/// <param name="Faults">What is wrong.</param>
public sealed record AdjustersView(OpenCar Car, IReadOnlyList<Adjuster> Adjusters, Func<string, string> ValueOf, FieldFaults Faults)
{
    /// <summary>The page for a request.</summary>
    public static AdjustersView Of(CarRequest request, FieldFaults? faults = null)
    {
        ArgumentNullException.ThrowIfNull(request);
        return new(
            request.Car,
            request.Car.File.Road?.Adjusters ?? [],
            faults is null ? KeptValues.Asked(request) : KeptValues.Sent(request),
            faults ?? new FieldFaults()
        );
    }

    /// <summary>An adjuster in one line.</summary>
    public static string Words(Adjuster adjuster)
    {
        ArgumentNullException.ThrowIfNull(adjuster);
        var moves =
            adjuster.Kind == AdjusterKind.TrackRod
                ? ""
                : Say("road.adjusters.moves-n", string.Join(Say("list.and"), adjuster.At.Select(RoadNames.Of)));
        var step = adjuster.Step is { } s ? Say("road.adjusters.by-n", s.AsTyped) : "";
        var fitted = adjuster.Fitted is { } f ? Say("road.adjusters.fitted-n", f.AsTyped) : "";
        return Say(
            "road.adjusters.n-n-to-n",
            RoadNames.Of(adjuster.Side),
            adjuster.Least.AsTyped,
            adjuster.Most.AsTyped,
            step,
            moves,
            fitted
        );
    }
}
