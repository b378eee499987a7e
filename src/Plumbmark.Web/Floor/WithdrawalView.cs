using Plumbmark.Inspection.Car;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Floor;

/// <summary>What the page shows on which a reading is taken back.</summary>
public sealed record WithdrawalView(OpenCar Car, Reading Reading, string Reason, FieldFaults Faults)
{
    /// <summary>The page for the reading named in the address; null when there is none that stands.</summary>
    public static WithdrawalView? Of(CarRequest request, FieldFaults faults) =>
        request.Car.File.StandingReadings.FirstOrDefault(r => r.Id == request.Part("reading")) is { } reading
            ? new WithdrawalView(request.Car, reading, request.Field("reason"), faults)
            : null;
}
