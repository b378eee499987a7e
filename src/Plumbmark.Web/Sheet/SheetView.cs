using Plumbmark.Inspection.Floor;
using Plumbmark.Store;
using Plumbmark.Web.Floor;
using Plumbmark.Web.Server;

namespace Plumbmark.Web.Sheet;

/// <summary>What the page of sheets shows.</summary>
/// <param name="Car">The car.</param>
/// <param name="Verdict">The verdict that the sheets will carry.</param>
/// <param name="Moments">The days to choose from for before and after; the last day is not among them.</param>
public sealed record SheetView(OpenCar Car, Verdict Verdict, IReadOnlyList<Moment> Moments)
{
    /// <summary>The page for a request.</summary>
    public static SheetView Of(CarRequest request) =>
        new(request.Car, request.Answers().ForEntry(request.Car).Overall.Verdict, [.. Moment.Of(request.Car).Skip(1)]);
}
