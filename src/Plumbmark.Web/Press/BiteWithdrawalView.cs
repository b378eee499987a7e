using Plumbmark.Inspection.Press;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Press;

/// <summary>What the page shows on which a bite is taken back.</summary>
public sealed record BiteWithdrawalView(OpenCar Car, PressJob Job, BiteRecord Bite, string Reason, FieldFaults Faults)
{
    /// <summary>The page for the bite named in the address; null when there is none that stands.</summary>
    public static BiteWithdrawalView? Of(CarRequest request) =>
        request.Job() is { } job && job.StandingBites.FirstOrDefault(b => b.Id == request.Part("bite")) is { } bite
            ? new(request.Car, job, bite, request.Field("reason"), new FieldFaults())
            : null;
}
