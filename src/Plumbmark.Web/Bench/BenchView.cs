using Plumbmark.Inspection.Bench;
using Plumbmark.Store;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Bench;

/// <summary>All parts on the bench, or those that were looked for.</summary>
/// <param name="Car">The car.</param>
/// <param name="Answer">What the measures say.</param>
/// <param name="Found">The parts to show.</param>
/// <param name="Find">What was looked for; empty for all.</param>
/// <param name="Form">What stands in the form for a new part.</param>
/// <param name="Faults">What is wrong in it.</param>
public sealed record BenchView(
    OpenCar Car,
    BenchAnswer Answer,
    IReadOnlyList<PartAnswer> Found,
    string Find,
    LayForm Form,
    FieldFaults Faults
)
{
    /// <summary>The page for a request; <c>?find=51-0417</c> looks for a number or name.</summary>
    public static BenchView Of(CarRequest request, FieldFaults? faults = null)
    {
        var answer = BenchInspection.Of(request.Car.File);
        var find = request.Query("find");
        var found = request.Car.File.Parts.Find(find).Select(p => p.Id).ToHashSet(StringComparer.Ordinal);
        var form = faults is null ? LayForm.Empty : LayForm.Sent(request);
        return new BenchView(
            request.Car,
            answer,
            [.. answer.Parts.Where(p => found.Contains(p.Part.Id))],
            find,
            form,
            faults ?? new FieldFaults()
        );
    }
}
