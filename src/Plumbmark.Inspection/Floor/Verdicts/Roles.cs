using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Verdicts;

/// <summary>Which points a frame cannot be called true without: suspension, springs and steering. Where no point has such a role, all.</summary>
internal static class Roles
{
    /// <summary>Whether the point carries what steers, springs or guides a wheel.</summary>
    public static bool Matters(FramePoint point) => point.Role is PointRole.Suspension or PointRole.Spring or PointRole.Steering;

    /// <summary>Whether the frame can only be true when what concerns one of these points is.</summary>
    public static bool MustBeTrue(IReadOnlyList<FramePoint> points, params ReadOnlySpan<int> concerned)
    {
        if (!points.Any(Matters))
        {
            return true;
        }

        foreach (var point in concerned)
        {
            if (Matters(points[point]))
            {
                return true;
            }
        }

        return false;
    }
}
