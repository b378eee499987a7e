using Plumbmark.Inspection.Car;
using Plumbmark.Store;
using Plumbmark.Web.Server;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>The points of a frame, pairs together, in the order they were drawn.</summary>
/// <param name="Car">The car.</param>
/// <param name="Lines">A pair or a single point each.</param>
/// <param name="Typed">What was typed into the form, when it is shown again.</param>
/// <param name="Faults">What was wrong in it.</param>
public sealed record PointsView(OpenCar Car, IReadOnlyList<PointsView.Line> Lines, PageRequest Typed, FieldFaults Faults)
{
    /// <summary>A pair or a single point.</summary>
    /// <param name="Id">The point that stands for it in addresses: the left one of a pair.</param>
    /// <param name="Name">What is shown.</param>
    /// <param name="Label">What it is; null when not told.</param>
    /// <param name="Role">What it carries.</param>
    /// <param name="Place">Roughly where; null when not told.</param>
    public sealed record Line(string Id, string Name, string? Label, string Role, string? Place);

    /// <summary>The page for a request.</summary>
    public static PointsView Of(CarRequest request, FieldFaults? faults = null)
    {
        var frame = request.Car.File.Frame;
        var lines = frame.Points.Where(p => !IsSecond(frame, p)).Select(p => LineOf(frame, p)).ToList();
        return new PointsView(request.Car, lines, request, faults ?? new FieldFaults());
    }

    /// <summary>The partner of a point, when it has one on the frame.</summary>
    public static FramePoint? PartnerOf(Frame frame, FramePoint point) => point.Mirror is { } mirror ? frame.Point(mirror) : null;

    private static bool IsSecond(Frame frame, FramePoint point) =>
        PartnerOf(frame, point) is { } partner && frame.Points.First(p => p.Id == partner.Id || p.Id == point.Id).Id != point.Id;

    private static Line LineOf(Frame frame, FramePoint point)
    {
        var name = PartnerOf(frame, point) is { } partner ? Say("points.n-and-n", point.Id, partner.Id) : point.Id;
        var place = point.Sketch is { } s ? Say("points.about-forward-out", s.X?.AsTyped ?? "?", s.Y?.Abs().AsTyped ?? "?") : null;
        return new Line(point.Id, name, point.Label, RoleWords.For(point.Role), place);
    }
}
