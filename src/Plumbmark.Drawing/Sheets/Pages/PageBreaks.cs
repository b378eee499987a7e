namespace Plumbmark.Drawing.Sheets.Pages;

/// <summary>Deals blocks out to pages: cuts what can be cut, keeps headings with what they head, never leaves a page empty.</summary>
internal static class PageBreaks
{
    /// <summary>A block and where its top stands, from the top of the text.</summary>
    public readonly record struct Placed(Block Block, double Top);

    public static IReadOnlyList<IReadOnlyList<Placed>> Of(IEnumerable<Block> blocks, double width, double firstHeight, double laterHeight)
    {
        var pages = new List<List<Placed>> { new() };
        var waiting = new LinkedList<Block>(blocks);
        var used = 0.0;
        while (waiting.First is { } first)
        {
            var block = first.Value;
            var room = (pages.Count == 1 ? firstHeight : laterHeight) - used;
            if (block.Height(width) <= room && (NeededWithNext(first, width) <= room || used == 0))
            {
                Put(block);
                waiting.RemoveFirst();
            }
            else if (!block.StaysWithNext && block.LeastHeight(width) <= room && block.Cut(width, room) is var (fits, remains))
            {
                Put(fits);
                first.Value = remains;
                NewPage();
            }
            else if (used == 0)
            {
                // Taller than a page and not to be cut: it is put alone rather than never.
                Put(block);
                waiting.RemoveFirst();
            }
            else
            {
                NewPage();
            }
        }

        return [.. pages.Where(p => p.Count > 0)];

        void Put(Block block)
        {
            pages[^1].Add(new Placed(block, used));
            used += block.Height(width);
        }

        void NewPage()
        {
            pages.Add([]);
            used = 0;
        }
    }

    private static double NeededWithNext(LinkedListNode<Block> node, double width)
    {
        var needed = node.Value.Height(width);
        return node.Value.StaysWithNext && node.Next is { } next
            ? needed + (next.Value.StaysWithNext ? NeededWithNext(next, width) : next.Value.LeastHeight(width))
            : needed;
    }
}
