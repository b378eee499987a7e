using Plumbmark.Inspection.Car;
using Plumbmark.Inspection.Language;
using Plumbmark.Web.Layout;
using static Plumbmark.Inspection.Language.Texts;

namespace Plumbmark.Web.Floor;

/// <summary>Finds points under the names people scribble: <c>BL</c>, <c>b.l</c>, <c>B L</c>, <c>D-E R</c> for D.R and E.R.</summary>
internal sealed class PointNames
{
    private readonly Dictionary<string, List<string>> _byName = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> _bases = new(StringComparer.OrdinalIgnoreCase);
    private readonly IReadOnlyList<FramePoint> _points;

    public PointNames(Frame frame)
    {
        _points = frame.Points;
        foreach (var point in frame.Points)
        {
            Add(point.Id, point.Id);
            var dot = point.Id.LastIndexOf('.');
            if (dot > 0 && point.Id[dot..] is ".L" or ".R")
            {
                Add(point.Id[..dot] + point.Id[(dot + 1)..], point.Id);
                _bases.Add(point.Id[..dot]);
            }
        }
    }

    /// <summary>What became of the words. Closed.</summary>
    public abstract record Outcome
    {
        private Outcome() { }

        public sealed record Found(IReadOnlyList<string> Points) : Outcome;

        public sealed record NotFound(string Sentence) : Outcome;

        public T Match<T>(Func<IReadOnlyList<string>, T> found, Func<string, T> notFound) =>
            this switch
            {
                Found f => found(f.Points),
                NotFound n => notFound(n.Sentence),
                _ => throw new System.Diagnostics.UnreachableException(),
            };
    }

    /// <summary>Whether the word is a point's name, or that of a pair.</summary>
    public bool IsKnown(string word) => _byName.ContainsKey(word) || _bases.Contains(word);

    /// <summary>The points that the words name, in order.</summary>
    public Outcome Find(IEnumerable<string> words, bool isAcross)
    {
        // Each is a whole point, or a pair's name that waits for its side.
        var found = new List<(string Name, string? Point)>();
        foreach (var word in words)
        {
            if (Sides(word) is { Length: > 0 } sides && found.Count > 0 && found.Exists(f => f.Point is null))
            {
                if (!TakeSides(found, sides))
                {
                    return new Outcome.NotFound(Say("quick.sides", word, Texts.List(found.Select(f => f.Name))));
                }
            }
            else if (_byName.TryGetValue(word, out var ids))
            {
                if (ids.Count > 1)
                {
                    return new Outcome.NotFound(Say("quick.two-points", word, Texts.List(ids)));
                }

                found.Add((word, ids[0]));
            }
            else if (_bases.Contains(word))
            {
                found.Add((word, null));
            }
            else
            {
                return new Outcome.NotFound(Say("quick.no-such", word, Texts.List(_points.Take(12).Select(p => p.Id))));
            }
        }

        if (isAcross && found is [{ Point: null } pair])
        {
            return new Outcome.Found([Resolve(pair.Name, "L")!, Resolve(pair.Name, "R")!]);
        }

        return found.Count == 0 ? new Outcome.NotFound(Say("quick.no-point"))
            : found.Find(f => f.Point is null).Name is { } open ? new Outcome.NotFound(Say("quick.which-side", open))
            : found.GroupBy(f => f.Point).FirstOrDefault(g => g.Count() > 1)?.Key is { } twice
                ? new Outcome.NotFound(Say("quick.same", twice))
            : new Outcome.Found([.. found.Select(f => f.Point!)]);
    }

    /// <summary>
    /// Side letters go to the names that wait for one: one letter to all of them (D-E R), as many letters as names one each (B E LR), two letters to a
    /// single name are both its points (B LR).
    /// </summary>
    private bool TakeSides(List<(string Name, string? Point)> found, string sides)
    {
        var open = Enumerable.Range(0, found.Count).Where(i => found[i].Point is null).ToList();
        if (sides.Length == 2 && open.Count == 1)
        {
            var name = found[open[0]].Name;
            var (first, second) = (Resolve(name, sides[..1]), Resolve(name, sides[1..]));
            if (first is null || second is null || sides[0] == sides[1])
            {
                return false;
            }

            found[open[0]] = (name, first);
            found.Insert(open[0] + 1, (name, second));
            return true;
        }

        if (sides.Length != 1 && sides.Length != open.Count)
        {
            return false;
        }

        for (var i = 0; i < open.Count; i++)
        {
            var name = found[open[i]].Name;
            var point = Resolve(name, sides.Length == 1 ? sides : sides[i].ToString());
            if (point is null)
            {
                return false;
            }

            found[open[i]] = (name, point);
        }

        return true;
    }

    private string? Resolve(string name, string side) => _byName.GetValueOrDefault($"{name}.{side}") is [var id] ? id : null;

    /// <summary>L, R, LR, left, right; empty for anything else.</summary>
    private static string Sides(string word) =>
        word.ToUpperInvariant() switch
        {
            "L" or "LEFT" => "L",
            "R" or "RIGHT" => "R",
            "LR" => "LR",
            "RL" => "RL",
            "LL" => "LL",
            "RR" => "RR",
            _ => "",
        };

    private void Add(string name, string id)
    {
        if (!_byName.TryGetValue(name, out var ids))
        {
            _byName[name] = ids = [];
        }

        if (!ids.Contains(id))
        {
            ids.Add(id);
        }
    }
}
