using Plumbmark.Inspection.Bench;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Bench;

/// <summary>A measure about to be taken back.</summary>
/// <param name="Car">The car.</param>
/// <param name="Part">The part.</param>
/// <param name="Measure">The measure.</param>
/// <param name="Reason">The reason as typed.</param>
/// <param name="Faults">What is wrong in the form.</param>
public sealed record MeasureWithdrawalView(OpenCar Car, Part Part, Measure Measure, string Reason, FieldFaults Faults)
{
    /// <summary>The page for the measure named in the address; null when there is none or it was taken back.</summary>
    public static MeasureWithdrawalView? Of(CarRequest request, FieldFaults faults) =>
        PartChanges.Part(request) is { } part && part.StandingMeasures.FirstOrDefault(m => m.Id == request.Part("measure")) is { } measure
            ? new MeasureWithdrawalView(request.Car, part, measure, request.Field("reason"), faults)
            : null;
}
