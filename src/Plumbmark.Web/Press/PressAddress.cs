using Plumbmark.Inspection.Press;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Press;

/// <summary>Addresses and look-ups of the press.</summary>
internal static class PressAddress
{
    public static string Of(long car, string job, string more = "") => $"/cars/{car}/press/{Uri.EscapeDataString(job)}{more}";

    /// <summary>The job named in the address; null when there is none.</summary>
    public static PressJob? Job(this CarRequest request) => request.Car.File.Press.FirstOrDefault(j => j.Id == request.Part("job"));
}
