using Plumbmark.Inspection.Car;

namespace Plumbmark.Inspection.Floor.Measured;

/// <summary>Which points of a frame are pairs, and which of the two is left.</summary>
internal static class FramePairs
{
    /// <summary>The pairs in the order of their first point. It is enough that one of the two names the other.</summary>
    public static IReadOnlyList<FramePair> Of(IReadOnlyList<FramePoint> points)
    {
        var pairs = new List<FramePair>();
        var taken = new bool[points.Count];
        for (var i = 0; i < points.Count; i++)
        {
            var partner = taken[i] ? -1 : PartnerOf(points, i);
            if (partner < 0 || taken[partner])
            {
                continue;
            }

            taken[i] = taken[partner] = true;
            var (left, right) = IsLeft(points[i], points[partner]) ? (i, partner) : (partner, i);
            pairs.Add(new FramePair(NameOf(points[left].Id, points[right].Id), left, right));
        }

        return pairs;
    }

    private static int PartnerOf(IReadOnlyList<FramePoint> points, int i)
    {
        for (var j = 0; j < points.Count; j++)
        {
            if (j != i && (points[i].Mirror == points[j].Id || points[j].Mirror == points[i].Id))
            {
                return j;
            }
        }

        return -1;
    }

    /// <summary>The name tells, else the book, else the sketch; else the one drawn first is left.</summary>
    private static bool IsLeft(FramePoint point, FramePoint partner)
    {
        var (a, b) = (point.Id, partner.Id);
        if (a.EndsWith(".L", StringComparison.Ordinal) != b.EndsWith(".L", StringComparison.Ordinal))
        {
            return a.EndsWith(".L", StringComparison.Ordinal);
        }

        if (a.EndsWith(".R", StringComparison.Ordinal) != b.EndsWith(".R", StringComparison.Ordinal))
        {
            return b.EndsWith(".R", StringComparison.Ordinal);
        }

        if (point.Nominal?.Y is { } y && partner.Nominal?.Y is { } otherY && y != otherY)
        {
            return y > otherY;
        }

        return !(point.Sketch?.Y is { } sketch && partner.Sketch?.Y is { } otherSketch && sketch < otherSketch);
    }

    private static string NameOf(string left, string right)
    {
        var common = 0;
        while (common < Math.Min(left.Length, right.Length) && left[common] == right[common])
        {
            common++;
        }

        var name = left[..common].TrimEnd('.', ' ', '-', '_');
        return name.Length > 0 ? name : $"{left}/{right}";
    }
}
