using Plumbmark.Inspection.Road;
using Plumbmark.Store;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Road;

/// <summary>The form in which the front or the rear suspension is drawn.</summary>
/// <param name="Car">The car.</param>
/// <param name="Title">What is drawn.</param>
/// <param name="Group">front or rear.</param>
/// <param name="RearKind">For the rear: liveAxle or trailingArms; null for the front.</param>
/// <param name="Fields">The fields.</param>
/// <param name="ValueOf">What stands in them.</param>
/// <param name="Faults">What is wrong.</param>
public sealed record DrawingView(
    OpenCar Car,
    string Title,
    string Group,
    string? RearKind,
    IReadOnlyList<FormField> Fields,
    Func<string, string> ValueOf,
    FieldFaults Faults
)
{
    /// <summary>The front.</summary>
    public static DrawingView Front(CarRequest request, FieldFaults? faults = null)
    {
        ArgumentNullException.ThrowIfNull(request);
        var values = faults is null ? KeptValues.Of(request.Car, "front") : KeptValues.Sent(request);
        return new(
            request.Car,
            Say("road.drawing.front-suspension-as-drawn"),
            "front",
            null,
            RoadFields.Front,
            values,
            faults ?? new FieldFaults()
        );
    }

    /// <summary>The rear, of the kind the form or the address asks for, else of the kind the car has.</summary>
    public static DrawingView Rear(CarRequest request, FieldFaults? faults = null)
    {
        ArgumentNullException.ThrowIfNull(request);
        var isTrailing = RearKindOf(request) == "trailingArms";
        var fields = isTrailing ? RoadFields.TrailingArms : RoadFields.LiveAxle;
        var kind = isTrailing ? "trailingArms" : "liveAxle";
        var values = faults is null ? KeptValues.Of(request.Car, "rear") : KeptValues.Sent(request);
        return new(request.Car, Say("road.drawing.rear-suspension-as-drawn"), "rear", kind, fields, values, faults ?? new FieldFaults());
    }

    private static string RearKindOf(CarRequest request) =>
        request.Field("kind") is { Length: > 0 } sent ? sent
        : request.Query("kind") is { Length: > 0 } asked ? asked
        : request.Car.File.Road?.Rear is RearDrawing.TrailingArms ? "trailingArms"
        : "liveAxle";
}
