using System.Runtime.InteropServices;

namespace Plumbmark.Drawing.Floor;

/// <summary>Puts labels one after another beside a drawing, each as near to its own point as the others let it.</summary>
internal static class Lane
{
    /// <summary>A label that wants a place.</summary>
    /// <param name="Key">Whose label it is.</param>
    /// <param name="Wanted">Where its middle would stand best.</param>
    /// <param name="Size">The room it needs.</param>
    /// <param name="Weight">How much it matters; the lightest are left out when there is no room for all.</param>
    [StructLayout(LayoutKind.Auto)]
    public readonly record struct Label(string Key, double Wanted, double Size, int Weight);

    /// <summary>The middles of the labels that fit between the two ends, in the order wanted, by key.</summary>
    /// <remarks>
    /// Least squares for positions that must keep their distance: neighbours that collide are merged to a block that stands at the mean of
    /// what its members want (pooling of adjacent violators), then pushed inside the ends.
    /// </remarks>
    public static IReadOnlyDictionary<string, double> Place(IEnumerable<Label> labels, double from, double to)
    {
        var kept = Fitting(labels, to - from);
        var blocks = new List<Block>();
        foreach (var label in kept)
        {
            var block = new Block([label], label.Wanted - (label.Size / 2), label.Size).Within(from, to);
            while (blocks.Count > 0 && blocks[^1].End > block.Start + 1e-9) // 1e-9 units: rounding, far below a pixel
            {
                block = blocks[^1].With(block).Within(from, to);
                blocks.RemoveAt(blocks.Count - 1);
            }

            blocks.Add(block);
        }

        var middles = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (var block in blocks)
        {
            var at = block.Start;
            foreach (var label in block.Labels)
            {
                middles[label.Key] = at + (label.Size / 2);
                at += label.Size;
            }
        }

        return middles;
    }

    private static List<Label> Fitting(IEnumerable<Label> labels, double room)
    {
        var ordered = labels.OrderBy(l => l.Wanted).ThenBy(l => l.Key, StringComparer.Ordinal).ToList();
        // Where not all find room, every second or every third stays, rather than the first ones.
        var stride = Math.Max(1, (int)Math.Ceiling(ordered.Sum(l => l.Size) / Math.Max(room, 1)));
        var kept = new List<Label>();
        foreach (
            var (label, _) in ordered
                .Select((l, i) => (Label: l, Index: i))
                .OrderByDescending(l => l.Label.Weight)
                .ThenBy(l => l.Index % stride)
        )
        {
            if (label.Size <= room)
            {
                kept.Add(label);
                room -= label.Size;
            }
        }

        return [.. kept.OrderBy(l => l.Wanted).ThenBy(l => l.Key, StringComparer.Ordinal)];
    }

    private sealed record Block(IReadOnlyList<Label> Labels, double Start, double Size)
    {
        public double End => Start + Size;

        public Block Within(double from, double to) => this with { Start = Math.Max(from, Math.Min(Start, to - Size)) };

        public Block With(Block next)
        {
            IReadOnlyList<Label> all = [.. Labels, .. next.Labels];
            double before = 0;
            double sum = 0;
            foreach (var label in all)
            {
                sum += label.Wanted - (label.Size / 2) - before;
                before += label.Size;
            }

            return new Block(all, sum / all.Count, before);
        }
    }
}
